// SPDX-License-Identifier: MIT
#include "domain/measure/mass.h"

#include "tests/unit/measure/refusal.h"

using namespace tangmark;

namespace {

constexpr auto gram = MassUnit::gram;
constexpr auto pound = MassUnit::pound;

struct Read {
  const char* text;
  MassUnit usual;
  std::int64_t micrograms;
};

struct Refused {
  const char* text;
  const char* word;
};

}  // namespace

TEST_CASE("a mass is read in either unit system in the same field") {
  const auto row = GENERATE(values<Read>({
      {"235 g", pound, 235'000'000},
      {"235", gram, 235'000'000},
      {"3", pound, 1'360'777'110},
      {"1.2 kg", gram, 1'200'000'000},
      {"3 lb", gram, 1'360'777'110},
      {"3 lbs", gram, 1'360'777'110},
      {"16 oz", gram, 453'592'370},
      {"2 lb 3 oz", gram, 992'233'309},  // 907,184,740 + 85,048,569.375
      {"2lb3oz", gram, 992'233'309},
      {"5 mg", gram, 5'000},
      {"0 g", gram, 0},
      {"10 t", gram, 10'000'000'000'000},
  }));
  CAPTURE(row.text);
  const auto mass = parse_mass(row.text, row.usual, "bought");
  REQUIRE(mass.ok());
  CHECK(mass->micrograms() == row.micrograms);
}

TEST_CASE("a mass that is not one is refused with the field, the reason and a remedy") {
  const auto row = GENERATE(values<Refused>({
      {"", "no mass"},
      {"heavy", "not a mass"},
      {"-1 g", "below zero"},
      {"3 mm", "not a unit of mass"},
      {"1,2 kg", "comma"},
      {"3 oz t", "troy"},
      {"3 ozt", "troy"},
      {"3 Troy Oz", "troy"},
      {"1 ton", "three different"},
      {"5 Mg", "not a unit of mass"},
      {"3 oz 2 lb", "not a mass"},
      {"2 lb 3", "not a mass"},
      {"11 t", "more than 10 t"},
  }));
  CAPTURE(row.text);
  check_refused(parse_mass(row.text, gram, "bought"), "bought", row.word);
}

TEST_CASE("a mass is shown in the size the trade says it") {
  CHECK(to_text(Mass::grams(235), gram) == "235 g");
  CHECK(to_text(Mass::micrograms(235'400'000), gram) == "235.4 g");
  CHECK(to_text(Mass::micrograms(5'250'000), gram) == "5.25 g");
  CHECK(to_text(Mass::grams(1204), gram) == "1.204 kg");
  CHECK(to_text(Mass::micrograms(999'960'000), gram) == "1.000 kg");
  CHECK(to_text(Mass::micrograms(235'301'042), pound) == "8.3 oz");
  CHECK(to_text(Mass::micrograms(1'206'555'704), pound) == "2.66 lb");
  CHECK(to_text(Mass::micrograms(453'592'370), pound) == "1.00 lb");
  CHECK(to_text(Mass::micrograms(453'000'000), pound) == "1.00 lb");
  CHECK(to_text(Mass(), gram) == "0 g");
}

TEST_CASE("a rectangular bar weighs its volume times its density exactly") {
  // 250 x 40 x 4 mm = 40,000 mm3; at 7.85 g/cm3 that is 314 g.
  const Mass bar = bar_mass(Length::millimetres(250), Length::millimetres(40),
                            Length::millimetres(4), Density{});
  CHECK(bar == Mass::grams(314));
  // 1 x 1 x 1/8 in = 2048.383 mm3 exactly 2048.3830 -> 2048.383 * 7.85 mg.
  const Mass small = bar_mass(Length::nanometres(25'400'000), Length::nanometres(25'400'000),
                              Length::nanometres(3'175'000), Density{});
  CHECK(small.micrograms() == 16'079'807);  // 16,079,806.55
}

TEST_CASE("a bar as large as the program reads is weighed without overflow") {
  const Length ten_metres = Length::millimetres(10'000);
  CHECK(bar_mass(ten_metres, Length::millimetres(1000), Length::millimetres(1000), Density{}) ==
        Mass::grams(78'500'000));
}

TEST_CASE("a round bar weighs its circle") {
  // pi/4 x (20 mm)^2 x 100 mm = 31,415.93 mm3; at 7.85 g/cm3 that is 246.615 g.
  const Mass bar = round_mass(Length::millimetres(100), Length::millimetres(20), Density{});
  CHECK(bar.in_grams() == Approx(246.61502330679877));
}
