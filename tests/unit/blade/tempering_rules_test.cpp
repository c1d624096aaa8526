// SPDX-License-Identifier: MIT
#include "domain/blade/tempering_rules.h"

#include <catch2/catch.hpp>

#include "tests/unit/blade/a_blade.h"

using namespace tangmark;
using namespace tangmark::blade;
using tangmark::blade::test::ABlade;
using tangmark::blade::test::at;

namespace {

constexpr TemperClock shop_rule{std::chrono::minutes(30), std::chrono::minutes(90)};

}  // namespace

TEST_CASE("8: quenched and no temper started by the limit") {
  const auto state = ABlade().logs("harden", at(0)).in("medium oil").state();
  CHECK_FALSE(temper_overdue(state, shop_rule, at(1, 29)));
  REQUIRE(temper_overdue(state, shop_rule, at(1, 30)));
  CHECK(temper_overdue(state, shop_rule, at(1, 30))->number == 8);
  CHECK_FALSE(temper_overdue(ABlade().logs("harden", at(0)).logs("temper", at(1)).state(),
                             shop_rule, at(9)));
}

TEST_CASE("8: a water quench has the shorter time") {
  const auto state = ABlade().logs("harden", at(0)).in("brine").state();
  CHECK(temper_due_at(state, shop_rule) == at(0, 30));
}

TEST_CASE("8: a snap temper or holding it warm answers the clock") {
  CHECK_FALSE(temper_overdue(ABlade().logs("harden", at(0)).logs("snap temper", at(0, 10)).state(),
                             shop_rule, at(9)));
  CHECK_FALSE(temper_overdue(ABlade().logs("harden", at(0)).logs("hold warm", at(0, 10)).state(),
                             shop_rule, at(9)));
  const auto let_cool =
      ABlade().logs("harden", at(0)).logs("hold warm", at(0, 10)).until(at(2)).state();
  CHECK(temper_due_at(let_cool, shop_rule) == at(3, 30));
}

TEST_CASE("8: a temper that began too late is said") {
  const auto state = ABlade().logs("harden", at(0)).state();
  CHECK_FALSE(temper_late(state, shop_rule, at(1)));
  CHECK(temper_late(state, shop_rule, at(3)));
}

TEST_CASE("8: other work on a blade that waits for its temper is asked about") {
  const auto state = ABlade().logs("harden", at(0)).state();
  REQUIRE(work_before_temper(state, "finish grind", at(1)));
  CHECK(work_before_temper(state, "finish grind", at(1))->weight == Weight::ask);
  for (const char* part : {"temper", "straighten", "sub-zero", "inspect", "hold warm"})
    CHECK_FALSE(work_before_temper(state, part, at(1)));
}

TEST_CASE("10: a second temper before the blade cooled to room") {
  const auto state = ABlade().logs("harden", at(0)).logs("temper", at(1)).state();
  CHECK_FALSE(not_cooled_before(state, true));
  REQUIRE(not_cooled_before(state, false));
  CHECK(not_cooled_before(state, false)->number == 10);
  CHECK(not_cooled_before(state, false)->weight == Weight::ask);
  REQUIRE(not_cooled_before(state, std::nullopt));
  CHECK(not_cooled_before(state, std::nullopt)->weight == Weight::stop);
  CHECK_FALSE(not_cooled_before(ABlade().logs("harden", at(0)).state(), std::nullopt));
}

TEST_CASE("11: set points of one batch further apart than the shop allows") {
  const auto tolerance = TemperatureDifference::celsius(5);
  const std::vector<SetPoint> near{{23, Temperature::celsius(200)},
                                   {24, Temperature::celsius(205)}};
  const std::vector<SetPoint> far{{23, Temperature::celsius(200)}, {24, Temperature::celsius(230)}};
  CHECK_FALSE(set_points_differ(near, tolerance, TemperatureUnit::celsius));
  CHECK_FALSE(set_points_differ({}, tolerance, TemperatureUnit::celsius));
  REQUIRE(set_points_differ(far, tolerance, TemperatureUnit::celsius));
  CHECK(set_points_differ(far, tolerance, TemperatureUnit::celsius)->number == 11);
}
