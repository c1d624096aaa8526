// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>

#include "db/store/named.h"
#include "db/store/question_list.h"
#include "db/store/quote_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

// One line of all versions; lines of the same kind and words are the same line, several of one name
// are added up.
struct Compared {
  std::string kind, text;
  std::vector<std::optional<Money>> amounts;
};

void add_version(const KeptQuote& quote, std::size_t place, std::size_t versions,
                 std::vector<Compared>& lines) {
  for (const QuoteLine& line : quote.lines) {
    if (line.side != QuoteSide::cost) continue;
    auto found = std::find_if(lines.begin(), lines.end(), [&](const Compared& c) {
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
             Currency currency, Answer& answer) {
  std::vector<std::string> row{std::move(kind), std::move(text)};
  for (const auto& amount : amounts) row.push_back(amount ? amount_text(*amount) : "");
  row.push_back(change_of(amounts, currency));
  answer.rows.push_back(std::move(row));
}

template <class Get>
std::vector<std::optional<Money>> each_of(const std::vector<KeptQuote>& quotes, Get get) {
  std::vector<std::optional<Money>> all;
  for (const KeptQuote& quote : quotes) all.push_back(get(quote));
  return all;
}

std::string heading(const KeptQuote& quote) {
  return "v" + std::to_string(quote.version) + " " + to_stored(quote.made_at).substr(0, 10);
}

void say_why(const std::vector<KeptQuote>& quotes, const std::vector<Compared>& lines,
             Answer& answer) {
  const Currency currency = quotes.front().total.currency();
  std::vector<std::pair<Money, std::string>> changes;
  for (const Compared& line : lines) {
    const Money none(0, currency);
    const Money change = line.amounts.back().value_or(none) - line.amounts.front().value_or(none);
    if (!change.is_zero()) changes.emplace_back(change, line.text);
  }
  std::sort(changes.begin(), changes.end(), [](const auto& a, const auto& b) {
    return std::abs(a.first.minor()) > std::abs(b.first.minor());
  });
  if (changes.size() > 3) changes.erase(changes.begin() + 3, changes.end());
  for (const auto& [change, text] : changes)
    answer.sentences.push_back(text + (change.minor() > 0 ? " rose by " : " fell by ") +
                               to_text(change.minor() > 0 ? change : -change) + ".");
  if (changes.empty()) answer.sentences.push_back("No cost line differs between them.");
}

Outcome<Answer> answer(const ShopFile& shop, const Given& given, Instant) {
  const auto commission = given_thing(shop, given, "commission", commission_named);
  if (!commission) return commission.problems();
  std::vector<KeptQuote> quotes = quotes_of(shop, commission->id);
  if (quotes.empty())
    return Problem{"commission", "No quote was made for it yet.", "Make one with make_quote."};
  std::reverse(quotes.begin(), quotes.end());
  Answer answer{
      "What differs between the versions of quote " + std::to_string(commission->number) + "?",
      {},
      {"Kind", "Line"},
      {}};
  for (const KeptQuote& quote : quotes) answer.columns.push_back(heading(quote));
  answer.columns.push_back("First to last");
  std::vector<Compared> lines;
  for (std::size_t i = 0; i < quotes.size(); ++i) add_version(quotes[i], i, quotes.size(), lines);
  const Currency currency = quotes.front().total.currency();
  for (const Compared& line : lines) add_row(line.kind, line.text, line.amounts, currency, answer);
  add_row("sum", "Cost", each_of(quotes, [](const KeptQuote& q) { return q.cost; }), currency,
          answer);
  add_row("sum", "Price", each_of(quotes, [](const KeptQuote& q) { return q.price; }), currency,
          answer);
  add_row("sum", "Tax", each_of(quotes, [](const KeptQuote& q) { return q.tax; }), currency,
          answer);
  add_row("sum", "Total", each_of(quotes, [](const KeptQuote& q) { return q.total; }), currency,
          answer);
  add_row("sum", "Floor price", each_of(quotes, [](const KeptQuote& q) { return q.floor; }),
          currency, answer);
  add_row("sum", "Earned per hour",
          each_of(quotes, [](const KeptQuote& q) { return q.earned_per_hour; }), currency, answer);
  say_why(quotes, lines, answer);
  return answer;
}

}  // namespace

const Question question_33{33,
                           "What differs between the versions of a quote?",
                           {{"commission", "Commission", FieldKind::commission, true, "12"}},
                           answer};

}  // namespace tangmark::db
