// SPDX-License-Identifier: MIT
#include "db/store/rate_store.h"

#include "db/row.h"

namespace tangmark::db {

std::optional<ExchangeRate> rate_on(const ShopFile& shop, Currency from, Currency to,
                                    CalendarDate day) {
  if (from == to) return ExchangeRate{from, to, 1'000'000};
  Query query(shop,
              "SELECT rate_ppm FROM exchange_rate WHERE currency = ? AND shop_currency = ? "
              "AND day <= ? ORDER BY day DESC, id DESC LIMIT 1");
  query.bind(from.code()).bind(to.code()).bind(day);
  if (!query.next()) return std::nullopt;
  return ExchangeRate{from, to, query.integer("rate_ppm")};
}

void insert_rate(const ShopFile& shop, const ExchangeRate& rate, CalendarDate day,
                 const std::optional<std::string>& source) {
  Row("exchange_rate")
      .set("currency", rate.from.code())
      .set("shop_currency", rate.to.code())
      .set("rate_ppm", rate.millionths)
      .set("day", day)
      .set("source", source)
      .insert(shop);
}

}  // namespace tangmark::db
