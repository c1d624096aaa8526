// SPDX-License-Identifier: MIT
#include "domain/measure/energy.h"

#include "tests/unit/measure/refusal.h"

using namespace tangmark;

namespace {

struct Read {
  const char* text;
  std::int64_t count;
};

struct Refused {
  const char* text;
  const char* word;
};

}  // namespace

TEST_CASE("an energy is read from the meter's and the gas bill's units") {
  const auto row = GENERATE(values<Read>({
      {"4.2 kWh", 15'120'000},
      {"4.2", 15'120'000},
      {"4.2 kwh", 15'120'000},
      {"15 MJ", 15'000'000},
      {"500 Wh", 1'800'000},
      {"12000 Btu", 12'660'672},
      {"1 J", 1},
      {"1000000 kWh", 3'600'000'000'000},
  }));
  CAPTURE(row.text);
  const auto energy = parse_energy(row.text, "energy");
  REQUIRE(energy.ok());
  CHECK(energy->joules() == row.count);
}

TEST_CASE("an energy that is not one is refused") {
  const auto row = GENERATE(values<Refused>({
      {"", "no energy"},
      {"lots", "not an energy"},
      {"-1 kWh", "below zero"},
      {"3 kW", "not a unit of energy"},
      {"3 mJ", "not a unit of energy"},
      {"4,2 kWh", "comma"},
      {"1000001 kWh", "more than 1000000 kWh"},
  }));
  CAPTURE(row.text);
  check_refused(parse_energy(row.text, "energy"), "energy", row.word);
}

TEST_CASE("an energy is shown in kWh") {
  CHECK(to_text(Energy::joules(15'120'000)) == "4.20 kWh");
  CHECK(to_text(Energy::watt_minutes(60'000)) == "1.00 kWh");
}

TEST_CASE("a volume is read in litres or in gallons that name their country") {
  const auto row = GENERATE(values<Read>({
      {"15 l", 15'000'000},
      {"15", 15'000'000},
      {"15 L", 15'000'000},
      {"250 ml", 250'000},
      {"2 US gal", 7'570'824},  // 7,570,823.568
      {"1 imp gal", 4'546'090},
      {"1 qt", 946'353},       // 946,352.946
      {"1 US fl oz", 29'574},  // 29,573.5295625
  }));
  CAPTURE(row.text);
  const auto volume = parse_volume(row.text, "tank");
  REQUIRE(volume.ok());
  CHECK(volume->microlitres() == row.count);
}

TEST_CASE("a volume that is not one is refused") {
  const auto row = GENERATE(values<Refused>({
      {"", "no volume"},
      {"2 gal", "two different volumes"},
      {"2 gallons", "two different volumes"},
      {"2 pt", "not the same"},
      {"-2 l", "below zero"},
      {"2 kg", "not a unit of volume"},
      {"2,5 l", "comma"},
      {"100001 l", "more than 100000 l"},
  }));
  CAPTURE(row.text);
  check_refused(parse_volume(row.text, "tank"), "tank", row.word);
}

TEST_CASE("a volume is shown in litres, and in millilitres below one") {
  CHECK(to_text(Volume::microlitres(15'000'000)) == "15 l");
  CHECK(to_text(Volume::microlitres(250'000)) == "250 ml");
  CHECK(to_text(Volume::microlitres(1'500'000)) == "1.5 l");
}
