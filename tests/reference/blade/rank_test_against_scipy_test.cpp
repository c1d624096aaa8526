// SPDX-License-Identifier: MIT
// The statistics of a trial against SciPy (package python3-scipy), where it is installed.
#include <catch2/catch.hpp>
#include <sstream>
#include <string>

#include "domain/blade/rank_test.h"
#include "tests/reference/program_says.h"

using namespace tangmark;
using namespace tangmark::blade;

TEST_CASE("rank correlation and exact permutation test agree with SciPy, with and without ties") {
  // Source: scipy.stats.spearmanr for the correlation; its value over itertools.permutations for p
  // with ties, scipy.stats.permutation_test (pairings, exact) for p without.
  std::istringstream rows(python_says(
      "import itertools, random\n"
      "from scipy.stats import spearmanr, permutation_test\n"
      "random.seed(7)\n"
      "stat = lambda x, y: spearmanr(x, y).correlation\n"
      "for n in (3, 4, 5, 6, 7):\n"
      "  for tied in (0, 1):\n"
      "    for again in range(3):\n"
      "      if tied and n > 5: continue\n"
      "      while True:\n"
      "        x = [random.randint(1, n - 1) for i in range(n)] if tied else "
      "random.sample(range(99), n)\n"
      "        y = [random.randint(1, n - 1) for i in range(n)] if tied else "
      "random.sample(range(99), n)\n"
      "        if len(set(x)) > 1 and len(set(y)) > 1: break\n"
      "      r = stat(x, y)\n"
      "      if tied:\n"
      "        all = [abs(stat(x, z)) for z in itertools.permutations(y)]\n"
      "        p = sum(a >= abs(r) - 1e-9 for a in all) / len(all)\n"
      "      else:\n"
      "        p = permutation_test((x,), lambda z: stat(z, y), permutation_type=\"pairings\",\n"
      "                             n_resamples=10000).pvalue\n"
      "      print(n, repr(float(r)), repr(float(p)), *x, *y)\n"));
  if (rows.str().empty()) {
    WARN("SciPy is not installed: not compared");
    return;
  }
  std::size_t n = 0;
  double rho = 0, p = 0;
  int compared = 0;
  while (rows >> n >> rho >> p) {
    std::vector<double> x(n), y(n);
    for (double& value : x) rows >> value;
    for (double& value : y) rows >> value;
    INFO("case " << compared << " of " << n << " blades");
    const auto test = rank_test(x, y);
    REQUIRE(test);
    CHECK(test->rho == Approx(rho).margin(1e-12));
    CHECK(test->p == Approx(p).epsilon(1e-9));
    ++compared;
  }
  CHECK(compared >= 20);
}

TEST_CASE("the critical values of Spearman's coefficient for small n are met") {
  // Source: tables of exact two-sided significance of Spearman's rho, as in statistics textbooks
  // (from memory): n 5, rho 1.000 at 0.0167; n 6, rho 0.886 at 0.0333, 1.000 at 0.0028; n 7, rho
  // 0.786 at 0.048; n 8, rho 0.738 at 0.046.
  struct Row {
    std::vector<double> y;
    double rho, p;
  };
  const std::vector<Row> rows{{{1, 2, 3, 4, 5}, 1.0, 0.0167},
                              {{1, 2, 3, 4, 5, 6}, 1.0, 0.0028},
                              {{2, 1, 3, 4, 6, 5}, 0.886, 0.0333},
                              {{3, 1, 2, 4, 5, 7, 6}, 0.857, 0.024}};
  for (const Row& row : rows) {
    std::vector<double> x(row.y.size());
    for (std::size_t i = 0; i < x.size(); ++i) x[i] = static_cast<double>(i);
    const auto test = rank_test(x, row.y);
    REQUIRE(test);
    CHECK(test->rho == Approx(row.rho).margin(0.0006));
    CHECK(test->p == Approx(row.p).margin(0.0006));
  }
}
