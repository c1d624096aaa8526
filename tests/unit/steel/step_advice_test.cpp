// SPDX-License-Identifier: MIT
#include "domain/steel/step_advice.h"

#include <catch2/catch.hpp>

#include "domain/steel/hardness_bias.h"
#include "domain/steel/step_caution.h"

using namespace tangmark;
using namespace tangmark::steel;
using Catch::Matchers::Contains;

namespace {

StepSteel grade(const char* name, const char* analysis = "") {
  StepSteel steel{*GradeBook::published().find(name), {}};
  if (*analysis) steel.analysis = parse_composition(analysis, "analysis").value();
  return steel;
}

HeatStep step(const char* operation, int celsius) {
  HeatStep made;
  made.operation = operation;
  made.at = Temperature::celsius(celsius);
  return made;
}

std::string text_of(const std::vector<Advice>& advice) {
  std::string text;
  for (const Advice& one : advice) {
    CHECK_FALSE(one.source.empty());
    text += one.sentence + '\n';
  }
  return text;
}

bool any_to_heed(const std::vector<Advice>& advice) {
  for (const Advice& one : advice) {
    if (one.heed) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("a hardening heat is held against the published window") {
  CHECK_THAT(
      text_of(window_advice(step("harden", 800), grade("O1").grade, TemperatureUnit::celsius)),
      Contains("800 °C lies within the published window to harden O1 (788 °C to 816 °C)."));
  const auto hot = window_advice(step("harden", 850), grade("O1").grade, TemperatureUnit::celsius);
  CHECK(any_to_heed(hot));
  CHECK_THAT(text_of(hot), Contains("34 °C above"));
  HeatStep f = step("harden", 0);
  f.at = Temperature::fahrenheit(1440);
  CHECK_THAT(
      text_of(window_advice(f, grade("O1").grade, TemperatureUnit::fahrenheit)),
      Contains("1440 °F is 10 °F below the published window to harden O1 (1450 °F to 1500 °F)."));
}

TEST_CASE("a single published figure has the usual tolerance") {
  CHECK_FALSE(any_to_heed(
      window_advice(step("harden", 840), grade("5160").grade, TemperatureUnit::celsius)));
  CHECK(any_to_heed(
      window_advice(step("harden", 850), grade("5160").grade, TemperatureUnit::celsius)));
}

TEST_CASE("a hold too short and a cooling too fast are said") {
  HeatStep hold = step("harden", 970);
  hold.hold = std::chrono::minutes(10);
  CHECK_THAT(text_of(window_advice(hold, grade("A2").grade, TemperatureUnit::celsius)),
             Contains("shorter than the published 30 min"));
  HeatStep anneal = step("anneal", 770);
  anneal.fall_per_hour = TemperatureDifference::celsius(60);
  CHECK_THAT(text_of(window_advice(anneal, grade("O1").grade, TemperatureUnit::celsius)),
             Contains("60 °C an hour is faster than the published 22 °C an hour"));
}

TEST_CASE("cementite that stays at a cycling heat is named as an estimate") {
  const auto advice = iron_carbon_advice(step("thermal cycle", 750), grade("W1", "C:1.1,Mn:0.3"),
                                         TemperatureUnit::celsius);
  REQUIRE(advice.size() == 1);
  CHECK(advice[0].kind == AdviceKind::estimate);
  CHECK_THAT(
      advice[0].sentence,
      Contains("750 °C: at equilibrium about 4.5 % of a 1.1 % carbon steel stays as cementite; "
               "cycling here grows what is there."));
}

TEST_CASE("above the line of cementite the sentence says why carbides may still survive") {
  CHECK_THAT(
      text_of(iron_carbon_advice(step("harden", 890), grade("W1", "C:1.1,Mn:0.3"),
                                 TemperatureUnit::celsius)),
      Contains("890 °C is above the line where cementite dissolves at equilibrium in this steel"));
}

TEST_CASE("a heat below Ac1 hardens nothing") {
  const auto advice =
      iron_carbon_advice(step("harden", 690), grade("1084"), TemperatureUnit::celsius);
  CHECK(any_to_heed(advice));
  CHECK_THAT(text_of(advice), Contains("no austenite forms, so nothing hardens"));
}

TEST_CASE("iron-carbon lines are not used on stainless") {
  const auto advice =
      iron_carbon_advice(step("harden", 1065), grade("440C"), TemperatureUnit::celsius);
  CHECK_THAT(text_of(advice), Contains("more than 3 % alloy"));
}

TEST_CASE("a section too thick for its bath is warned of") {
  HeatStep thick = step("harden", 800);
  thick.section = Length::millimetres(25);
  thick.bath = "oil";
  const auto warned =
      quench_advice(thick, grade("1095", "C:0.95,Mn:0.4,Si:0.2"), TemperatureUnit::celsius);
  CHECK(any_to_heed(warned));
  CHECK_THAT(text_of(warned), Contains("thicker than this steel hardens through in this bath"));
  CHECK_THAT(text_of(warned), Contains("Outside ASTM A255 range"));
  thick.section = Length::millimetres(2);
  thick.bath = "water";
  CHECK_THAT(text_of(quench_advice(thick, grade("1095", "C:0.95,Mn:0.4,Si:0.2"),
                                   TemperatureUnit::celsius)),
             !Contains("thicker than"));
}

TEST_CASE("after a temper a band is expected, and a cooler second temper is asked about") {
  HeatStep temper = step("temper", 204);
  temper.hold = std::chrono::hours(2);
  temper.earlier_tempers = {{Temperature::celsius(204), std::chrono::hours(2)}};
  const auto expected = temper_advice(temper, grade("O1"), TemperatureUnit::celsius);
  CHECK_THAT(text_of(expected), Contains("HRC by estimate"));
  CHECK_FALSE(any_to_heed(expected));
  temper.earlier_tempers[0].at = Temperature::celsius(220);
  CHECK(any_to_heed(temper_advice(temper, grade("O1"), TemperatureUnit::celsius)));
  CHECK_THAT(text_of(temper_advice(temper, grade("1084"), TemperatureUnit::celsius)),
             Contains("No hardness is estimated"));
}

TEST_CASE("a step that can hurt says so and defers to the safety sheet") {
  HeatStep quench = step("harden", 800);
  quench.bath = "oil";
  const auto advice = advise(quench, grade("1084"));
  CHECK(advice.back().kind == AdviceKind::caution);
  CHECK_THAT(advice.back().sentence, Contains("safety sheet"));
  CHECK(cautions_for("etch", "").size() == 1);
  CHECK(cautions_for("sharpen", "").empty());
}

TEST_CASE("measured blades show a shop's bias against the tables") {
  const auto expected =
      expected_hardness(grade("O1").grade, {{Temperature::fahrenheit(400), std::chrono::hours(2)}})
          .value();
  const double middle = (expected.low.points + expected.high.points) / 2;
  const auto bias =
      hardness_bias({{expected, {middle + 1}}, {expected, {middle + 2}}, {expected, {middle + 3}}});
  REQUIRE(bias);
  CHECK(bias->mean_points == Approx(2));
  CHECK(bias->spread_points.value() == Approx(1));
  CHECK_FALSE(hardness_bias({}));
  CHECK_FALSE(hardness_bias({{expected, {middle}}})->spread_points);
}

TEST_CASE("a welding heat is set against where the steel begins to melt") {
  const auto safe =
      welding_advice(step("forge-weld", 1150), grade("1084"), TemperatureUnit::celsius);
  CHECK_FALSE(any_to_heed(safe));
  CHECK_THAT(text_of(safe), Contains("% carbon steel begins to melt"));
  const auto near =
      welding_advice(step("forge-weld", 1320), grade("1084"), TemperatureUnit::celsius);
  CHECK(any_to_heed(near));
  const auto above = welding_advice(step("forge", 1400), grade("1084"), TemperatureUnit::celsius);
  CHECK_THAT(text_of(above), Contains("1400 °C is above where"));
  CHECK(welding_advice(step("harden", 1150), grade("1084"), TemperatureUnit::celsius).empty());
}

TEST_CASE("layers that differ in carbon even out in the time the desk reckons") {
  HeatStep weld = step("forge-weld", 1150);
  weld.layer = Length::nanometres(200'000);
  // l^2 / (pi^2 D) x ln(4 / (pi x 0.1)) at D 8.4e-11 m2/s is about two minutes.
  CHECK_THAT(text_of(welding_advice(weld, grade("15N20"), TemperatureUnit::celsius)),
             Contains("0.2 mm thick evens out to a tenth of its difference in about 2 min"));
  weld.layer = Length::millimetres(30);
  CHECK_THAT(text_of(welding_advice(weld, grade("15N20"), TemperatureUnit::celsius)),
             Contains("more than a day"));
}

TEST_CASE("off the quench the desk says what its tables print") {
  const auto advice = quench_advice(step("harden", 800), grade("O1"), TemperatureUnit::celsius);
  CHECK_THAT(text_of(advice), Contains("Off the quench expect about"));
  CHECK_THAT(text_of(quench_advice(step("harden", 800), grade("1084"), TemperatureUnit::celsius)),
             !Contains("Off the quench"));
}
