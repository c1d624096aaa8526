// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <sstream>
#include <string>

#include "domain/costing/loss_rate.h"
#include "domain/costing/quantile.h"
#include "tests/reference/python_says.h"

using namespace tangmark;
using namespace tangmark::costing;

TEST_CASE("the exact band agrees with SciPy over counts and confidences") {
  // Source: scipy.stats.beta.ppf (package python3-scipy).
  std::istringstream rows(python_says(
      "from scipy.stats import beta\n"
      "for n in (1, 2, 3, 7, 11, 40, 500):\n"
      "  for k in sorted({0, 1, n // 3, n // 2, n - 1, n}):\n"
      "    for c in (0.8, 0.95, 0.99):\n"
      "      a = (1 - c) / 2\n"
      "      lo = 0.0 if k == 0 else beta.ppf(a, k, n - k + 1)\n"
      "      hi = 1.0 if k == n else beta.ppf(1 - a, k + 1, n - k)\n"
      "      print(k, n, repr(c), repr(float(lo)), repr(float(hi)))\n"));
  if (rows.str().empty()) {
    WARN("SciPy is not installed: not compared");
    return;
  }
  std::int64_t lost = 0, of = 0;
  double confidence = 0, low = 0, high = 0;
  int compared = 0;
  while (rows >> lost >> of >> confidence >> low >> high) {
    INFO(lost << " of " << of << " at " << confidence);
    const auto band = loss_rate({lost, of}, confidence);
    REQUIRE(band.ok());
    CHECK(band->low == Approx(low).epsilon(1e-9).margin(1e-12));
    CHECK(band->high == Approx(high).epsilon(1e-9).margin(1e-12));
    ++compared;
  }
  CHECK(compared > 80);
}

TEST_CASE("quantiles agree with NumPy") {
  // Source: numpy.quantile, method linear (package python3-numpy).
  std::istringstream rows(python_says(
      "import numpy\n"
      "x = [(i * i * 37) % 101 / 7 for i in range(1, 24)]\n"
      "for p in (0, 0.05, 0.1, 0.25, 0.5, 0.8, 0.95, 1):\n"
      "  print(p, repr(float(numpy.quantile(x, p))))\n"));
  if (rows.str().empty()) {
    WARN("NumPy is not installed: not compared");
    return;
  }
  std::vector<double> x;
  for (int i = 1; i < 24; ++i) x.push_back((i * i * 37) % 101 / 7.0);
  double part = 0, expected = 0;
  while (rows >> part >> expected) CHECK(quantile(x, part) == Approx(expected).epsilon(1e-12));
}
