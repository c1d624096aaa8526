// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "domain/measure/money.h"
#include "domain/measure/outcome.h"

namespace tangmark {

/// What one unit of a currency is worth in another, as a bank stated it: 1 USD = 0.92 EUR.
struct ExchangeRate {
  Currency from, to;
  std::int64_t millionths = 0;  ///< of one `to` for one `from`; above zero
  friend bool operator==(const ExchangeRate&, const ExchangeRate&) = default;
};

/// Reads "1 USD = 0.92 EUR", "0.92 EUR", "0.92" (the last two for one `from` in `to`). Refuses a
/// rate of nothing, more than six decimals, and other currencies than the two.
Outcome<ExchangeRate> parse_exchange_rate(std::string_view text, Currency from, Currency to,
                                          std::string_view field);
/// "1 USD = 0.92 EUR".
std::string to_text(const ExchangeRate& rate);
/// An amount of rate.from in rate.to, half to even in the minor unit of rate.to.
Money exchanged(Money amount, const ExchangeRate& rate);

/// The other way round: an amount of rate.to in rate.from, half to even in its minor unit.
Money exchanged_back(Money amount, const ExchangeRate& rate);

}  // namespace tangmark
