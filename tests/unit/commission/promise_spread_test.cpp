// SPDX-License-Identifier: MIT
#include "domain/commission/promise_spread.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace tangmark;
using namespace tangmark::commission;
using namespace std::chrono_literals;

namespace {

/// Mean of the times over evenly spread chances.
double mean_of(const Spread& spread) {
  double sum = 0;
  const int n = 1 << 16;
  for (int i = 0; i < n; ++i) sum += double(spread.draw(std::uint32_t(i) << 16 | 0x8000U));
  return sum / n;
}

}  // namespace

TEST_CASE("a fixed time is always itself") {
  CHECK(Spread::exactly(2h).draw(0) == 7200);
  CHECK(Spread::exactly(2h).draw(0xffffffffU) == 7200);
  CHECK(Spread().never_takes_time());
  CHECK_FALSE(Spread::exactly(1s).never_takes_time());
}

TEST_CASE("a triangular guess stays between its ends and has the mean of its corners") {
  const Spread s = Spread::between(1h, 2h, 6h);
  CHECK(s.draw(0) >= 3600);
  CHECK(s.draw(0xffffffffU) <= 6 * 3600);
  CHECK(mean_of(s) == Approx(3 * 3600).epsilon(1e-4));  // (1 + 2 + 6) / 3
  // At the usual time the part below is (2 - 1) / (6 - 1).
  CHECK(s.quantile(0.2) == 2h);
  CHECK(Spread::between(6h, 1h, 2h) == s);
  CHECK(Spread::between(2h, 2h, 2h).draw(77) == 7200);
}

TEST_CASE("a recorded time has its median, its quarter, and the log-normal mean") {
  const Spread s = Spread::around(4h, 1.5);
  CHECK(s.quantile(0.5) == 4h);
  CHECK(s.quantile(0.75) == 6h);
  const double deviation = std::log(1.5) / 0.6744897501960817;  // normal table, 75 %
  // exp(d^2 / 2) times the median; the strata cut off a little of the tail.
  CHECK(mean_of(s) == Approx(4 * 3600 * std::exp(deviation * deviation / 2)).epsilon(2e-3));
  CHECK(Spread::around(4h, 0.5).draw(12345) == 4 * 3600);
}
