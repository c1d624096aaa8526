// SPDX-License-Identifier: MIT
// Small cases of every rule, settled by an exact solver (plan_exact_model.h).
#include <catch2/catch.hpp>
#include <string>

#include "domain/kiln/plan_chance.h"
#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_problems.h"
#include "domain/kiln/plan_search.h"
#include "tests/reference/kiln/plan_exact_model.h"

using namespace tangmark::kiln;

namespace {

constexpr int seconds_each = 10;
constexpr std::int64_t steps = 20'000;

/// Kilns that heat in a minute or two and cool in ten, so that an hour holds a whole day's
/// questions.
class TinyShop {
 public:
  explicit TinyShop(std::uint64_t seed) : chance_(seed) {}

  PlanCase shop(int kilns) {
    PlanCase c{.name = "tiny", .horizon_min = 38 + chance_.below(6), .prices = {60, 500, 3}};
    const int noon = 18 + chance_.below(6);
    c.windows = {{0, noon}, {noon + 1 + chance_.below(4), c.horizon_min}};
    for (int k = 0; k < kilns; ++k) c.kilns.push_back(kiln(k));
    return c;
  }

  PlanKiln kiln(int k) {
    PlanKiln made;
    made.id = "K" + std::to_string(k);
    made.slots = 1 + chance_.below(2);
    made.max_length_mm = 400;
    made.lowest_c = 100;
    made.highest_c = k == 1 ? 260 : 900;
    made.heat_c_per_h = 60 * (100 + 20 * chance_.below(6));
    made.time_constant_min = 6 + chance_.below(8);
    made.heat_w = 2000 + 400 * chance_.below(5);
    made.hold_mw_per_c = 500 + 250 * chance_.below(5);
    made.load_min = 1 + chance_.below(2);
    made.unload_min = 1 + chance_.below(2);
    return made;
  }

  PlanBlade blade(int b) {
    return {"B" + std::to_string(b), 300, chance_.below(4), 20 + chance_.below(20),
            100 * chance_.below(5), {}, {}};
  }

  PlanOperation soak(int temp_c, bool unattended) {
    const int least = 4 + chance_.below(3);
    return {.target_c = temp_c + 6 * chance_.below(2),
            .lowest_c = temp_c - 5,
            .highest_c = temp_c + 8,
            .shortest_soak_min = least,
            .longest_soak_min = least + chance_.below(3),
            .unattended = unattended};
  }

  PlanOperation harden(int temp_c) {
    PlanOperation op = soak(temp_c, false);
    op.kind = PlanKind::harden;
    op.quench_min = 1 + chance_.below(2);
    op.longest_soak_min += 2;
    return op;
  }

  PlanOperation temper() {
    PlanOperation op = soak(200, true);
    op.shortest_gap_min = chance_.below(3);
    op.longest_gap_min = op.shortest_gap_min + 9 + chance_.below(8);
    return op;
  }

  PlanOperation anneal() {
    PlanOperation op = soak(500, true);
    op.kind = PlanKind::anneal;
    op.cool_c_per_h = 60 * (15 + 10 * chance_.below(2));
    op.cool_to_c = 420;
    op.shortest_gap_min = chance_.below(3);
    return op;
  }

  int below(int n) { return chance_.below(n); }
  bool one_in(int n) { return chance_.one_in(n); }

