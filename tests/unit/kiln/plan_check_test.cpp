// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_check.h"

#include <catch2/catch.hpp>

#include "tests/unit/kiln/plan_cases.h"

using namespace tangmark::kiln;

namespace {

struct Worked {
  PlanCase the_case = hand_worked_case();
  FiringPlan plan = hand_worked_plan();
  PlanFiring& hardening() { return plan.firings[0]; }
  PlanFiring& temper() { return plan.firings[1]; }
  PlanOperation& temper_of(std::size_t blade) { return the_case.blades[blade].operations[1]; }

  bool breaks(int rule) const {
    for (const PlanViolation& v : check_plan(the_case, plan).violations)
      if (v.rule == rule) return !v.sentence.empty();
    return false;
  }
};

}  // namespace

TEST_CASE("the plan worked by hand keeps every rule and costs what the hand says") {
  // K1: heat 780 C at 600 C/h = 78 min; 2400 W x 78 + 780 W x 23 min = 205140 W min -> 102570 mc.
  // OV: 1200 W x 18 + 270 W x 130 min = 56700 W min -> 28350 mc. A is 11 min late at 50 mc.
  // Hands 5 + 8 + 5 + 5 = 23 min at 500 mc. Both blades are done at 251.
  const PlanCheck check = check_plan(hand_worked_case(), hand_worked_plan());
  REQUIRE(check.feasible());
  CHECK(check.cost == PlanCost{550, 102570 + 28350, 11500, 502});
  CHECK(check.cost->total_mc() == 143472);
  CHECK(check.firings[0].heating_min == 78);
  CHECK(check.firings[0].member_end_min == std::vector{97, 101});
  CHECK(check.firings[1].end_min == 251);
}

TEST_CASE("blades loaded at intervals soak alike and keep the hands at the door") {
  Worked w;
  w.the_case.kilns[0].staggered = true;
  for (PlanBlade& b : w.the_case.blades) b.operations[0].longest_soak_min = 10;
  const PlanCheck check = check_plan(w.the_case, w.plan);
  CHECK(check.feasible());  // waiting four minutes for the quench, B would have soaked 14
  CHECK(check.firings[0].hands == std::vector<std::pair<int, int>>{{78, 87}, {93, 101}});
  CHECK(check.cost->attention_mc == (9 + 8 + 5 + 5) * 500);
  for (PlanBlade& b : w.the_case.blades) b.operations[0].shortest_soak_min = 3;
  w.hardening().soak_min = 3;  // A would come out while B goes in
  CHECK(w.breaks(5));
}

TEST_CASE("each rule of a firing by itself is noticed when it is broken") {
  Worked w;
  SECTION("R1 a kiln that does not exist") { w.hardening().kiln = "K9"; CHECK(w.breaks(1)); }
  SECTION("R1 rest in a soak") { w.temper().rest_min = 3; CHECK(w.breaks(1)); }
  SECTION("R1 an operation that does not exist") {
    w.temper().members[0].operation = 7;
    CHECK(w.breaks(1));
  }
  SECTION("R2 more blades than slots") { w.the_case.kilns[0].slots = 1; CHECK(w.breaks(2)); }
  SECTION("R2 a blade too long") { w.the_case.blades[0].length_mm = 500; CHECK(w.breaks(2)); }
  SECTION("R3 hotter than the oven goes") {
    w.the_case.kilns[1].highest_c = 190;
    CHECK(w.breaks(3));
  }
  SECTION("R4 nobody's target") { w.temper().temp_c = 205; CHECK(w.breaks(4)); }
  SECTION("R4 another kind of work") { w.temper().kind = PlanKind::anneal; CHECK(w.breaks(4)); }
  SECTION("R5 the second blade soaks too long") {
    w.the_case.blades[1].operations[0].longest_soak_min = 13;
    CHECK(w.breaks(5));
  }
  SECTION("R6 unloading after hours") {
    w.temper().start_min = 450;
    w.temper().soak_min = 150;
    CHECK(w.breaks(6));
  }
  SECTION("R7 hardening over a break") {
    w.the_case.windows = {{0, 90}, {91, 600}};
    CHECK(w.breaks(7));
  }
  SECTION("R8 after the end of the plan") { w.the_case.horizon_min = 240; CHECK(w.breaks(8)); }
}

