// SPDX-License-Identifier: MIT
#include "domain/blade/hardening_rules.h"

#include <catch2/catch.hpp>

#include "tests/unit/blade/a_blade.h"

using namespace tangmark;
using namespace tangmark::blade;
using tangmark::blade::test::ABlade;
using tangmark::blade::test::at;

TEST_CASE("6: hardening before normalizing or annealing that the route wants is asked about") {
  const auto blade =
      ABlade().plans("normalize").plans("anneal").done(at(0)).plans("harden").plans("temper");
  const Catches caught = harden_too_early(23, blade.route);
  REQUIRE(caught.size() == 1);
  CHECK(caught[0].number == 6);
  CHECK(caught[0].weight == Weight::ask);
  CHECK(caught[0].sentence.find("normalize") != std::string::npos);
}

TEST_CASE("6: drilling and marking are for soft steel wherever they stand on the route") {
  const auto blade = ABlade().plans("harden").plans("temper").plans("drill").plans("mark");
  CHECK(harden_too_early(23, blade.route).size() == 2);
  CHECK(harden_too_early(23, ABlade().plans("drill").skipped("no pins").plans("harden").route)
            .empty());
}

TEST_CASE("6: what comes after hardening is not wanted before it") {
  CHECK(harden_too_early(23, ABlade().plans("harden").plans("temper").plans("finish grind").route)
            .empty());
}

TEST_CASE("12: hardening again takes back old tempers and readings") {
  const auto before = ABlade().logs("harden", at(0)).logs("temper", at(1)).logs("temper", at(4));
  auto after = before;
  after.logs("harden", at(9));
  HardnessReading reading{.blade = BladeId{1}, .at = at(8)};
  HardnessReading coupon = reading;
  coupon.on_coupon = true;
  const std::vector<KeptReading> readings{{ReadingId{1}, reading}, {ReadingId{2}, coupon}};
  const tangmark::Catch caught = hardened_again(before.state(), after.state(), readings);
  REQUIRE(caught);
  CHECK(caught->number == 12);
  CHECK(caught->sentence.find("readings are void") != std::string::npos);
  CHECK(readings_to_void(readings, at(9)) == std::vector{ReadingId{1}});
  const auto route = ABlade()
                         .plans("harden")
                         .done(at(0))
                         .plans("temper")
                         .done(at(1))
                         .plans("temper")
                         .done(at(4))
                         .plans("etch")
                         .done(at(5))
                         .route;
  CHECK(steps_to_do_again(route, after.state(), at(9)) ==
        std::vector{RouteStepId{2}, RouteStepId{3}});
}

TEST_CASE("12: a first hardening takes nothing back") {
  CHECK_FALSE(hardened_again(ABlade().state(), ABlade().logs("harden", at(0)).state(), {}));
}

TEST_CASE("12: softening opens the hardening as well") {
  const auto before = ABlade().logs("harden", at(0)).logs("temper", at(1));
  auto after = before;
  after.logs("anneal", at(9));
  CHECK(hardened_again(before.state(), after.state(), {}));
  const auto route = ABlade().plans("harden").done(at(0)).plans("temper").done(at(1)).route;
  CHECK(steps_to_do_again(route, after.state(), at(9)).size() == 2);
}

TEST_CASE("22: oil outside its band is asked about, within it passes") {
  stock::Bath oil;
  oil.name = "medium oil";
  oil.low = Temperature::celsius(40);
  oil.high = Temperature::celsius(70);
  CHECK_FALSE(bath_out_of_band(oil, Temperature::celsius(40), TemperatureUnit::celsius));
  CHECK_FALSE(bath_out_of_band(oil, std::nullopt, TemperatureUnit::celsius));
  const tangmark::Catch cold =
      bath_out_of_band(oil, Temperature::celsius(18), TemperatureUnit::celsius);
  REQUIRE(cold);
  CHECK(cold->number == 22);
  CHECK(cold->weight == Weight::ask);
  CHECK(bath_out_of_band(oil, Temperature::celsius(71), TemperatureUnit::celsius));
}

TEST_CASE("22: a bath check overdue by the maker's own rule is said") {
  stock::Bath oil;
  oil.name = "medium oil";
  oil.check_days = 30;
  oil.filled_at = at(0);
  CHECK_FALSE(bath_check_overdue(oil, at(24 * 30)));
  REQUIRE(bath_check_overdue(oil, at(24 * 31)));
  CHECK(bath_check_overdue(oil, at(24 * 31))->number == 22);
  oil.checked_at = at(24 * 20);
  CHECK_FALSE(bath_check_overdue(oil, at(24 * 31)));
}

TEST_CASE("5: a blade longer than the tank is deep is asked about") {
  Blade sword;
  sword.number = 23;
  sword.length = Length::millimetres(520);
  stock::Bath tank;
  tank.name = "short tank";
  CHECK_FALSE(longer_than_bath(sword, tank, false, LengthUnit::millimetre));
  tank.depth = Length::millimetres(450);
  const tangmark::Catch caught = longer_than_bath(sword, tank, false, LengthUnit::millimetre);
  REQUIRE(caught);
  CHECK(caught->number == 5);
  CHECK(caught->sentence == "Blade 23 is 520 mm long and short tank is 450 mm deep.");
  CHECK_FALSE(longer_than_bath(sword, tank, true, LengthUnit::millimetre));
  tank.depth = sword.length;
  CHECK_FALSE(longer_than_bath(sword, tank, false, LengthUnit::millimetre));
}
