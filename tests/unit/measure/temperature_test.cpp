// SPDX-License-Identifier: MIT
#include "domain/measure/temperature.h"

#include "tests/unit/measure/refusal.h"

using namespace tangmark;

namespace {

constexpr auto celsius = TemperatureUnit::celsius;
constexpr auto fahrenheit = TemperatureUnit::fahrenheit;
constexpr auto kelvin = TemperatureUnit::kelvin;

struct Read {
  const char* text;
  TemperatureUnit usual;
  Temperature temperature;
};

struct Refused {
  const char* text;
  const char* word;
};

}  // namespace

TEST_CASE("a temperature is read in C, F or K in the same field") {
  const auto row = GENERATE(values<Read>({
      {"802 C", fahrenheit, Temperature::celsius(802)},
      {"802", celsius, Temperature::celsius(802)},
      {"802.5", celsius, Temperature::centi_celsius(80250)},
      {"1475F", celsius, Temperature::fahrenheit(1475)},
      {"1475 \xC2\xB0"
       "F",
       celsius, Temperature::fahrenheit(1475)},
      {"1475", fahrenheit, Temperature::fahrenheit(1475)},
      {"802 \xC2\xB0"
       "C",
       fahrenheit, Temperature::celsius(802)},
      {"802\xE2\x84\x83", fahrenheit, Temperature::celsius(802)},
      {"802 deg C", fahrenheit, Temperature::celsius(802)},
      {"1073.15 K", celsius, Temperature::celsius(800)},
      {"-80 C", fahrenheit, Temperature::celsius(-80)},
      {"-40 F", celsius, Temperature::celsius(-40)},
      {"\xE2\x88\x92"
       "196 C",
       celsius, Temperature::celsius(-196)},
      {"0 K", celsius, Temperature::counts(0)},
      {"2000 C", celsius, Temperature::celsius(2000)},
  }));
  CAPTURE(row.text);
  const auto temperature = parse_temperature(row.text, row.usual, "soak");
  REQUIRE(temperature.ok());
  CHECK(temperature->counts() == row.temperature.counts());
}

TEST_CASE("a temperature that is not one is refused with the field, the reason and a remedy") {
  const auto row = GENERATE(values<Refused>({
      {"", "no temperature"},
      {"hot", "not a temperature"},
      {"802 mm", "not a unit of temperature"},
      {"802,5 C", "comma"},
      {"1 475 F", "not a temperature"},
      {"-274 C", "below absolute zero"},
      {"-1 K", "below absolute zero"},
      {"-460 F", "below absolute zero"},
      {"2001 C", "more than 2000 C"},
      {"14750 F", "more than 2000 C"},
      {"999999999999999999 C", "more than 2000 C"},
      {"-999999999999999999 F", "below absolute zero"},
      {"802 C 5 C", "not a temperature"},
      {"802 C F", "not a unit of temperature"},
      {"8e2 C", "not a unit of temperature"},
      {"--5 C", "not a temperature"},
  }));
  CAPTURE(row.text);
  check_refused(parse_temperature(row.text, celsius, "soak"), "soak", row.word);
}

TEST_CASE("every whole degree F and tenth of a degree C survives reading and printing") {
  for (int f = -459; f <= 3632; ++f) {
    const auto t = parse_temperature(std::to_string(f) + " F", celsius, "soak");
    REQUIRE(t.ok());
    REQUIRE(to_text(*t, fahrenheit) == std::to_string(f) +
                                           " \xC2\xB0"
                                           "F");
  }
  for (int c10 = -2730; c10 <= 20'000; ++c10) {
    const Temperature t = Temperature::centi_celsius(c10 * 10);
    REQUIRE(*parse_temperature(to_text(t, celsius), fahrenheit, "soak") == t);
  }
}

TEST_CASE("a step of 50 F is not the temperature 50 F") {
  const auto step = parse_temperature_difference("50 F", celsius, "ramp");
  REQUIRE(step.ok());
  CHECK(*step == TemperatureDifference::fahrenheit(50));
  CHECK(step->kelvins() == Approx(27.7777777778));
  CHECK(Temperature::fahrenheit(1475) + *step == Temperature::fahrenheit(1525));
  CHECK(*parse_temperature_difference("10 K", fahrenheit, "ramp") ==
        TemperatureDifference::celsius(10));
  CHECK(*parse_temperature_difference("-5", celsius, "offset") ==
        TemperatureDifference::celsius(-5));
}

TEST_CASE("a step that no kiln makes is refused") {
  check_refused(parse_temperature_difference("2001 C", celsius, "ramp"), "ramp",
                "more than 2000 C");
  check_refused(parse_temperature_difference("-2001 C", celsius, "ramp"), "ramp",
                "more than 2000 C");
  check_refused(parse_temperature_difference("", celsius, "ramp"), "ramp", "no temperature");
  check_refused(parse_temperature_difference("5 mm", celsius, "ramp"), "ramp", "not a unit");
}

TEST_CASE("a temperature is shown with no more decimals than it has") {
  CHECK(to_text(Temperature::celsius(802), celsius) ==
        "802 \xC2\xB0"
        "C");
  CHECK(to_text(Temperature::centi_celsius(80250), celsius) ==
        "802.5 \xC2\xB0"
        "C");
  CHECK(to_text(Temperature::celsius(800), kelvin) == "1073.15 K");
  CHECK(figure(Temperature::fahrenheit(1475), celsius) == "801.67");
  CHECK(figure(Temperature::centi_celsius(-50), celsius) == "-0.5");
}

TEST_CASE("whole degrees C round half away from zero") {
  CHECK(Temperature::centi_celsius(80250).whole_celsius() == 803);
  CHECK(Temperature::centi_celsius(80249).whole_celsius() == 802);
  CHECK(Temperature::centi_celsius(-8050).whole_celsius() == -81);
  CHECK(Temperature::nearest_celsius(801.6666667).whole_celsius() == 802);
}
