// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "db/shop_file.h"
#include "domain/measure/exchange_rate.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// The rate that held on a day: the newest noted on or before it. One to one for the same currency;
/// none when nothing was noted.
std::optional<ExchangeRate> rate_on(const ShopFile& shop, Currency from, Currency to,
                                    CalendarDate day);
void insert_rate(const ShopFile& shop, const ExchangeRate& rate, CalendarDate day,
                 const std::optional<std::string>& source);

}  // namespace tangmark::db
