// SPDX-License-Identifier: MIT
#include "domain/measure/exchange_rate.h"

#include <catch2/catch.hpp>

using namespace tangmark;

namespace {

Currency of(const char* code) {
  return Currency::of(code).value();
}

ExchangeRate rate(const char* text, const char* from, const char* to) {
  return parse_exchange_rate(text, of(from), of(to), "rate").value();
}

}  // namespace

TEST_CASE("a rate is read as a bank states it, and short") {
  CHECK(rate("1 USD = 0.92 EUR", "USD", "EUR").millionths == 920'000);
  CHECK(rate("0.92 EUR", "USD", "EUR") == rate("0.92", "USD", "EUR"));
  CHECK(to_text(rate("0.92", "USD", "EUR")) == "1 USD = 0.92 EUR");
  for (const char* wrong :
       {"1 EUR = 0.92 USD", "2 USD = 1.84 EUR", "0", "", "-1", "USD", "1 USD = 0.92"})
    CHECK_FALSE(parse_exchange_rate(wrong, of("USD"), of("EUR"), "rate"));
}

TEST_CASE("money is exchanged between currencies of different minor digits, half to even") {
  // Worked by hand: 100.00 USD x 0.92 = 92.00 EUR; 10000 JPY x 0.006125 = 61.25 EUR;
  // 1.000 KWD x 3.25 = 3.25 USD; 0.05 USD x 0.5 = 0.025 EUR, half to even 0.02.
  CHECK(exchanged(Money(100'00, of("USD")), rate("0.92", "USD", "EUR")) == Money(92'00, of("EUR")));
  CHECK(exchanged(Money(10'000, of("JPY")), rate("0.006125", "JPY", "EUR")) ==
        Money(61'25, of("EUR")));
  CHECK(exchanged(Money(1'000, of("KWD")), rate("3.25", "KWD", "USD")) == Money(3'25, of("USD")));
  CHECK(exchanged(Money(5, of("USD")), rate("0.5", "USD", "EUR")) == Money(2, of("EUR")));
  CHECK(exchanged(Money(-100'00, of("USD")), rate("150.5", "USD", "JPY")) ==
        Money(-15'050, of("JPY")));
}
