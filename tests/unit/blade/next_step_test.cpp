// SPDX-License-Identifier: MIT
#include "domain/blade/next_step.h"

#include <catch2/catch.hpp>

#include "tests/unit/blade/a_blade.h"

using namespace tangmark;
using namespace tangmark::blade;
using tangmark::blade::test::ABlade;
using tangmark::blade::test::at;

namespace {

std::optional<NextStep> next_of(const ABlade& blade) {
  return next_step(blade.state(), blade.route, {std::chrono::minutes(30), std::chrono::minutes(90)},
                   Zone());
}

}  // namespace

TEST_CASE("the temper of a quenched blade comes before anything else") {
  const auto next =
      next_of(ABlade().plans("drill").plans("temper").logs("harden", at(0)).shows("warp"));
  REQUIRE(next);
  CHECK(next->operation == "temper");
  CHECK(next->step == RouteStepId{2});
  CHECK(next->sentence == "Temper 1 of 1 is due by 09:30.");
}

TEST_CASE("then a finding wants its decision, then the route goes on") {
  CHECK(next_of(ABlade().plans("drill").shows("warp"))->operation == "decide");
  CHECK(next_of(ABlade().plans("profile").done(at(0)).plans("drill"))->operation == "drill");
  CHECK_FALSE(next_of(ABlade().plans("profile").done(at(0))));
}
