// SPDX-License-Identifier: MIT
// What the planner proposes for a blade without a place is done to the case, read from its sentence
// as a maker would, and the blade is then in the plan.
#include "domain/kiln/plan_reasons.h"

#include <catch2/catch.hpp>
#include <regex>

#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_search.h"
#include "tests/unit/kiln/plan_cases.h"

using namespace tangmark::kiln;

namespace {

PlanAnswer planned(const PlanCase& c) {
  SearchLimits limits;
  limits.iterations = 150;
  return plan_firings(c, limits, 1);
}

PlanBlade& blade_in(PlanCase& c, const std::string& id) {
  return *std::find_if(c.blades.begin(), c.blades.end(),
                       [&](const PlanBlade& b) { return b.id == id; });
}

bool reads(const std::string& sentence, const char* pattern, std::smatch& found) {
  return std::regex_search(sentence, found, std::regex(pattern));
}

/// Does what the sentence says; false for advice that is not one change of the case.
bool follow(PlanCase& c, const Unplaced& u) {
  std::smatch m;
  if (reads(u.change, "hours that (end|begin) at minute (\\d+).* to minute (\\d+)", m)) {
    for (auto& w : c.windows)
      if ((m[1] == "end" ? w.second : w.first) == std::stoi(m[2])) w.second = std::stoi(m[3]);
    return true;
  }
  if (reads(u.change, "^Allow (\\d+) min", m)) {
    blade_in(c, u.blade).operations[static_cast<std::size_t>(u.operation)].longest_gap_min =
        std::stoi(m[1]);
    return true;
  }
  if (reads(u.change, "^Plan until minute (\\d+)", m)) return c.horizon_min = std::stoi(m[1]), true;
  if (reads(u.change, "^Use a kiln that takes (\\d+) mm", m)) {
    for (PlanKiln& k : c.kilns) k.max_length_mm = std::max(k.max_length_mm, std::stoi(m[1]));
    return true;
  }
  if (reads(u.change, "^Use (\\S+) instead of (\\S+) for the firing at minute (\\d+)", m)) {
    for (PlanFiring& f : c.locked)
      if (f.kiln == m[2] && f.start_min == std::stoi(m[3])) return f.kiln = m[1], true;
    return false;
  }
  if (reads(u.change, "^Use (\\S+) for it, set to (\\d+) C", m)) {
    blade_in(c, u.blade).operations[static_cast<std::size_t>(u.operation)].target_c =
        std::stoi(m[2]);
    return true;
  }
  if (reads(u.change, "^Let (\\S+) .* go to (\\d+) C", m)) {
    for (PlanKiln& k : c.kilns)
      if (k.id == m[1]) {
        k.lowest_c = std::min(k.lowest_c, std::stoi(m[2]));
        k.highest_c = std::max(k.highest_c, std::stoi(m[2]));
      }
    return true;
  }
  return false;
}

bool places(const PlanCase& c, const std::string& blade) {
  const PlanAnswer answer = planned(c);
  return std::none_of(answer.unplaced.begin(), answer.unplaced.end(),
                      [&](const Unplaced& still) { return still.blade == blade; });
}

/// Planned anew, or with what was planned before left as it stands.
bool placed_after(const PlanCase& c, const FiringPlan& before, const Unplaced& u) {
  PlanCase eased = c;
  if (!follow(eased, u)) return false;
  if (places(eased, u.blade)) return true;
  eased.locked = before.firings;
  // Another one without a place would take what was freed for this one.
  std::erase_if(eased.blades, [&](const PlanBlade& b) {
    return b.id != u.blade &&
           std::none_of(before.firings.begin(), before.firings.end(), [&](const PlanFiring& f) {
             return std::any_of(f.members.begin(), f.members.end(),
                                [&](const PlanMember& m) { return m.blade == b.id; });
           });
  });
  return places(eased, u.blade);
}

}  // namespace

