// SPDX-License-Identifier: MIT
#include "domain/blade/trial.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::blade;
using Catch::Matchers::Contains;

namespace {

using enum TrialVariable;

TrialBlade a_blade(std::int64_t number, double soak_min, std::optional<double> hrc,
                   double heat_c = 800) {
  return {number, {{soak, soak_min}, {hardening_temperature, heat_c}}, hrc};
}

std::string words(const std::vector<TrialBlade>& blades) {
  return findings_of(blades, {soak}, TrialOutcome::hardness).front().words;
}

}  // namespace

TEST_CASE("too few blades say nothing, however well they are in order") {
  const std::string said =
      words({a_blade(1, 5, 60), a_blade(2, 10, 61), a_blade(3, 15, 62), a_blade(4, 20, 63)});
  CHECK_THAT(said, Contains("too few to say anything"));
  CHECK_THAT(said, Contains("1 time in 12"));
}

TEST_CASE("five blades in perfect order are a sign, and no proof of a cause") {
  const std::string said = words({a_blade(1, 5, 60), a_blade(2, 10, 61), a_blade(3, 15, 62),
                                  a_blade(4, 20, 63), a_blade(5, 25, 64)});
  CHECK_THAT(said, Contains("hardness is higher"));
  CHECK_THAT(said, Contains("no proof of a cause"));
  CHECK_THAT(said, Contains("rank correlation 1, p 0.02, 5 blades"));
}

TEST_CASE("blades without order show no sign") {
  const std::string said = words({a_blade(1, 5, 61), a_blade(2, 10, 60), a_blade(3, 15, 62),
                                  a_blade(4, 20, 60.5), a_blade(5, 25, 61.5)});
  CHECK_THAT(said, Contains("No sign"));
}

TEST_CASE("a measure that never varied, or that nobody took, compares nothing") {
  CHECK_THAT(words({a_blade(1, 5, 60), a_blade(2, 5, 61)}), Contains("same soak"));
  CHECK_THAT(words({a_blade(1, 5, {}), a_blade(2, 5, {})}), Contains("No blade"));
  CHECK_THAT(words({a_blade(1, 5, 60)}), Contains("One blade"));
}

TEST_CASE("what changed along with the variable is named") {
  std::vector<TrialBlade> blades;
  for (int i = 0; i < 6; ++i) blades.push_back(a_blade(i, 5 + i, 60 + i, 790 + 5 * i));
  const auto findings = findings_of(blades, {soak, hardening_temperature}, TrialOutcome::hardness);
  CHECK_THAT(findings.front().words, Contains("hardening temperature changed along with it"));
}

TEST_CASE("the next blade changes one thing, at the end that fewer blades have") {
  const auto next = next_blade({a_blade(1, 5, 60), a_blade(2, 5, 60), a_blade(3, 20, 61)},
                               {soak, hardening_temperature}, TemperatureUnit::celsius);
  REQUIRE(next);
  CHECK(next->change == soak);
  CHECK(next->value == 20);
  REQUIRE(next->keep.size() == 1);
  CHECK(next->keep.front() == std::pair{hardening_temperature, 800.0});
  const auto first = next_blade({a_blade(1, 10, 60)}, {hardening_temperature, soak},
                                TemperatureUnit::celsius);
  CHECK(first->value == 815);
  const auto read_in_f = next_blade({a_blade(1, 10, 60, 1475)}, {hardening_temperature},
                                    TemperatureUnit::fahrenheit);
  CHECK_THAT(read_in_f->words, Contains("hardening temperature 1500 F"));
  CHECK_FALSE(next_blade({}, {soak}, TemperatureUnit::celsius));
}
