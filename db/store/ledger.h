// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/shop_settings.h"
#include "domain/measure/money.h"
#include "domain/measure/when.h"

namespace tangmark::db {

enum class LedgerKind { invoice, credit, received, given_back, correction, purchase, outside_work };
std::string_view to_word(LedgerKind kind);

/// One line of the shop's ledger. Sales are positive, purchases and money given back negative.
struct LedgerLine {
  CalendarDate day;
  LedgerKind kind = LedgerKind::invoice;
  std::string number;      ///< of the paper, payment or lot
  std::string commission;  ///< its number; empty for a purchase
  std::string party;       ///< buyer by number and name, supplier, or outside hand
  std::string text;
  Money amount;                           ///< with tax
  std::optional<Money> without_tax, tax;  ///< of invoices and credits
  Share tax_rate;
  std::string rate;  ///< of exchange, as recorded; empty in the shop's currency
  std::optional<Money> in_shop_currency;  ///< none when no rate is on record
  std::optional<Money> tax_in_shop_currency;
};

/// Everything of a year, oldest first. A corrected invoice is credited in full on the day of the
/// document that corrects it, so that the sum of all papers is what is asked for. Deposits stand
/// where the money moved: whether a deposit creates a tax date is for the tax office to say.
std::vector<LedgerLine> ledger(const ShopFile& shop, int year,
                               const commission::ShopSettings& settings);

/// The ledger as a table for an accountant. Source of the format: RFC 4180; amounts with a point
/// and without group marks, dates as ISO 8601.
std::string ledger_csv(const std::vector<LedgerLine>& lines, Currency shop_currency);

/// One total of a year in one currency. Where foreign money came or went, a second total holds all
/// of it in the shop's currency at the recorded rates; lines without a rate are not in it.
struct YearTotal {
  std::string what;
  Money amount;
};
std::vector<YearTotal> year_totals(const std::vector<LedgerLine>& lines, Currency shop_currency);

}  // namespace tangmark::db
