// SPDX-License-Identifier: MIT
#include "gui/desk/quote_view.h"

#include <algorithm>

namespace tangmark::desk {
namespace {

// "2 at 14.00" as its two parts; either may be missing.
struct Parts {
  std::string much, each;
};

Parts parts_of(const std::string& to) {
  if (to.starts_with("at ")) return {"", to.substr(3)};
  const auto at = to.find(" at ");
  if (at == std::string::npos) return {to, ""};
  return {to.substr(0, at), to.substr(at + 4)};
}

std::string joined(const Parts& parts) {
  if (parts.each.empty()) return parts.much;
  return (parts.much.empty() ? "" : parts.much + " ") + "at " + parts.each;
}

}  // namespace

bool QuoteRow::may_change(QuoteCell cell) const {
  return std::find(cells.begin(), cells.end(), cell) != cells.end();
}

const std::string& QuoteRow::figure(QuoteCell cell) const {
  return cell == QuoteCell::how_much ? how_much : cell == QuoteCell::each ? each : amount;
}

QuoteTyped with_figure(QuoteTyped typed, const QuoteRow& row, QuoteCell cell,
                       const std::string& figure) {
  const bool own_name = cell == QuoteCell::each && row.each_name != row.name;
  const std::string& name = cell == QuoteCell::each ? row.each_name : row.name;
  const auto found = std::find_if(typed.changes.begin(), typed.changes.end(),
                                  [&](const costing::LineChange& c) { return c.what == name; });
  Parts parts = found == typed.changes.end() || own_name ? Parts{} : parts_of(found->to);
  (cell == QuoteCell::each && !own_name ? parts.each : parts.much) = figure;
  const std::string to = joined(parts);
  if (found == typed.changes.end()) {
    if (!to.empty()) typed.changes.push_back({name, to});
  } else if (to.empty()) {
    typed.changes.erase(found);
  } else {
    found->to = to;
  }
  return typed;
}

std::string in_words(const QuoteView& view) {
  std::string text = "Cost build-up in " + view.currency + ".";
  for (const QuoteRow& row : view.live.rows) {
    text += " " + row.text;
    if (!row.how_much.empty()) text += ", " + row.how_much + " " + row.unit;
    if (!row.amount.empty()) text += ": " + row.amount;
    text += row.by_hand ? ", set by hand." : ".";
  }
  return text;
}

}  // namespace tangmark::desk
