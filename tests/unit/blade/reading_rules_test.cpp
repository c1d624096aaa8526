// SPDX-License-Identifier: MIT
#include "domain/blade/reading_rules.h"

#include <catch2/catch.hpp>

#include "tests/unit/blade/a_blade.h"

using namespace tangmark;
using namespace tangmark::blade;
using tangmark::blade::test::at;

TEST_CASE("14: hardness with no reading after the last heat is said") {
  HardnessReading reading{.blade = BladeId{1}, .at = at(5)};
  const std::vector<KeptReading> readings{{ReadingId{1}, reading}};
  CHECK_FALSE(no_reading_after_heat(23, readings, at(4)));
  REQUIRE(no_reading_after_heat(23, readings, at(6)));
  CHECK(no_reading_after_heat(23, readings, at(6))->number == 14);
  CHECK(no_reading_after_heat(23, {}, std::nullopt));
  reading.on_coupon = true;
  CHECK(no_reading_after_heat(23, std::vector<KeptReading>{{ReadingId{1}, reading}}, at(4)));
}

TEST_CASE("12: a reading taken before the last heat is void at once") {
  CHECK(reading_before_heat(23, at(3), at(4))->number == 12);
  CHECK_FALSE(reading_before_heat(23, at(5), at(4)));
}

TEST_CASE("readings are read to the tenth, files as brackets") {
  const auto three = parse_hardness("61.5, 61,61.5", "HRC", "readings");
  REQUIRE(three);
  CHECK(*three ==
        std::vector<HardnessFigure>{{615, std::nullopt}, {610, std::nullopt}, {615, std::nullopt}});
  CHECK(*parse_hardness("60-62", "file", "readings") == std::vector<HardnessFigure>{{600, 620}});
  for (const char* wrong : {"", "61.55", "6l", "61,,61", "615", "-61", "61 HRC", "61;62", "62-60"})
    CHECK_FALSE(parse_hardness(wrong, "HRC", "readings"));
  CHECK_FALSE(parse_hardness("61", "file", "readings"));
  CHECK_FALSE(parse_hardness("61", "shore", "readings"));
}

TEST_CASE("a reading is printed with its scale") {
  HardnessReading reading{.blade = BladeId{1}};
  reading.scale = "HRC";
  reading.tenths = 615;
  CHECK(hardness_text(reading) == "61.5 HRC");
  reading.scale = "file";
  reading.tenths = 600;
  reading.tenths_to = 620;
  CHECK(hardness_text(reading) == "60 to 62 HRC (files)");
}
