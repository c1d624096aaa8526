// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_heat.h"

#include <catch2/catch.hpp>

#include "domain/kiln/plan_tables.h"
#include "tests/unit/kiln/plan_cases.h"

using namespace tangmark::kiln;

namespace {
// 600 C/h, time constant 90 min, in a room of 20 C.
const PlanCase shop = hand_worked_case();
std::optional<int> heating(std::optional<KilnLeft> left, int start, int temp_c) {
  return heating_min(20, shop.kilns[0], left, start, temp_c);
}
}  // namespace

TEST_CASE("a kiln is heated from the room, upward, or not at all") {
  CHECK(heating({}, 78, 800) == 78);
  CHECK_FALSE(heating({}, 77, 800));
  CHECK(heating(KilnLeft{0, 0, 800}, 10, 900) == 10);
  CHECK_FALSE(heating(KilnLeft{0, 0, 800}, 9, 900));
  CHECK(heating(KilnLeft{0, 0, 800}, 0, 800) == 0);
  CHECK(heating(KilnLeft{0, 0, 800}, 100000, 800) == 78);
}

TEST_CASE("a kiln left hot must first cool by itself") {
  // 90 min x ln(780 / 180) = 131.97 min.
  CHECK_FALSE(heating(KilnLeft{0, 0, 800}, 131, 200));
  CHECK(heating(KilnLeft{0, 0, 800}, 132, 200) == 1);
}

TEST_CASE("heating waits until the kiln is unloaded") {
  CHECK_FALSE(heating(KilnLeft{10, 0, 800}, 14, 900));
  CHECK(heating(KilnLeft{10, 0, 800}, 60, 900).value() <= 50);
}

TEST_CASE("the planner's tables give the same heating minutes and the earliest start") {
  const PlanTables tables(shop);
  PlanChance chance(7);
  for (int i = 0; i < 4000; ++i) {
    const int end = chance.below(60);
    const KilnLeft left{end, end - chance.below(end + 1), chance.one_in(2) ? 800 : 200};
    const int temp_c = chance.one_in(2) ? 800 : 200;
    const int start = end + chance.below(1500);
    const auto plain = heating(left, start, temp_c);
    REQUIRE(tables.heating(0, left, start, temp_c) == plain.value_or(-1));
    const int ready = tables.ready(0, left, temp_c);
    REQUIRE(heating(left, ready, temp_c));
    REQUIRE_FALSE(heating(left, ready - 1, temp_c));
  }
}
