// SPDX-License-Identifier: MIT
#include "domain/kiln/replanning.h"

#include <catch2/catch.hpp>

#include "domain/kiln/plan_check.h"
#include "tests/unit/kiln/plan_cases.h"

using namespace tangmark::kiln;

namespace {

SearchLimits steps(std::int64_t iterations) {
  SearchLimits limits;
  limits.iterations = iterations;
  return limits;
}

/// Six blades over two days, two kilns that harden and one oven.
PlanCase a_week() {
  PlanCase c = hand_worked_case();
  c.horizon_min = 3 * 1440;
  c.windows = {{0, 600}, {1440, 2040}, {2880, 3480}};
  c.kilns.push_back(c.kilns.front());
  c.kilns.back().id = "K2";
  for (const char* id : {"C", "D", "E", "F"}) {
    c.blades.push_back(c.blades.front());
    c.blades.back().id = id;
    c.blades.back().due_min = 2000;
  }
  return c;
}

BookedPlan booked(const FiringPlan& plan, std::int64_t moved_mc) {
  return {plan.firings, moved_mc};
}

void take_out(PlanCase& c, BookedPlan& plan, const std::string& blade) {
  std::erase_if(c.blades, [&](const PlanBlade& b) { return b.id == blade; });
  for (PlanFiring& firing : plan.firings)
    std::erase_if(firing.members, [&](const PlanMember& m) { return m.blade == blade; });
  std::erase_if(plan.firings, [](const PlanFiring& f) { return f.members.empty(); });
}

int with_kiln(const FiringPlan& plan, const std::string& kiln) {
  return static_cast<int>(std::count_if(plan.firings.begin(), plan.firings.end(),
                                        [&](const PlanFiring& f) { return f.kiln == kiln; }));
}

constexpr std::int64_t dear = 100'000'000;

}  // namespace

TEST_CASE("after a cracked blade nothing moves that need not") {
  PlanCase c = a_week();
  BookedPlan plan = booked(plan_firings(c, steps(4000), 1).plan, dear);
  take_out(c, plan, "C");
  const Replanned found = replan_firings(c, plan, steps(4000), 1);
  CHECK(found.moved == 0);
  CHECK(found.answer.unplaced.empty());
  CHECK(check_plan(c, found.answer.plan).feasible());
}

TEST_CASE("a blade that is ready later leaves its firing, and the others in it stay") {
  PlanCase c = a_week();
  const BookedPlan plan = booked(plan_firings(c, steps(4000), 1).plan, dear);
  const auto harden = std::find_if(
      plan.firings.begin(), plan.firings.end(),
      [](const PlanFiring& f) { return f.kind == PlanKind::harden && f.members.size() > 1; });
  REQUIRE(harden != plan.firings.end());
  PlanBlade& late = *std::find_if(c.blades.begin(), c.blades.end(), [&](const PlanBlade& b) {
    return b.id == harden->members.back().blade;
  });
  late.release_min = harden->start_min + 60;
  const Replanned found = replan_firings(c, plan, steps(4000), 1);
  CHECK(found.moved == 0);
  CHECK(stands(*harden, found.answer.plan));
  CHECK(found.answer.unplaced.empty());
}

TEST_CASE("after a kiln has died only its own firings move") {
  PlanCase c = a_week();
  const BookedPlan plan = booked(plan_firings(c, steps(4000), 1).plan, dear);
  const std::string dead = with_kiln({"", plan.firings}, "K1") > 0 ? "K1" : "K2";
  const int its_own = with_kiln({"", plan.firings}, dead);
  REQUIRE(its_own > 0);
  std::erase_if(c.kilns, [&](const PlanKiln& k) { return k.id == dead; });
  for (const PlanFiring& firing : plan.firings)
    CHECK(why_it_cannot_stand(c, firing).empty() == (firing.kiln != dead));
  const Replanned found = replan_firings(c, plan, steps(6000), 1);
  CHECK(found.answer.unplaced.empty());
  CHECK(with_kiln(found.answer.plan, dead) == 0);
  CHECK(found.moved >= its_own);
  // A temper that follows a hardening by a limit goes with it; nothing else does.
  for (const PlanFiring& firing : plan.firings) {
    if (firing.kiln == dead || stands(firing, found.answer.plan)) continue;
    const bool follows =
        std::any_of(plan.firings.begin(), plan.firings.end(), [&](const PlanFiring& f) {
          return f.kiln == dead &&
                 std::any_of(f.members.begin(), f.members.end(), [&](const PlanMember& m) {
                   return std::any_of(firing.members.begin(), firing.members.end(),
                                      [&](const PlanMember& n) { return n.blade == m.blade; });
                 });
        });
    CHECK(follows);
  }
}

TEST_CASE("without a price for moves the plan is as cheap as any, and may move more") {
  PlanCase c = a_week();
  BookedPlan plan = booked(plan_firings(c, steps(50), 3).plan, 0);
  take_out(c, plan, "A");
  const Replanned free = replan_firings(c, plan, steps(6000), 1);
  plan.moved_mc = dear;
  const Replanned kept = replan_firings(c, plan, steps(6000), 1);
  CHECK(free.answer.cost.total_mc() <= kept.answer.cost.total_mc());
  CHECK(kept.moved <= free.moved);
  CHECK(free.total_mc == free.answer.cost.total_mc());
  CHECK(kept.total_mc == kept.answer.cost.total_mc() + dear * kept.moved);
}

TEST_CASE("a firing with a free slot takes in a new blade and stays where it is") {
  PlanCase c = hand_worked_case();
  BookedPlan plan{hand_worked_plan().firings, dear};
  c.kilns.front().slots = 3;
  c.blades.push_back(c.blades.back());
  c.blades.back().id = "C";
  // Quenched third, at 105, it goes into the oven at 121.
  c.blades.back().operations[1].shortest_gap_min = 15;
  const Replanned found = replan_firings(c, plan, steps(4000), 1);
  CHECK(found.moved == 0);
  CHECK(found.answer.unplaced.empty());
  CHECK(found.answer.plan.firings.size() == 2);
}

TEST_CASE("replanning keeps every rule and its bound on made-up cases, whatever was booked") {
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    CAPTURE(seed);
    PlanCase c = CaseMaker(seed).make();
    const PlanAnswer first = plan_firings(c, steps(300), seed);
    BookedPlan plan = booked(first.plan, static_cast<std::int64_t>(seed % 3) * 40'000 + 1);
    if (c.blades.size() > 1 && seed % 2 == 0) take_out(c, plan, c.blades.back().id);
    if (seed % 3 == 0) c.blades.front().release_min += 300;
    if (seed % 5 == 0 && c.kilns.size() > 1) c.kilns.pop_back();
    const Replanned found = replan_firings(c, plan, steps(300), seed);
    std::set<std::string> left_out;
    for (const Unplaced& u : found.answer.unplaced) left_out.insert(u.blade);
    CHECK(check_plan(c, found.answer.plan, left_out).feasible());
    CHECK(found.bound_mc <= found.total_mc);
    int moved = 0;
    for (const PlanFiring& firing : plan.firings)
      if (!stands(firing, found.answer.plan)) ++moved;
    CHECK(found.moved == moved);
  }
}
