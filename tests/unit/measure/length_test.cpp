// SPDX-License-Identifier: MIT
#include "domain/measure/length.h"

#include "tests/unit/measure/refusal.h"

using namespace tangmark;

namespace {

struct Read {
  const char* text;
  LengthUnit usual;
  std::int64_t nanometres;
};

struct Refused {
  const char* text;
  const char* word;
};

constexpr auto mm = LengthUnit::millimetre;
constexpr auto inch = LengthUnit::inch;

}  // namespace

TEST_CASE("a length is read in either unit system in the same field") {
  const auto row = GENERATE(values<Read>({
      {"3.2 mm", inch, 3'200'000},
      {"3.2", mm, 3'200'000},
      {"0.125", inch, 3'175'000},
      {"25 cm", mm, 250'000'000},
      {"0.6 m", mm, 600'000'000},
      {"1/8 in", mm, 3'175'000},
      {"1/8\"", mm, 3'175'000},
      {"1 1/2\"", mm, 38'100'000},
      {"1-1/2 in", mm, 38'100'000},
      {"1 1/2", inch, 38'100'000},
      {"0.125 in.", mm, 3'175'000},
      {"2 ft", mm, 609'600'000},
      {"1 ft 6 in", mm, 457'200'000},
      {"5'6\"", mm, 1'676'400'000},
      {"125 thou", mm, 3'175'000},
      {"12 \xC2\xB5m", mm, 12'000},
      {"  3.2\xC2\xA0mm ", inch, 3'200'000},
      {"3.2MM", inch, 3'200'000},
      {".5 mm", mm, 500'000},
      {"0", mm, 0},
      {"-0 mm", mm, 0},
      {"10 m", mm, 10'000'000'000},
  }));
  CAPTURE(row.text);
  const auto length = parse_length(row.text, row.usual, "thickness");
  REQUIRE(length.ok());
  CHECK(length->nanometres() == row.nanometres);
}

TEST_CASE("a length that is not one is refused with the field, the reason and a remedy") {
  const auto row = GENERATE(values<Refused>({
      {"", "no length"},
      {"   ", "no length"},
      {"mm", "not a length"},
      {"abc", "not a length"},
      {"-3 mm", "below zero"},
      {"\xE2\x88\x92"
       "3 mm",
       "below zero"},
      {"3,2 mm", "comma"},
      {"1,290 mm", "comma"},
      {"1 290 mm", "not a length"},
      {"3 kg", "not a unit of length"},
      {"3 F", "not a unit of length"},
      {"3 mm 4", "not a length"},
      {"3 mm 4 mm", "not a length"},
      {"6 in 1 ft", "not a length"},
      {"1e3 mm", "not a unit of length"},
      {"nan", "not a length"},
      {"inf mm", "not a length"},
      {"0x10 mm", "not a unit of length"},
      {"1/0 in", "over zero"},
      {"1//8 in", "not a unit of length"},
      {"1.2.3 mm", "not a length"},
      {".", "not a length"},
      {"10.001 m", "more than 10 m"},
      {"123456789012345678901234567890 mm", "more digits"},
      {"0.0000000000000000000000000001 mm", "more digits"},
      {"3 \xFF\xFE", "not a unit of length"},
  }));
  CAPTURE(row.text);
  check_refused(parse_length(row.text, mm, "thickness"), "thickness", row.word);
}

TEST_CASE("a very long text is cut short in the sentence") {
  const auto length = parse_length(std::string(100'000, 'x'), mm, "thickness");
  REQUIRE_FALSE(length.ok());
  CHECK(length.problem().sentence.size() < 200);
}

TEST_CASE("every sixty-fourth of an inch up to two feet survives reading and printing") {
  for (int n = 1; n <= 64 * 24; ++n) {
    const auto length = parse_length(std::to_string(n) + "/64 in", mm, "thickness");
    REQUIRE(length.ok());
    REQUIRE(length->nanometres() == n * std::int64_t{25'400'000} / 64);
    REQUIRE(*parse_length(to_text(*length, inch), mm, "thickness") == *length);
  }
}

TEST_CASE("every hundredth of a millimetre up to a metre survives reading and printing") {
  for (int n = 0; n <= 100'000; n += 7) {
    const Length length = Length::nanometres(n * std::int64_t{10'000});
    REQUIRE(*parse_length(to_text(length, mm), inch, "thickness") == length);
  }
}

TEST_CASE("a length is shown as the trade writes it") {
  CHECK(to_text(Length::nanometres(3'200'000), mm) == "3.2 mm");
  CHECK(to_text(Length::millimetres(1290), mm) == "1290 mm");
  CHECK(to_text(Length::nanometres(3'175'000), mm) == "3.175 mm");
  CHECK(to_text(Length::nanometres(38'100'000), inch) == "1 1/2 in");
  CHECK(to_text(Length::nanometres(3'175'000), inch) == "1/8 in");
  CHECK(to_text(Length::nanometres(25'400'000 * 3), inch) == "3 in");
  CHECK(to_text(Length(), inch) == "0 in");
  CHECK(to_text(Length::nanometres(3'200'000), inch) == "0.126 in");
  CHECK(to_text(Length::nanometres(-38'100'000), inch) == "-1 1/2 in");
}

TEST_CASE("a computed length is taken to the nearest nanometre") {
  CHECK(Length::nearest_millimetres(3.2).nanometres() == 3'200'000);
  CHECK(Length::nearest_millimetres(-0.1).nanometres() == -100'000);
}
