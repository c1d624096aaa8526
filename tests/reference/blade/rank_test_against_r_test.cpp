// SPDX-License-Identifier: MIT
// The statistics of a trial against R (package r-base-core), where it is installed.
#include <catch2/catch.hpp>
#include <sstream>
#include <string>

#include "domain/blade/rank_test.h"
#include "tests/reference/program_says.h"

using namespace tangmark;
using namespace tangmark::blade;

namespace {

struct Case {
  double first = 0, p = 0;  // the statistic and its p, as R prints them
  std::vector<double> x, y;
};

// One case a line: n, the statistic, p, then all of x and all of y.
std::vector<Case> cases_of(const std::string& said) {
  std::istringstream rows(said);
  std::vector<Case> cases;
  std::size_t n = 0;
  Case one;
  while (rows >> n >> one.first >> one.p) {
    one.x.resize(n);
    one.y.resize(n);
    for (double& value : one.x) rows >> value;
    for (double& value : one.y) rows >> value;
    cases.push_back(one);
  }
  return cases;
}

}  // namespace

// Source: R, cor.test(method = "spearman", exact = TRUE), which counts every order up to 9 blades.
TEST_CASE("rank correlation and its exact p agree with R without ties") {
  const auto cases = cases_of(
      r_says("set.seed(7); for (n in 4:9) for (k in 1:4) { x <- sample(99, n); y <- sample(99, n); "
             "t <- cor.test(x, y, method = \"spearman\", exact = TRUE); "
             "cat(n, format(t$estimate, digits = 15), format(t$p.value, digits = 15), x, y, "
             "\"\\n\") }"));
  if (cases.empty()) {
    WARN("R is not installed: not compared");
    return;
  }
  CHECK(cases.size() == 24);
  for (const Case& one : cases) {
    const auto test = rank_test(one.x, one.y);
    REQUIRE(test);
    CHECK(test->exact);
    CHECK(test->rho == Approx(one.first).margin(1e-12));
    CHECK(test->p == Approx(one.p).epsilon(1e-9));
  }
}

// Source: R, wilcox.test(exact = TRUE). Where the variable has two values only ("soaked longer or
// not"), the permutation test on ranks is the exact rank-sum test of two groups.
TEST_CASE("with two values of a variable the test is the exact rank-sum test of R") {
  const auto cases = cases_of(
      r_says("set.seed(11); for (n in 5:11) for (k in 1:3) { x <- c(rep(0, n %/% 2), "
             "rep(1, n - n %/% 2)); y <- sample(99, n); "
             "t <- wilcox.test(y[x == 0], y[x == 1], exact = TRUE); "
             "cat(n, t$statistic, format(t$p.value, digits = 15), x, y, \"\\n\") }"));
  if (cases.empty()) {
    WARN("R is not installed: not compared");
    return;
  }
  CHECK(cases.size() == 21);
  for (const Case& one : cases) {
    const auto test = rank_test(one.x, one.y);
    REQUIRE(test);
    CHECK(test->p == Approx(one.p).epsilon(1e-9));
  }
}
