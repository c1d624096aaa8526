// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <sstream>
#include <string>

#include "domain/costing/loss_rate.h"
#include "domain/costing/quantile.h"
#include "tests/reference/r_says.h"

using namespace tangmark;
using namespace tangmark::costing;

TEST_CASE("the exact band agrees with the exact binomial test of R") {
  // Source: binom.test of R (package r-base-core), whose interval is that of Clopper and Pearson.
  std::istringstream rows(r_says(
      "for (n in c(1, 2, 3, 7, 11, 40, 500)) for (k in unique(c(0, 1, n %/% 3, n %/% 2, n)))\n"
      "  for (c in c(0.8, 0.95, 0.99)) {\n"
      "    b <- binom.test(k, n, conf.level = c)$conf.int\n"
      "    cat(k, n, c, format(b[1], digits = 15), format(b[2], digits = 15), \"\\n\")\n"
      "  }"));
  if (rows.str().empty()) {
    WARN("R is not installed: not compared");
    return;
  }
  std::int64_t lost = 0, of = 0;
  double confidence = 0, low = 0, high = 0;
  int compared = 0;
  while (rows >> lost >> of >> confidence >> low >> high) {
    INFO(lost << " of " << of << " at " << confidence);
    const auto band = loss_rate({lost, of}, confidence);
    REQUIRE(band.ok());
    // binom.test searches its ends to about 1e-10.
    CHECK(band->low == Approx(low).epsilon(1e-7).margin(1e-9));
    CHECK(band->high == Approx(high).epsilon(1e-7).margin(1e-9));
    ++compared;
  }
  CHECK(compared > 80);
}

TEST_CASE("quantiles agree with definition 7 of R") {
  // Source: quantile(type = 7) of R, its default.
  std::istringstream rows(
      r_says("x <- ((1:23)^2 * 37) %% 101 / 7\n"
             "for (p in c(0, 0.05, 0.1, 0.25, 0.5, 0.8, 0.95, 1))\n"
             "  cat(p, format(unname(quantile(x, p, type = 7)), digits = 15), \"\\n\")"));
  if (rows.str().empty()) {
    WARN("R is not installed: not compared");
    return;
  }
  std::vector<double> x;
  for (int i = 1; i < 24; ++i) x.push_back((i * i * 37) % 101 / 7.0);
  double part = 0, expected = 0;
  int compared = 0;
  while (rows >> part >> expected) {
    CHECK(quantile(x, part) == Approx(expected).epsilon(1e-12));
    ++compared;
  }
  CHECK(compared == 8);
}
