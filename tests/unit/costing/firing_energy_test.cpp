// SPDX-License-Identifier: MIT
#include "domain/costing/firing_energy.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::costing;
using namespace std::chrono_literals;

namespace {

HeatingKiln a_kiln() { return {Temperature::celsius(20), 600, 2400, 1000}; }

ExpectedFiring a_harden_firing() {
  ExpectedFiring f;
  f.kind = FiringKind::harden;
  f.at = Temperature::celsius(800);
  f.load = 5min;
  f.soak = 10min;
  f.quench_each = 4min;
  f.blades = 2;
  return f;
}

}  // namespace

TEST_CASE("a harden firing heats, holds through the quench, and keeps the maker there") {
  // By hand: 78 min to heat; 5 + 10 + 2 x 4 = 23 min at 780 W; 2400 x 78 + 780 x 23 watt-minutes.
  const auto use = firing_use(a_kiln(), a_harden_firing());
  REQUIRE(use.ok());
  CHECK(use->heat_up == Energy::watt_minutes(2400 * 78));
  CHECK(use->hold == Energy::watt_minutes(780 * 23));
  CHECK(use->total == Energy::watt_minutes(205'140));
  CHECK(use->hands_on == 13min);
  CHECK(use->attended == 10min);
  CHECK(use->unattended == 78min);
}

TEST_CASE("a temper holds through loading, soak and unloading, with nobody there") {
  ExpectedFiring f;
  f.at = Temperature::celsius(200);
  f.load = 5min;
  f.soak = 120min;
  f.unload = 5min;
  f.blades = 2;
  const auto use = firing_use({Temperature::celsius(20), 600, 1200, 1500}, f);
  CHECK(use->total == Energy::watt_minutes(56'700));  // 1200 x 18 + 270 x 130
  CHECK(use->hands_on == 10min);
  CHECK(use->attended == 0min);
  CHECK(use->unattended == 138min);
}

TEST_CASE("an anneal is fed through its controlled cooling") {
  ExpectedFiring f;
  f.kind = FiringKind::anneal;
  f.at = Temperature::celsius(760);
  f.load = 5min;
  f.soak = 30min;
  f.unload = 5min;
  f.cooling = ControlledCooling{Temperature::celsius(650), 10};
  const auto use = firing_use(a_kiln(), f);
  // 110 C at 10 C/h = 660 min at the power for 705 C; hold only 5 + 30 min.
  CHECK(use->cooling == Energy::watt_minutes(685 * 660));
  CHECK(use->hold == Energy::watt_minutes(740 * 35));
}

TEST_CASE("one blade's electricity goes by slot, not by its mass") {
  ExpectedFiring f = a_harden_firing();
  f.steel = Mass::grams(600);
  const auto use = firing_use(a_kiln(), f);
  const Money price(30, Currency());
  // 3.419 kWh of kiln and 0.6 kg x 562 kJ/kg = 0.094 kWh of steel at 0.30 a kWh, two blades.
  CHECK(use->steel.in_kilowatt_hours() == Approx(0.0936).epsilon(0.001));
  CHECK(energy_share(*use, price) == Money(53, Currency()));
  f.blades = 1;
  f.steel = Mass::grams(300);
  // Alone in the kiln it pays nearly twice as much.
  CHECK(energy_share(*firing_use(a_kiln(), f), price) == Money(102, Currency()));
}

TEST_CASE("a firing without its kiln's rates or an anneal without its rate is refused") {
  CHECK(firing_use({}, a_harden_firing()).problem().field == "kiln");
  ExpectedFiring f = a_harden_firing();
  f.kind = FiringKind::anneal;
  CHECK(firing_use(a_kiln(), f).problem().field == "cooling");
  f = a_harden_firing();
  f.blades = 0;
  f.at = Temperature::celsius(20);
  CHECK(firing_use(a_kiln(), f).problems().size() == 2);
}
