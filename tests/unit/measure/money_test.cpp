// SPDX-License-Identifier: MIT
#include "domain/measure/money.h"

#include <numeric>

#include "tests/unit/measure/refusal.h"

using namespace tangmark;

namespace {

Money eur(std::int64_t minor) {
  return Money(minor, Currency());
}

std::vector<std::int64_t> minors(const std::vector<Money>& parts) {
  std::vector<std::int64_t> out;
  for (const Money& part : parts) out.push_back(part.minor());
  return out;
}

}  // namespace

TEST_CASE("a currency is found by its code in either case") {
  CHECK(Currency::of("EUR")->minor_digits() == 2);
  CHECK(Currency::of("jpy")->minor_digits() == 0);
  CHECK(Currency::of(" KWD ")->minor_per_major() == 1000);
  CHECK(Currency::of("usd")->code() == "USD");
}

TEST_CASE("a code that is no currency is refused") {
  for (const char* code : {"", "EU", "EURO", "XXX", "XAU", "ABC", "E R", "\xE2\x82\xAC"}) {
    CAPTURE(code);
    check_refused(Currency::of(code, "currency"), "currency", "not a currency");
  }
}

TEST_CASE("a share of money rounds half to even at the minor unit") {
  CHECK(share_of(eur(5), Share::percent(50)).minor() == 2);
  CHECK(share_of(eur(15), Share::percent(50)).minor() == 8);
  CHECK(share_of(eur(-5), Share::percent(50)).minor() == -2);
  CHECK(share_of(eur(129'000), Share::percent(50)).minor() == 64'500);
  CHECK(scaled_half_even(eur(10'000), 1, 3).minor() == 3333);
  CHECK(scaled_half_even(eur(10'000), 2, 3).minor() == 6667);
}

TEST_CASE("a large amount is scaled without overflow on the way") {
  const Money large = eur(4'000'000'000'000'000'000);
  CHECK(scaled_half_even(large, 1'000'000'007, 1'000'000'007) == large);
}

TEST_CASE("a price goes up to its step and stays when it is on one") {
  CHECK(up_to_step(eur(48'701), eur(500)).minor() == 49'000);
  CHECK(up_to_step(eur(49'000), eur(500)).minor() == 49'000);
  CHECK(up_to_step(eur(1), eur(500)).minor() == 500);
  CHECK(up_to_step(eur(0), eur(500)).minor() == 0);
  CHECK(up_to_step(eur(-501), eur(500)).minor() == -500);
}

TEST_CASE("split money sums back to the whole, largest remainder first") {
  CHECK(minors(split(eur(100), {1, 1, 1})) == std::vector<std::int64_t>{34, 33, 33});
  CHECK(minors(split(eur(5), {1, 0, 3})) == std::vector<std::int64_t>{1, 0, 4});
  CHECK(minors(split(eur(-100), {1, 1, 1})) == std::vector<std::int64_t>{-34, -33, -33});
  CHECK(minors(split(eur(0), {2, 3})) == std::vector<std::int64_t>{0, 0});
  CHECK(minors(split(eur(7), {1, 2, 4})) == std::vector<std::int64_t>{1, 2, 4});
}

TEST_CASE("no amount and no weights lose a cent in a split") {
  for (std::int64_t amount = -500; amount <= 500; amount += 3) {
    for (std::int64_t w = 1; w < 30; ++w) {
      const auto parts = minors(split(eur(amount), {w, 7, 0, 13, 2 * w + 1}));
      REQUIRE(std::accumulate(parts.begin(), parts.end(), std::int64_t{0}) == amount);
    }
  }
}

TEST_CASE("money of one currency adds, subtracts, multiplies and compares exactly") {
  CHECK(eur(150) + eur(275) == eur(425));
  CHECK(eur(150) - eur(275) == eur(-125));
  CHECK(-eur(5) == eur(-5));
  CHECK(eur(19'99) * 3 == eur(59'97));
  CHECK(eur(1) < eur(2));
  CHECK(eur(100) != Money(100, *Currency::of("USD")));
}
