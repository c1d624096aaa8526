// SPDX-License-Identifier: MIT
#include "db/actions/foreign_money.h"

#include "db/store/rate_store.h"

namespace tangmark::db {

std::optional<Money> maybe_money_in(Form& form, std::string_view field, Currency usual) {
  const auto text = form.maybe_text(field);
  if (!text) return std::nullopt;
  const auto money = parse_money(*text, usual, field);
  if (money) return *money;
  form.add(money.problem());
  return std::nullopt;
}

std::optional<std::string> rate_to_keep(Work& work, Currency currency) {
  const Currency own = work.settings().currency;
  if (currency == own) return std::nullopt;
  const auto rate =
      rate_on(work.shop(), currency, own, work.settings().zone.date_of(work.at()));
  if (rate) return to_text(*rate);
  work.warn("No rate of " + currency.code() + " in " + own.code() +
            " is on record, so the ledger has no sum in " + own.code() +
            " for it. Note one with note_rate.");
  return std::nullopt;
}

}  // namespace tangmark::db