 private:
  PlanChance chance_;
};

/// Soaks at one temperature or at two: heating and natural cooling between them.
PlanCase soaks(std::uint64_t seed) {
  TinyShop make(seed);
  PlanCase c = make.shop(1 + static_cast<int>(seed % 2));
  for (int b = 0, n = 2 + make.below(2); b < n; ++b) {
    PlanBlade blade = make.blade(b);
    blade.operations.push_back(make.soak(make.one_in(2) ? 200 : 300, make.one_in(2)));
    if (n == 2) {
      blade.operations.push_back(make.soak(200, make.one_in(2)));
      blade.operations.back().shortest_gap_min = make.below(4);
      if (make.one_in(2))
        blade.operations.back().longest_gap_min = blade.operations.back().shortest_gap_min + 6;
    }
    c.blades.push_back(blade);
  }
  return c;
}

/// Hardened one by one and tempered in time, in one kiln that has to cool or in two.
PlanCase hardens(std::uint64_t seed) {
  TinyShop make(seed);
  PlanCase c = make.shop(1 + static_cast<int>(seed % 2));
  c.kilns[0].slots = 2;
  for (int b = 0; b < 2; ++b) {
    PlanBlade blade = make.blade(b);
    blade.operations = {make.harden(500), make.temper()};
    c.blades.push_back(blade);
  }
  return c;
}

/// Two kilns on one circuit.
PlanCase on_one_circuit(std::uint64_t seed) {
  PlanCase c = hardens(2 * seed + 1);
  for (PlanKiln& k : c.kilns) k.circuit = "A";
  return c;
}

/// Slow cooling, with a rest in the switched-off kiln where nobody is there to unload.
PlanCase anneals(std::uint64_t seed) {
  TinyShop make(seed);
  PlanCase c = make.shop(1);
  c.windows.back().second = c.horizon_min += 12;
  for (int b = 0; b < 2; ++b) {
    PlanBlade blade = make.blade(b);
    if (b == 0) blade.operations.push_back(make.soak(600, false));
    blade.operations.push_back(make.anneal());
    c.blades.push_back(blade);
  }
  return c;
}

/// What goes beyond the format: a kiln still hot, hands taken, a blade that came out of a quench
/// before the plan, loading at intervals, a tank that must cool between two quenches.
PlanCase beyond(std::uint64_t seed) {
  PlanCase c = hardens(seed);
  TinyShop make(seed + 1000);
  c.kilns[0].staggered = make.one_in(2);
  c.kilns.back().state = PlanKilnState{300, -4, make.below(3)};
  c.hands_taken = {{8 + make.below(6), 15}};
  c.baths = {{"oil", 40, 70, 10, 40 + 5 * make.below(3)}};
  for (PlanBlade& b : c.blades) {
    b.operations[0].bath = "oil";
    b.operations[0].warms_mk = 12'000 + 1'000 * make.below(8);
  }
  if (c.kilns.size() > 1 && make.one_in(2)) {
    c.blades[1].operations.erase(c.blades[1].operations.begin());
    c.blades[1].previous_end_min = -2;
  }
  return c;
}

/// How many of the cases the solver settled with a plan.
int compare(PlanCase (*make)(std::uint64_t), std::uint64_t seeds) {
  int compared = 0;
  for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
    INFO("case " << seed);
    const PlanCase c = make(seed);
    REQUIRE(problems_of(c).empty());
    const Settled settled = settle_exactly(c, seconds_each);
    if (!settled.proven) continue;
    SearchLimits limits;
    limits.iterations = steps;
    const PlanAnswer answer = plan_firings(c, limits, 1);
    if (!settled.optimum_mc) {
      CHECK_FALSE(answer.unplaced.empty());
      continue;
    }
    ++compared;
    CHECK(answer.unplaced.empty());
    CHECK(answer.cost.total_mc() == *settled.optimum_mc);
    CHECK(answer.bound_mc <= *settled.optimum_mc);
  }
  return compared;
}

}  // namespace

TEST_CASE("the planner meets the optimum of an exact solver, and its bound never passes it") {
  if (!have_exact_solver()) {
    WARN("glpsol is not installed: nothing was compared.");
    return;
  }
  SECTION("soaks at one temperature and at two") { CHECK(compare(soaks, 8) >= 4); }
  SECTION("hardening and tempering") { CHECK(compare(hardens, 8) >= 4); }
  SECTION("two kilns on one circuit") { CHECK(compare(on_one_circuit, 4) >= 2); }
  SECTION("annealing") { CHECK(compare(anneals, 6) >= 3); }
  SECTION("what goes beyond the format") { CHECK(compare(beyond, 8) >= 4); }
}
