// SPDX-License-Identifier: MIT
#include "gui/desk/quote_view.h"

namespace tangmark::desk {

std::string in_words(const QuoteView& view) {
  std::string text = "Cost build-up in " + view.currency + ".";
  for (const QuoteRow& row : view.rows) {
    text += " " + row.text;
    if (!row.how_much.empty()) text += ", " + row.how_much + " " + row.unit;
    text += ": " + row.amount + ".";
  }
  return text;
}

}  // namespace tangmark::desk
