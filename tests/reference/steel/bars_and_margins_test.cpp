// SPDX-License-Identifier: MIT
// Masses of bars as tabled for trade, and margins against mark-ups.
#include <catch2/catch.hpp>

#include "domain/measure/mass.h"
#include "domain/steel/desk_calc.h"

using namespace tangmark;
using namespace tangmark::steel;

namespace {

double answer(const char* name, std::vector<std::pair<std::string, std::string>> keys,
              const char* field) {
  const auto found = run_desk_calculation(name, keys, GradeBook::published());
  REQUIRE(found);
  return DeskValue(found->fields).find(field)->number();
}

}  // namespace

// Source: mass a metre of hot-rolled rounds (EN 10060) and flats (EN 10058) as printed in section
// tables, reckoned there with 7.85 kg/dm3 (from memory).
TEST_CASE("a metre of trade sections weighs what the section tables print") {
  struct Round {
    const char* mm;
    double kg;
  };
  for (const Round& row : {Round{"10", 0.617}, Round{"12", 0.888}, Round{"16", 1.58},
                           Round{"20", 2.47}, Round{"25", 3.85}, Round{"32", 6.31}}) {
    CAPTURE(row.mm);
    CHECK(answer("mass", {{"length_mm", "1000"}, {"diameter_mm", row.mm}}, "mass_kg") ==
          Approx(row.kg).epsilon(0.003));
  }
  struct Flat {
    const char* width;
    const char* thickness;
    double kg;
  };
  for (const Flat& row : {Flat{"25", "5", 0.981}, Flat{"40", "5", 1.57}, Flat{"50", "6", 2.36},
                          Flat{"60", "10", 4.71}}) {
    CAPTURE(row.width);
    CHECK(answer("mass",
                 {{"length_mm", "1000"}, {"width_mm", row.width}, {"thickness_mm", row.thickness}},
                 "mass_kg") == Approx(row.kg).epsilon(0.003));
  }
}

// Source: margin and mark-up equivalents as printed in commerce texts (from memory): 20 % margin is
// 25 % mark-up, 25 is 33.3, 33.3 is 50, 40 is 66.7, 50 is 100, 60 is 150.
TEST_CASE("margins are the mark-ups that commerce texts print") {
  struct Row {
    const char* margin;
    double markup;
  };
  for (const Row& row : {Row{"0.20", 0.25}, Row{"0.25", 0.333}, Row{"0.333333", 0.50},
                         Row{"0.40", 0.667}, Row{"0.50", 1.00}, Row{"0.60", 1.50}}) {
    CAPTURE(row.margin);
    CHECK(answer("price", {{"cost", "1000"}, {"margin", row.margin}}, "markup") ==
          Approx(row.markup).margin(0.001));
  }
}

// Source: cost accounting on normal spoilage (common practice): 300 spent before a step that a
// quarter fails makes 400 a good piece; good yields of 0.9 and 0.8 in line are 0.72.
TEST_CASE("losses as cost accounting works them out") {
  CHECK(answer("loss", {{"costs", "300"}, {"survival", "0.75"}}, "cost_per_good") == Approx(400));
  CHECK(answer("loss", {{"costs", "72,0"}, {"survival", "0.9,0.8"}}, "cost_per_good") ==
        Approx(100));
}
