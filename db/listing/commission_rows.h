// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/money.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// One commission as a list shows it.
struct CommissionRow {
  std::int64_t number = 0;
  std::string state;                        ///< the trade's word
  std::string buyer;                        ///< empty when erased
  std::string items;                        ///< titles, joined
  Instant opened_at;
  std::optional<CalendarDate> wanted_by, reply_by;
  std::optional<CalendarDate> promised;     ///< the latest promise
  std::optional<Instant> last_contact;
  std::optional<std::int64_t> quote_version;
  std::optional<Instant> quote_sent_at;
  std::optional<CalendarDate> quote_until;
  Currency currency;
  std::optional<Money> total, deposit_asked;  ///< of the newest quote
  Money paid;                               ///< all payments, what was given back taken off
  Money deposits;                           ///< of kind deposit
};

/// Commissions under way first, then by number, newest first.
std::vector<CommissionRow> commission_rows(const ShopFile& shop);

/// Money held for work that is neither delivered nor given back, per currency.
std::vector<Money> money_held(const ShopFile& shop);

/// One item of a commission, or a stock knife.
struct ItemRow {
  std::int64_t id = 0, position = 0;
  std::string title, construction, grade, model, handle, sheath, hardness_aim;
  std::string blade;                        ///< number of its blade, empty before one is assigned
  bool cancelled = false;
};
std::vector<ItemRow> item_rows(const ShopFile& shop, std::int64_t commission_number);

struct QuoteRow {
  std::int64_t version = 0;
  Instant made_at;
  CalendarDate valid_until;
  Money price, total, deposit;
  std::optional<Instant> sent_at;
  std::string answer;
};
std::vector<QuoteRow> quote_rows(const ShopFile& shop, std::int64_t commission_number);

struct PaymentRow {
  std::int64_t number = 0;
  std::string kind, method, note;
  Money amount;
  Instant at;
};
std::vector<PaymentRow> payment_rows(const ShopFile& shop, std::int64_t commission_number);

struct PromiseRow {
  CalendarDate day;
  Instant made_at;
  std::string words, told;
};
/// Every promise ever made on a commission, oldest first.
std::vector<PromiseRow> promise_rows(const ShopFile& shop, std::int64_t commission_number);

struct ContactRow {
  Instant at;
  std::string channel, words;
};
std::vector<ContactRow> contact_rows(const ShopFile& shop, std::int64_t commission_number);

}  // namespace tangmark::db
