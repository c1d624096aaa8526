// SPDX-License-Identifier: MIT
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdio>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_json.h"
#include "tests/bench/thread_seconds.h"

using namespace tangmark::kiln;

namespace {

struct Known {
  std::string name;
  double best_mc = 0;
};

std::string cases_folder() { return TANGMARK_TESTS_DIR "/reference/kiln/cases/"; }

std::string text_of(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

std::vector<Known> known_cases() {
  std::vector<Known> known;
  std::ifstream file(cases_folder() + "best_known.csv");
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line[0] == '#' || line.starts_with("case,")) continue;
    const auto first = line.find(',');
    known.push_back({line.substr(0, first), std::stod(line.substr(line.rfind(',') + 1))});
  }
  return known;
}

/// The seconds of one thread in which a case of that size should be planned well.
double allowed_s(std::size_t blades) { return blades <= 6 ? 1 : blades <= 70 ? 10 : 30; }

/// Plans one case, prints its line and returns the ratio to the best known cost.
double plan_line(const Known& known, std::uint64_t seed) {
  const auto a_case = read_plan_case(text_of(cases_folder() + known.name + ".json")).value();
  const double start = tangmark::bench::thread_seconds();
  auto seconds = [&] { return tangmark::bench::thread_seconds() - start; };
  SearchLimits limits;
  limits.time_used = [&] { return seconds() / allowed_s(a_case.blades.size()); };
  const PlanAnswer answer = plan_firings(a_case, limits, seed);
  const double took_s = seconds();
  REQUIRE(answer.unplaced.empty());
  REQUIRE(check_plan(a_case, answer.plan).feasible());
  const auto cost = static_cast<double>(answer.cost.total_mc());
  const auto bound = static_cast<double>(answer.bound_mc);
  CHECK(answer.bound_mc <= answer.cost.total_mc());
  std::printf("%-16s %4llu %7zu %12.0f %12.0f %7.1f %10.4f %8.2f\n", known.name.c_str(),
              static_cast<unsigned long long>(seed), a_case.blades.size(), cost, bound,
              100 * (cost - bound) / cost, cost / known.best_mc, took_s);
  std::fflush(stdout);
  return cost / known.best_mc;
}

void plan_table(int seeds) {
  std::printf("%-16s %4s %7s %12s %12s %7s %10s %8s\n", "case", "seed", "blades", "cost mc",
              "bound mc", "gap %", "to best", "seconds");
  for (const Known& known : known_cases()) {
    std::vector<double> ratios;
    for (int seed = 1; seed <= seeds; ++seed)
      ratios.push_back(plan_line(known, static_cast<std::uint64_t>(seed)));
    std::sort(ratios.begin(), ratios.end());
    std::printf("%-16s median %+.2f %%, worst %+.2f %% of best known\n", known.name.c_str(),
                100 * (ratios[ratios.size() / 2] - 1), 100 * (ratios.back() - 1));
  }
}

}  // namespace

TEST_CASE("every reference case is planned, one seed each") { plan_table(1); }

TEST_CASE("every reference case is planned, five seeds each", "[.][five seeds]") { plan_table(5); }