TEST_CASE("each rule of firings together is noticed when it is broken") {
  Worked w;
  SECTION("R9 an operation left out") { w.plan.firings.pop_back(); CHECK(w.breaks(9)); }
  SECTION("R9 an operation done twice") {
    w.plan.firings.push_back(w.temper());
    CHECK(w.breaks(9));
  }
  SECTION("R10 before release") { w.the_case.blades[0].release_min = 79; CHECK(w.breaks(10)); }
  SECTION("R11 too soon after the quench") { w.temper().start_min = 120; CHECK(w.breaks(11)); }
  SECTION("R11 too late after the quench") { w.temper().start_min = 218; CHECK(w.breaks(11)); }
  SECTION("R11 counts from what was done before the plan") {
    w.the_case.blades[0].previous_end_min = 0;
    w.the_case.blades[0].operations[0].longest_gap_min = 60;
    CHECK(w.breaks(11));
  }
  SECTION("R12 not yet heated") { w.hardening().start_min = 77; CHECK(w.breaks(12)); }
  SECTION("R12 still too hot") { w.temper().kiln = "K1"; CHECK(w.breaks(12)); }
  SECTION("R12 hot from before the plan") {
    w.the_case.kilns[1].state = PlanKilnState{260, 120, 120};
    CHECK(w.breaks(12));
  }
  SECTION("R13 both hands twice") {
    w.temper_of(0).shortest_gap_min = w.temper_of(1).shortest_gap_min = 0;
    w.temper().start_min = 100;
    CHECK(w.breaks(13));
  }
  SECTION("R14 two kilns on one circuit") {
    for (PlanKiln& k : w.the_case.kilns) k.circuit = "c";
    w.temper().start_min = 118;
    CHECK(w.breaks(14));
  }
  SECTION("R15 a locked firing moved") {
    w.the_case.locked.push_back(w.temper());
    w.temper().start_min = 122;
    CHECK(w.breaks(15));
  }
}

TEST_CASE("an anneal cools by the slowest member to the lowest, and may rest until the morning") {
  Worked w;
  w.the_case.windows = {{0, 600}, {1440, 2040}};
  w.the_case.horizon_min = 2880;
  PlanOperation anneal{.kind = PlanKind::anneal, .target_c = 760, .lowest_c = 750,
                       .highest_c = 770, .shortest_soak_min = 30, .longest_soak_min = 60,
                       .cool_c_per_h = 30, .cool_to_c = 540};
  for (PlanBlade& b : w.the_case.blades) {
    b.operations = {anneal};
    b.due_min = 2880;
  }
  w.the_case.blades[1].operations[0].cool_c_per_h = 20;
  w.the_case.blades[1].operations[0].cool_to_c = 560;
  w.plan.firings = {{"K1", PlanKind::anneal, 760, 100, 30, 645, {{"A", 0}, {"B", 0}}}};
  const PlanCheck check = check_plan(w.the_case, w.plan);
  REQUIRE(check.feasible());
  // (760 - 540) x 60 / 20 = 660 min of cooling; off at 795, out at 1445.
  CHECK(check.firings[0].off_min == 795);
  CHECK(check.firings[0].end_min == 1445);
  const std::int64_t watt_min = 2400 * 74 + 740 * 35 + 630 * 660;
  CHECK(check.cost == PlanCost{0, (watt_min * 30 + 30) / 60, 5000, 2890});
  w.plan.firings[0].rest_min = 0;
  CHECK(w.breaks(6));
}

TEST_CASE("what each blade draws beside holding joins the energy of its firing") {
  // K1 has two blades at 780 above the room: 100 mW min for each degree and blade are 156 W min, so
  // that 205296 W min cost 102648 mc.
  PlanCase c = hand_worked_case();
  c.kilns[0].load_mw_min_per_c = 100;
  CHECK(check_plan(c, hand_worked_plan()).cost->energy_mc == 102648 + 28350);
}

TEST_CASE("hands that are at what ran before the plan are at no other kiln") {
  Worked w;
  w.the_case.hands_taken = {{70, 78}};
  CHECK_FALSE(w.breaks(13));  // loading begins at 78
  w.the_case.hands_taken = {{70, 79}};
  CHECK(w.breaks(13));
}
