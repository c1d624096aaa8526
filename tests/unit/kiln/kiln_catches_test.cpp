// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include <algorithm>

#include "domain/kiln/kiln_check.h"
#include "domain/kiln/plan_catches.h"

using namespace tangmark;
using namespace tangmark::kiln;

namespace {

PlanOperation harden(int target) {
  PlanOperation op;
  op.kind = PlanKind::harden;
  op.target_c = target;
  op.lowest_c = target - 10;
  op.highest_c = target + 10;
  op.shortest_soak_min = 10;
  op.longest_soak_min = 20;
  op.unattended = false;
  op.quench_min = 4;
  return op;
}

PlanCase a_case() {
  PlanCase c;
  c.name = "bench";
  c.horizon_min = 1440;
  c.windows = {{0, 600}};
  c.kilns = {{"K1", 3, 400, 100, 1100, 600, 90, 2400, 1000, 5, 5, "shed", {}},
             {"K2", 3, 400, 100, 1100, 600, 90, 2400, 1000, 5, 5, "shed", {}}};
  for (const char* id : {"41", "42", "43"})
    c.blades.push_back({id, 250, 0, 600, 1, {harden(800)}, {}});
  return c;
}

FiringPlan one_firing(int start, int soak, std::vector<PlanMember> members) {
  return {"bench", {{"K1", PlanKind::harden, 800, start, soak, 0, std::move(members)}}};
}

bool caught(const PlanCase& c, const FiringPlan& plan, int number) {
  const Catches all = catches_of(check_plan(c, plan, {"41", "42", "43"}));
  return std::any_of(all.begin(), all.end(), [&](const Caught& one) {
    return one.number == number && !one.sentence.empty() && !one.remedy.empty();
  });
}

}  // namespace

TEST_CASE("a sound firing catches nothing") {
  CHECK(catches_of(
            check_plan(a_case(), one_firing(90, 10, {{"41", 0}, {"42", 0}}), {"41", "42", "43"}))
            .empty());
}

TEST_CASE("5: a blade longer than the kiln is caught") {
  PlanCase c = a_case();
  c.blades[0].length_mm = 500;
  CHECK(caught(c, one_firing(90, 10, {{"41", 0}}), 5));
}

TEST_CASE("7: blades without a common window are caught") {
  PlanCase c = a_case();
  c.blades[1].operations[0] = harden(840);
  CHECK(caught(c, one_firing(90, 10, {{"41", 0}, {"42", 0}}), 7));
}

TEST_CASE("7: the last blade pulled soaking beyond its limit is caught") {
  PlanCase c = a_case();
  c.blades[2].operations[0].longest_soak_min = 15;
  CHECK(caught(c, one_firing(90, 10, {{"41", 0}, {"42", 0}, {"43", 0}}), 7));
}

TEST_CASE("21: an attended firing when nobody is there is caught") {
  CHECK(caught(a_case(), one_firing(620, 10, {{"41", 0}}), 21));
}

TEST_CASE("21: two kilns on one circuit are caught") {
  FiringPlan plan = one_firing(90, 10, {{"41", 0}});
  plan.firings.push_back({"K2", PlanKind::harden, 800, 120, 10, 0, {{"42", 0}}});
  CHECK(caught(a_case(), plan, 21));
}

TEST_CASE("21: a firing before the one before it has ended is caught") {
  PlanCase c = a_case();
  PlanOperation anneal;
  anneal.kind = PlanKind::anneal;
  anneal.target_c = anneal.lowest_c = anneal.highest_c = 790;
  anneal.shortest_soak_min = 30;
  anneal.longest_soak_min = 60;
  anneal.cool_c_per_h = 25;
  anneal.cool_to_c = 650;
  c.blades[0].operations = {anneal};
  FiringPlan plan{"bench",
                  {{"K1", PlanKind::anneal, 790, 90, 30, 0, {{"41", 0}}},
                   {"K1", PlanKind::harden, 800, 300, 10, 0, {{"42", 0}}}}};
  CHECK(caught(c, plan, 21));
}

TEST_CASE("22: a thermocouple that nobody checked within the shop's rule is caught") {
  Kiln k;
  k.name = "Long kiln";
  const CalendarDate today = date::year{2026} / 11 / 25;
  CHECK_FALSE(thermocouple_check_overdue(k, today));
  k.check_days = 180;
  CHECK(thermocouple_check_overdue(k, today));
  k.checked_on = date::year{2026} / 6 / 1;
  CHECK_FALSE(thermocouple_check_overdue(k, today));
  k.checked_on = date::year{2026} / 5 / 1;
  CHECK(thermocouple_check_overdue(k, today)->number == 22);
}
