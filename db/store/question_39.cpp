// SPDX-License-Identifier: MIT
#include "db/store/ledger.h"
#include "db/store/money_store.h"
#include "db/store/named.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

Outcome<Answer> answer_39(const ShopFile& shop, const Given& given, Instant now) {
  const auto settings = load_settings(shop);
  int year = static_cast<int>(settings.zone.date_of(now).year());
  if (const auto text = given_text(given, "year")) {
    const auto read = number_named(*text, "year");
    if (!read) return read.problem();
    if (*read < 1900 || *read > 2199)
      return Problem{"year", "\"" + *text + "\" is no year.", "Write it as 2026."};
    year = static_cast<int>(*read);
  }
  const auto lines = ledger(shop, year, settings);
  Answer answer{"The money of " + std::to_string(year), {}, {"What", "Amount", "Currency"}, {}};
  std::int64_t without_rate = 0;
  for (const auto& line : lines) without_rate += line.in_shop_currency ? 0 : 1;
  for (const auto& total : year_totals(lines, settings.currency))
    answer.rows.push_back({total.what, amount_text(total.amount), total.amount.currency().code()});
  for (const Money& held : money_held(commissions_with_money(shop)))
    answer.sentences.push_back(to_text(held) + " is held today for work that is not delivered.");
  if (without_rate > 0)
    answer.sentences.push_back(std::to_string(without_rate) +
                               (without_rate == 1 ? " line" : " lines") +
                               " in foreign money without a rate on record, not in the sums in " +
                               settings.currency.code() + ".");
  answer.sentences.push_back(
      "Tax rates are those you entered. Whether a deposit is taxed when it comes, and what a sale "
      "abroad owes, differs by country: ask your tax office or accountant.");
  return answer;
}

}  // namespace

const Question question_39{
    39,
    "What came in and went out this year, for the accountant?",
    {{"year", "Year", FieldKind::number, false, "2026; this year when not given"}},
    answer_39};

}  // namespace tangmark::db
