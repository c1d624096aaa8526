// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <sstream>
#include <string>

#include "domain/costing/loss_rate.h"
#include "domain/costing/quantile.h"
#include "tests/reference/program_says.h"

using namespace tangmark;
using namespace tangmark::costing;

namespace {

struct Tolerance {
  double relative = 0, absolute = 0;
};

/// Rows of: lost, of, confidence, low end, high end.
void compare_bands(const std::string& said, const char* program, Tolerance within) {
  if (said.empty()) {
    WARN(program << " is not installed: not compared");
    return;
  }
  std::istringstream rows(said);
  std::int64_t lost = 0, of = 0;
  double confidence = 0, low = 0, high = 0;
  int compared = 0;
  while (rows >> lost >> of >> confidence >> low >> high) {
    INFO(lost << " of " << of << " at " << confidence);
    const auto band = loss_rate({lost, of}, confidence);
    REQUIRE(band.ok());
    CHECK(band->low == Approx(low).epsilon(within.relative).margin(within.absolute));
    CHECK(band->high == Approx(high).epsilon(within.relative).margin(within.absolute));
    ++compared;
  }
  CHECK(compared > 80);
}

/// Rows of: part, quantile of (i * i * 37) % 101 / 7 for i from 1 to 23.
void compare_quantiles(const std::string& said, const char* program) {
  if (said.empty()) {
    WARN(program << " is not installed: not compared");
    return;
  }
  std::istringstream rows(said);
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

}  // namespace

TEST_CASE("the exact band agrees with SciPy over counts and confidences") {
  // Source: scipy.stats.beta.ppf (package python3-scipy).
  compare_bands(python_says("from scipy.stats import beta\n"
                            "for n in (1, 2, 3, 7, 11, 40, 500):\n"
                            "  for k in sorted({0, 1, n // 3, n // 2, n - 1, n}):\n"
                            "    for c in (0.8, 0.95, 0.99):\n"
                            "      a = (1 - c) / 2\n"
                            "      lo = 0.0 if k == 0 else beta.ppf(a, k, n - k + 1)\n"
                            "      hi = 1.0 if k == n else beta.ppf(1 - a, k + 1, n - k)\n"
                            "      print(k, n, repr(c), repr(float(lo)), repr(float(hi)))\n"),
                "SciPy", {1e-9, 1e-12});
}

TEST_CASE("the exact band agrees with the exact binomial test of R") {
  // Source: binom.test of R (package r-base-core), whose interval is that of Clopper and Pearson;
  // it searches its ends to about 1e-10.
  compare_bands(
      r_says(
          "for (n in c(1, 2, 3, 7, 11, 40, 500)) for (k in unique(c(0, 1, n %/% 3, n %/% 2, n)))\n"
          "  for (c in c(0.8, 0.95, 0.99)) {\n"
          "    b <- binom.test(k, n, conf.level = c)$conf.int\n"
          "    cat(k, n, c, format(b[1], digits = 15), format(b[2], digits = 15), \"\\n\")\n"
          "  }"),
      "R", {1e-7, 1e-9});
}

TEST_CASE("quantiles agree with NumPy") {
  // Source: numpy.quantile, method linear (package python3-numpy).
  compare_quantiles(python_says("import numpy\n"
                                "x = [(i * i * 37) % 101 / 7 for i in range(1, 24)]\n"
                                "for p in (0, 0.05, 0.1, 0.25, 0.5, 0.8, 0.95, 1):\n"
                                "  print(p, repr(float(numpy.quantile(x, p))))\n"),
                    "NumPy");
}

TEST_CASE("quantiles agree with definition 7 of R") {
  // Source: quantile(type = 7) of R, its default.
  compare_quantiles(
      r_says("x <- ((1:23)^2 * 37) %% 101 / 7\n"
             "for (p in c(0, 0.05, 0.1, 0.25, 0.5, 0.8, 0.95, 1))\n"
             "  cat(p, format(unname(quantile(x, p, type = 7)), digits = 15), \"\\n\")"),
      "R");
}
