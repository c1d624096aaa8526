// SPDX-License-Identifier: MIT
#include "db/store/quote_versions.h"

#include <algorithm>
#include <cstdlib>
#include <optional>

namespace tangmark::db {
namespace {

using namespace commission;

// One line of all versions; lines of the same kind and words are the same line, several of one name
// are added up.
struct Line {
  std::string kind, text;
  std::vector<std::optional<Money>> amounts;
};

void add_version(const Quote& quote, std::size_t place, std::size_t versions,
                 std::vector<Line>& lines) {
  for (const QuoteLine& line : quote.lines) {
    if (line.side != QuoteSide::cost) continue;
    auto found = std::find_if(lines.begin(), lines.end(), [&](const Line& c) {
      return c.kind == line.kind && c.text == line.text;
    });
    if (found == lines.end()) {
      lines.push_back({line.kind, line.text, std::vector<std::optional<Money>>(versions)});
      found = lines.end() - 1;
    }
    auto& amount = found->amounts[place];
    amount = amount ? *amount + line.amount : line.amount;
  }
}

std::string change_of(const std::vector<std::optional<Money>>& amounts, Currency currency) {
  const Money none(0, currency);
  const Money change = amounts.back().value_or(none) - amounts.front().value_or(none);
  return change.is_zero() ? "" : (change.minor() > 0 ? "+" : "") + amount_text(change);
}

void add_row(std::string kind, std::string text, std::vector<std::optional<Money>> amounts,
             Currency currency, ComparedQuotes& compared) {
  std::vector<std::string> row{std::move(kind), std::move(text)};
  for (const auto& amount : amounts) row.push_back(amount ? amount_text(*amount) : "");
  row.push_back(change_of(amounts, currency));
  compared.rows.push_back(std::move(row));
}

template <class Get>
std::vector<std::optional<Money>> each_of(const std::vector<Quote>& quotes, Get get) {
  std::vector<std::optional<Money>> all;
  for (const Quote& quote : quotes) all.push_back(get(quote));
  return all;
}

void say_why(const std::vector<Quote>& quotes, const std::vector<Line>& lines,
             ComparedQuotes& compared) {
  const Currency currency = quotes.front().total.currency();
  std::vector<std::pair<Money, std::string>> changes;
  for (const Line& line : lines) {
    const Money none(0, currency);
    const Money change = line.amounts.back().value_or(none) - line.amounts.front().value_or(none);
    if (!change.is_zero()) changes.emplace_back(change, line.text);
  }
  std::sort(changes.begin(), changes.end(), [](const auto& a, const auto& b) {
    return std::abs(a.first.minor()) > std::abs(b.first.minor());
  });
  if (changes.size() > 3) changes.erase(changes.begin() + 3, changes.end());
  for (const auto& [change, text] : changes)
    compared.sentences.push_back(text + (change.minor() > 0 ? " rose by " : " fell by ") +
                               to_text(change.minor() > 0 ? change : -change) + ".");
  if (changes.empty()) compared.sentences.push_back("No cost line differs between them.");
}

}  // namespace

std::string version_head(const Quote& quote) {
  return "v" + std::to_string(quote.version) + " " + to_stored(quote.made_at).substr(0, 10);
}

ComparedQuotes compared_quotes(const std::vector<Quote>& quotes,
                               const std::vector<std::string>& heads) {
  ComparedQuotes compared{{"Kind", "Line"}, {}, {}};
  compared.columns.insert(compared.columns.end(), heads.begin(), heads.end());
  compared.columns.push_back("First to last");
  std::vector<Line> lines;
  for (std::size_t i = 0; i < quotes.size(); ++i) add_version(quotes[i], i, quotes.size(), lines);
  const Currency currency = quotes.front().total.currency();
  for (const Line& line : lines) add_row(line.kind, line.text, line.amounts, currency, compared);
  const auto sum = [&](const char* name, auto get) {
    add_row("sum", name, each_of(quotes, get), currency, compared);
  };
  sum("Cost", [](const Quote& q) { return q.cost; });
  sum("Price", [](const Quote& q) { return q.price; });
  sum("Tax", [](const Quote& q) { return q.tax; });
  sum("Total", [](const Quote& q) { return q.total; });
  sum("Floor price", [](const Quote& q) { return q.floor; });
  sum("Earned per hour", [](const Quote& q) { return q.earned_per_hour; });
  say_why(quotes, lines, compared);
  return compared;
}

}  // namespace tangmark::db
