// SPDX-License-Identifier: MIT
#include "domain/blade/rank_test.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <numeric>

using namespace tangmark::blade;

namespace {

// Every order by the library's own way, correlation from its definition: slow and plain.
double p_by_definition(const std::vector<double>& xs, const std::vector<double>& ys) {
  const auto a = ranks_of(xs), b = ranks_of(ys);
  const double mean = (static_cast<double>(a.size()) + 1) / 2;
  const auto along = [&](const std::vector<std::size_t>& order) {
    double sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i) sum += (a[i] - mean) * (b[order[i]] - mean);
    return std::abs(sum);
  };
  std::vector<std::size_t> order(a.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const double observed = along(order);
  double as_far = 0, all = 0;
  do {
    ++all;
    if (along(order) >= observed - 1e-9) ++as_far;
  } while (std::next_permutation(order.begin(), order.end()));
  return as_far / all;
}

}  // namespace

TEST_CASE("tied values share the mean of their ranks") {
  CHECK(ranks_of(std::vector<double>{3, 1, 3, 2}) == std::vector<double>{3.5, 1, 3.5, 2});
}

TEST_CASE("the permutation test agrees with every order written out") {
  const std::vector<std::pair<std::vector<double>, std::vector<double>>> cases{
      {{5, 10, 15, 20, 30}, {60, 60.5, 61, 61.5, 62}},
      {{5, 10, 10, 20, 30, 30}, {61, 60.5, 61, 61, 62, 60}},
      {{1, 2, 3, 4, 5, 6, 7}, {3, 1, 4, 1, 5, 9, 2}},
      {{1, 1, 1, 2}, {4, 3, 2, 1}}};
  for (const auto& [xs, ys] : cases) {
    const auto test = rank_test(xs, ys);
    REQUIRE(test);
    CHECK(test->exact);
    CHECK(test->p == Approx(p_by_definition(xs, ys)).epsilon(1e-12));
  }
}

TEST_CASE("a perfect order of n blades has the least p that n can show") {
  for (std::size_t n = 2; n <= 9; ++n) {
    std::vector<double> xs(n);
    std::iota(xs.begin(), xs.end(), 1.0);
    const auto test = rank_test(xs, xs);
    REQUIRE(test);
    CHECK(test->rho == Approx(1));
    CHECK(test->p == Approx(least_p(n)));
  }
}

TEST_CASE("many blades are judged by a draw of orders, the same every time") {
  std::vector<double> xs(20), ys(20);
  for (std::size_t i = 0; i < 20; ++i) {
    xs[i] = static_cast<double>(i);
    ys[i] = static_cast<double>((i * 7) % 20);
  }
  const auto test = rank_test(xs, ys);
  REQUIRE(test);
  CHECK_FALSE(test->exact);
  CHECK(test->pairings == 1'000'000);
  CHECK(rank_test(xs, ys)->p == test->p);
}

TEST_CASE("nothing is tested where nothing varies") {
  CHECK_FALSE(rank_test(std::vector<double>{}, std::vector<double>{}));
  CHECK_FALSE(rank_test(std::vector<double>{1}, std::vector<double>{2}));
  CHECK_FALSE(rank_test(std::vector<double>{1, 1, 1}, std::vector<double>{1, 2, 3}));
  CHECK_FALSE(rank_test(std::vector<double>{1, 2, 3}, std::vector<double>{2, 2, 2}));
}