TEST_CASE("a blade is placed once its one hindrance is taken away as the sentence says") {
  PlanCase c = hand_worked_case();
  SECTION("longer than any kiln") {
    c.blades[0].length_mm = 900;
    c.kilns[1].max_length_mm = 1000;
  }
  SECTION("hotter than any kiln") {
    PlanOperation& harden = c.blades[0].operations[0];
    harden.target_c = harden.highest_c = 1180;
    harden.lowest_c = 1170;
  }
  SECTION("no stretch of hours is long enough") {
    PlanOperation& harden = c.blades[0].operations[0];
    harden.shortest_soak_min = 800;
    harden.longest_soak_min = 900;
    c.windows = {{0, 15}, {300, 315}, {700, 1400}};
    c.horizon_min = 2880;
  }
  SECTION("the shop closes too early") { c.windows = {{0, 240}}; }
  SECTION("the plan ends too early") { c.horizon_min = 240; }
  SECTION("the oven is not hot in time for a blade quenched before the plan") {
    PlanBlade& a = c.blades[0];
    a.operations.erase(a.operations.begin());
    a.operations[0].shortest_gap_min = 0;
    a.operations[0].longest_gap_min = 10;
    a.previous_end_min = 0;
  }
  const PlanAnswer answer = planned(c);
  REQUIRE_FALSE(answer.unplaced.empty());
  for (const Unplaced& u : answer.unplaced) {
    INFO(u.why << " " << u.change);
    CHECK(placed_after(c, answer.plan, u));
  }
}

TEST_CASE("a proposal that was tried out holds when the maker follows it") {
  int followed = 0;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const PlanCase c = CaseMaker(seed).make();
    const PlanAnswer answer = planned(c);
    for (const Unplaced& u : answer.unplaced) {
      if (u.rule != 6 && u.rule != 8 && u.rule != 11) continue;
      PlanCase eased = c;
      // What also asks others to give way is not one change.
      if (u.change.find("give way") != std::string::npos) continue;
      if (!u.change.starts_with("Extend the hours that end") || !follow(eased, u)) continue;
      ++followed;
      INFO("case " << seed << ", blade " << u.blade << ": " << u.why << " " << u.change);
      CHECK(placed_after(c, answer.plan, u));
    }
  }
  CHECK(followed >= 3);
}

TEST_CASE("a blade that finds its oven taken is told which other oven would free it") {
  // The oven is locked for A's temper just when B would have to go in after its quench; the only
  // other kiln that B could use is too short for it, but not for A.
  PlanCase c = hand_worked_case();
  PlanKiln small = c.kilns[1];
  small.id = "OV2";
  small.max_length_mm = 260;
  c.kilns.push_back(small);
  c.kilns[0].highest_c = 1100;
  c.kilns[0].lowest_c = 400;
  c.kilns[1].slots = 1;
  c.blades[1].length_mm = 400;
  c.windows = {{0, 275}};
  c.locked = {{"K1", PlanKind::harden, 800, 78, 10, 0, {{"A", 0}}},
              {"OV", PlanKind::soak, 200, 120, 140, 0, {{"A", 1}}}};
  const PlanAnswer answer = planned(c);
  REQUIRE(answer.unplaced.size() == 1);
  CHECK(answer.unplaced[0].blade == "B");
  CHECK_THAT(answer.unplaced[0].change, Catch::Contains("Use OV2 instead of OV"));
  REQUIRE(follow(c, answer.unplaced[0]));
  CHECK(planned(c).unplaced.empty());
}

TEST_CASE("a blade is told of an oven that reaches a temperature that serves it") {
  PlanCase c = hand_worked_case();
  c.kilns[0].lowest_c = 206;  // it could be set to B's target, but is long taken by then
  c.kilns[1].highest_c = 206;
  c.blades.erase(c.blades.begin());
  c.blades[0].operations[1].target_c = 208;
  c.blades[0].operations[1].longest_gap_min = 40;  // from 800 C it cools for over two hours
  const PlanAnswer answer = planned(c);
  REQUIRE(answer.unplaced.size() == 1);
  CHECK_THAT(answer.unplaced[0].change, Catch::Contains("Use OV for it, set to 206 C"));
  REQUIRE(follow(c, answer.unplaced[0]));
  CHECK(planned(c).unplaced.empty());
}
