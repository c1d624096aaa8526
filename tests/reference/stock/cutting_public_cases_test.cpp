// SPDX-License-Identifier: MIT
#include <algorithm>
#include <catch2/catch.hpp>
#include <ctime>
#include <fstream>
#include <sstream>

#include "domain/stock/cutting_json.h"

using namespace tangmark::stock;

namespace {

std::string text_of(const std::string& name) {
  std::ifstream file(std::string(TANGMARK_TESTS_DIR) + "/reference/stock/cutting_cases/" + name);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

double processor_seconds() {
  return double(std::clock()) / CLOCKS_PER_SEC;
}

// Sanitized code is many times slower; what is tested is the plan, not the speed.
#ifdef __SANITIZE_ADDRESS__
constexpr double patience = 20;
#else
constexpr double patience = 1;
#endif

}  // namespace

TEST_CASE("the public cutting cases are met or bettered") {
  // Source: best.csv beside the cases: values of an exact mixed-integer solver, proven optimal
  // where its last column ends in "Optimal", else the best known when the solver was stopped.
  std::istringstream rows(text_of("best.csv"));
  std::string row;
  std::getline(rows, row);
  int seen = 0;
  while (std::getline(rows, row)) {
    std::replace(row.begin(), row.end(), ',', ' ');
    std::istringstream fields(row);
    std::string name, proof;
    std::size_t placed = 0, bars = 0;
    double value = 0;
    fields >> name >> placed >> value >> bars;
    std::getline(fields, proof);
    INFO(name);
    const auto cutting = cutting_case_from(text_of(name + ".json"));
    REQUIRE(cutting.ok());
    const double limit = patience * (cutting->blanks.size() <= 20 ? 1 : 3);
    const double start = processor_seconds();
    const auto plan = cutting_plan(*cutting, [&] { return processor_seconds() - start > limit; });
    CHECK(cutting->blanks.size() - plan->unplaced.size() == placed);
    CHECK(plan->value_used <= value * (1 + 1e-6));
    CHECK(plan->value_at_least <= plan->value_used);
    if (cutting->blanks.size() <= 20) {
      CHECK(plan->proven);
      CHECK(plan->value_used == Approx(value).epsilon(1e-6));
      CHECK(plan->cuts.size() <= bars);
    }
    ++seen;
  }
  CHECK(seen == 7);
}
