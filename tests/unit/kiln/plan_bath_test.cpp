// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_bath.h"

#include <catch2/catch.hpp>

#include "domain/kiln/plan_search.h"
#include "tests/unit/kiln/plan_cases.h"

using namespace tangmark::kiln;

namespace {

PlanBath oil_at(int now_c) { return {"oil", 40, 70, 30, now_c}; }

/// Each of the two blades warms the oil by 16 degrees, at minutes 97 and 101 of the plan by hand.
PlanCase quenched_in_oil(int highest_c) {
  PlanCase c = hand_worked_case();
  c.baths = {{"oil", 40, highest_c, 60, {}}};
  for (PlanBlade& b : c.blades) {
    b.operations[0].bath = "oil";
    b.operations[0].warms_mk = 16'000;
  }
  return c;
}

PlanAnswer planned(const PlanCase& c) {
  SearchLimits limits;
  limits.iterations = 2000;
  return plan_firings(c, limits, 1);
}

std::vector<PlanViolation> of_rule_16(const PlanCase& c, const FiringPlan& plan) {
  std::vector<PlanViolation> found;
  for (const PlanViolation& v : check_plan(c, plan).violations)
    if (v.rule == 16) found.push_back(v);
  return found;
}

}  // namespace

TEST_CASE("a tank falls back to rest by its time constant and each quench warms it") {
  // 20 above rest falls in 30 min to 20/e = 7.36; with 20 more it stands at 40 + 27.36 = 67.4.
  CHECK_FALSE(first_excess(oil_at(60), {{30, 20'000}}));
  // With 23 more it stands at 70.4.
  const auto hot = first_excess(oil_at(60), {{30, 23'000}});
  REQUIRE(hot);
  CHECK(hot->celsius == Approx(40 + 20 / 2.718281828 + 23));
  // Ten and another ten a minute later: 10/e^(1/30) + 10 = 19.67, twice over 29.3 and so below.
  CHECK_FALSE(first_excess(oil_at(40), {{5, 10'000}, {6, 10'000}, {7, 10'000}}));
  const auto third = first_excess(oil_at(40), {{5, 11'000}, {6, 11'000}, {7, 11'000}});
  REQUIRE(third);
  CHECK(third->quench == 2);
}

TEST_CASE("a quench that takes the tank above its limit is told with its blade and tank") {
  // 16 at minute 97, four minutes later 16 / e^(4/60) + 16 = 30.97 above rest.
  CHECK(of_rule_16(quenched_in_oil(71), hand_worked_plan()).empty());
  const auto found = of_rule_16(quenched_in_oil(70), hand_worked_plan());
  REQUIRE(found.size() == 1);
  CHECK(found[0].blade == "B");
  CHECK(found[0].sentence ==
        "The quench of blade B at minute 101 takes the oil to 71.0 C; its limit is 70 C.");
}

TEST_CASE("the plan keeps blades out of a tank that has not cooled yet") {
  CHECK(planned(quenched_in_oil(71)).plan.firings.size() == 2);
  const PlanCase c = quenched_in_oil(70);
  const PlanAnswer answer = planned(c);
  CHECK(answer.unplaced.empty());
  CHECK(check_plan(c, answer.plan).feasible());
  CHECK(answer.plan.firings.size() > 2);  // not hardened together
  CHECK(answer.cost.total_mc() > 143472);
}

TEST_CASE("a row of firings is kept from heating the tank more and more") {
  PlanCase c = quenched_in_oil(60);
  c.baths[0].time_constant_min = 120;
  c.kilns[0].slots = 1;
  const PlanAnswer answer = planned(c);
  CHECK(answer.unplaced.empty());
  CHECK(check_plan(c, answer.plan).feasible());
  std::vector<int> quenched;
  for (const TimedFiring& f : check_plan(c, answer.plan).firings)
    if (answer.plan.firings[f.firing].kind == PlanKind::harden) quenched.push_back(f.end_min);
  REQUIRE(quenched.size() == 2);
  // 16 has to fade to 4 first: 120 ln 4 = 166 min.
  CHECK(std::abs(quenched[0] - quenched[1]) >= 166);
}

TEST_CASE("a blade too hot for its tank by itself is told so, and what would take it") {
  PlanCase c = quenched_in_oil(70);
  c.blades[1].operations[0].warms_mk = 31'000;
  const PlanAnswer answer = planned(c);
  REQUIRE(answer.unplaced.size() == 1);
  CHECK(answer.unplaced[0].blade == "B");
  CHECK(answer.unplaced[0].rule == 16);
  CHECK_THAT(answer.unplaced[0].why, Catch::Contains("oil to 71 C"));
  CHECK_THAT(answer.unplaced[0].change, Catch::Contains("go to 71 C"));
}
