// SPDX-License-Identifier: MIT
#include "reports/plain_letter.h"

#include <algorithm>
#include <vector>

#include "reports/letter.h"
#include "reports/text_check.h"

namespace tangmark::reports {
namespace {

Problems problems_of(const PlainLetter& letter, const FontBook& fonts) {
  TextCheck check(fonts);
  check.letterhead(letter.shop);
  check.addressee(letter.buyer);
  check.text(letter.subject, "subject");
  check.needed(letter.text, "text of the letter");
  return check.problems();
}

// What stands between empty lines; a line ends where the maker ended it.
std::vector<std::string> paragraphs_of(const std::string& text) {
  std::vector<std::string> all(1);
  std::size_t from = 0;
  while (from <= text.size()) {
    const std::size_t to = std::min(text.find('\n', from), text.size());
    std::string line = text.substr(from, to - from);
    while (!line.empty() && (line.back() == ' ' || line.back() == '\r')) line.pop_back();
    if (line.empty()) {
      if (!all.back().empty()) all.emplace_back();
    } else {
      all.back() += (all.back().empty() ? "" : "\n") + line;
    }
    from = to + 1;
  }
  if (all.back().empty()) all.pop_back();
  return all;
}

}  // namespace

Outcome<Document> plain_letter_document(const PlainLetter& letter, const Look& look,
                                        const FontBook& fonts) {
  Problems problems = problems_of(letter, fonts);
  if (!problems.empty()) return problems;
  std::vector<std::pair<std::string, std::string>> facts = {
      {"Date", to_text(look.zone.date_of(letter.written))}};
  if (!letter.commission.empty()) facts.emplace_back("Commission", letter.commission);
  Letter page(letter.shop, look, fonts, letter.written);
  page.open(letter.buyer, letter.subject, facts);
  for (const std::string& paragraph : paragraphs_of(letter.text))
    page.text(paragraph);
  return page.close(letter.subject, letter.subject);
}

}  // namespace tangmark::reports
