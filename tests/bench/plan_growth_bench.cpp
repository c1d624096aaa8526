// SPDX-License-Identifier: MIT
// How the planner's work grows with the shop: the same kind of week for 50 to 400 blades, the same
// steps for each operation. Per line: what is left above the bound, time for each step against that
// of the smallest case in the same run, time until a gap that all reach, and the most memory taken.
#include <sys/resource.h>

#include <catch2/catch.hpp>
#include <cstdio>
#include <optional>
#include <vector>

#include "domain/kiln/plan_chance.h"
#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_search.h"
#include "tests/bench/thread_seconds.h"

using namespace tangmark::kiln;

namespace {

PlanOperation soak(int temp_c, int soak_min, int more_min, bool unattended) {
  return {.target_c = temp_c, .lowest_c = temp_c - 10, .highest_c = temp_c + 10,
          .shortest_soak_min = soak_min, .longest_soak_min = soak_min + more_min,
          .unattended = unattended, .shortest_gap_min = 20};
}

PlanBlade blade(int number, int days, PlanChance& chance) {
  const int harden_c = 800 + 15 * chance.below(4) + 200 * chance.below(2);
  PlanBlade b{"B" + std::to_string(number), 180 + 30 * chance.below(8),
              60 * chance.below(24 * days), 0, 300, {}, {}};
  b.due_min = b.release_min + 1440 * (5 + chance.below(9));
  if (chance.one_in(2)) b.operations = {soak(885, 10, 15, false), soak(829, 10, 15, false)};
  b.operations.push_back({.kind = PlanKind::harden, .target_c = harden_c,
                          .lowest_c = harden_c - 7, .highest_c = harden_c + 10,
                          .shortest_soak_min = 12, .longest_soak_min = 32, .unattended = false,
                          .quench_min = 4, .shortest_gap_min = 30});
  const int temper_c = 190 + 6 * chance.below(4);
  for (int temper = 0; temper < 2; ++temper) b.operations.push_back(soak(temper_c, 120, 40, true));
  b.operations[b.operations.size() - 2].longest_gap_min = 120;
  b.operations.back().longest_gap_min = 2880;
  return b;
}

/// As many kilns whatever the number of blades, which come in at the same rate for longer.
PlanCase shop_of(int blades) {
  PlanChance chance(static_cast<std::uint64_t>(blades));
  const int days = blades / 4;
  PlanCase c{.name = "growth", .horizon_min = (days + 40) * 1440, .prices = {30, 10'000, 1}};
  for (int day = 0; day < days + 40; ++day)
    if (day % 7 < 5) c.windows.emplace_back(day * 1440 + 450, day * 1440 + 1110);
  c.kilns.push_back({"K1", 6, 560, 100, 1200, 720, 110, 3600, 1300, 5, 5, {}, {}});
  c.kilns.push_back({"K2", 4, 460, 100, 1200, 900, 85, 2400, 950, 4, 4, {}, {}});
  c.kilns.push_back({"OV", 8, 600, 50, 260, 500, 40, 1400, 1600, 3, 3, {}, {}});
  for (int b = 0; b < blades; ++b) c.blades.push_back(blade(b, days, chance));
  return c;
}

double peak_memory_mb() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;
}

constexpr std::int64_t steps_for_each_operation = 300;
constexpr double gap_that_all_reach = 0.50;  // above the bound

/// Microseconds for each step.
double growth_line(int blades, std::optional<double> smallest_us) {
  const PlanCase c = shop_of(blades);
  std::int64_t operations = 0;
  for (const PlanBlade& b : c.blades) operations += static_cast<std::int64_t>(b.operations.size());
  SearchLimits limits;
  limits.iterations = steps_for_each_operation * operations;
  const double start = tangmark::bench::thread_seconds();
  double reached_s = -1;
  limits.progress = [&](const SearchProgress& p) {
    const auto bound = static_cast<double>(p.bound_mc);
    if (reached_s < 0 && static_cast<double>(p.best_mc) <= bound * (1 + gap_that_all_reach))
      reached_s = tangmark::bench::thread_seconds() - start;
  };
  const PlanAnswer answer = plan_firings(c, limits, 1);
  const double us =
      1e6 * (tangmark::bench::thread_seconds() - start) / static_cast<double>(answer.iterations);
  CHECK(answer.unplaced.empty());
  CHECK(check_plan(c, answer.plan).feasible());
  CHECK(peak_memory_mb() < 200);
  const auto cost = static_cast<double>(answer.cost.total_mc());
  const auto bound = static_cast<double>(answer.bound_mc);
  std::printf("%7d %6lld %12.0f %12.0f %7.1f %9lld %9.1f %9.2f %12.2f %9.0f\n", blades,
              static_cast<long long>(operations), cost, bound, 100 * (cost / bound - 1),
              static_cast<long long>(answer.iterations), us, us / smallest_us.value_or(us),
              reached_s, peak_memory_mb());
  std::fflush(stdout);
  return us;
}

}  // namespace

TEST_CASE("planning 50 to 400 blades") {
  std::printf("%7s %6s %12s %12s %7s %9s %9s %9s %12s %9s\n", "blades", "ops", "cost mc",
              "bound mc", "above %", "steps", "us a step", "to 50", "s to +50 %", "peak MB");
  std::optional<double> smallest_us;
  for (int blades : {50, 100, 200, 400}) {
    const double us = growth_line(blades, smallest_us);
    if (!smallest_us) smallest_us = us;
  }
}
