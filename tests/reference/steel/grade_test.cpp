// SPDX-License-Identifier: MIT
#include "domain/steel/grade.h"

#include <catch2/catch.hpp>

#include "domain/measure/mass.h"

using namespace tangmark;
using namespace tangmark::steel;

namespace {

const Grade& grade(const char* name) {
  const Grade* found = GradeBook::published().find(name);
  REQUIRE(found);
  return *found;
}

}  // namespace

// Source: the AISI/SAE list of a steel merchant (1075, 1080, 1084, 1095), the AISI/UNS W-group
// table as republished (W1, W2), an AISI table and two sellers' copies (D2), three sellers' copies
// of ASTM A295 (52100), an AISI list quoted from a heat-treating manual (5160), a merchant's sheet
// citing ASTM A276 (440C), a distributor's sheet (O1).
TEST_CASE("limits are those of the published lists") {
  struct Row {
    const char* grade;
    Element element;
    double least, most;
  };
  const Row rows[] = {{"1075", Element::C, 0.70, 0.80},   {"1075", Element::Mn, 0.40, 0.70},
                      {"1080", Element::C, 0.75, 0.88},   {"1080", Element::Mn, 0.60, 0.90},
                      {"1084", Element::C, 0.80, 0.93},   {"1084", Element::Mn, 0.60, 0.90},
                      {"1095", Element::C, 0.90, 1.03},   {"1095", Element::Mn, 0.30, 0.50},
                      {"W1", Element::C, 0.70, 1.50},     {"W2", Element::V, 0.15, 0.35},
                      {"W2", Element::C, 0.85, 1.50},     {"D2", Element::C, 1.40, 1.60},
                      {"D2", Element::Cr, 11.0, 13.0},    {"D2", Element::Mo, 0.70, 1.20},
                      {"52100", Element::C, 0.93, 1.05},  {"52100", Element::Cr, 1.35, 1.60},
                      {"52100", Element::Mn, 0.25, 0.45}, {"5160", Element::C, 0.56, 0.64},
                      {"5160", Element::Mn, 0.75, 1.00},  {"5160", Element::Cr, 0.70, 0.90},
                      {"440C", Element::C, 0.95, 1.20},   {"440C", Element::Cr, 16.0, 18.0},
                      {"O1", Element::C, 0.85, 1.00},     {"O1", Element::Mn, 1.00, 1.40},
                      {"O1", Element::W, 0.40, 0.60},     {"A2", Element::Cr, 4.75, 5.50}};
  for (const Row& row : rows) {
    CAPTURE(row.grade, symbol(row.element));
    const ElementLimit* limit = grade(row.grade).limit_of(row.element);
    REQUIRE(limit);
    CHECK(limit->least_percent.value() == row.least);
    CHECK(limit->most_percent.value() == row.most);
  }
}

// Source: as the windows' own source column; both figures as printed in F.
TEST_CASE("hardening windows are those of the published sheets") {
  struct Row {
    const char* grade;
    std::int64_t low_f, high_f;
  };
  for (const Row& row : {Row{"W1", 1400, 1550}, Row{"O1", 1450, 1500}, Row{"5160", 1525, 1525},
                         Row{"52100", 1500, 1570}, Row{"D2", 1850, 1875}, Row{"A2", 1750, 1800},
                         Row{"440C", 1850, 1950}, Row{"1095", 1450, 1500}}) {
    CAPTURE(row.grade);
    const HeatTreatWindow* window = grade(row.grade).window_for("harden");
    REQUIRE(window);
    CHECK(window->low == Temperature::fahrenheit(row.low_f));
    CHECK(window->high == Temperature::fahrenheit(row.high_f));
  }
}

// Source: a mill's 1.2080 sheet; a merchant's 420 sheet; the producer's hardening guide for 14C28N;
// a producer group's technical card of 102Cr6 (one temperature).
TEST_CASE("hardening windows printed in C are those of the sheets") {
  struct Row {
    const char* grade;
    std::int64_t low_c, high_c;
  };
  for (const Row& row : {Row{"D3", 940, 980}, Row{"420", 980, 1030}, Row{"14C28N", 1050, 1090},
                         Row{"102Cr6", 850, 850}, Row{"90MnCrV8", 790, 820}}) {
    CAPTURE(row.grade);
    const HeatTreatWindow* window = grade(row.grade).window_for("harden");
    REQUIRE(window);
    CHECK(window->low == Temperature::celsius(row.low_c));
    CHECK(window->high == Temperature::celsius(row.high_c));
  }
}

// Source: typical A2 of a distributor's sheet (1.00 C, 0.85 Mn, 5.25 Cr, 1.10 Mo, 0.25 V).
TEST_CASE("the middle of A2's limits is near its typical analysis") {
  const Composition middle = middle_of_limits(grade("A2"));
  CHECK(middle.weight_percent(Element::C) == Approx(1.00));
  CHECK(middle.weight_percent(Element::Cr) == Approx(5.25).margin(0.15));
  CHECK(middle.weight_percent(Element::Mo) == Approx(1.10).margin(0.06));
}

// Source: densities of data sheets: 0.278 lb/in3 for D2 is 7.695 g/cm3, 0.275 for 440C is 7.61.
TEST_CASE("densities in pounds a cubic inch come to the printed metric ones") {
  const Length inch = Length::nanometres(25'400'000);
  CHECK(bar_mass(inch, inch, inch, Density{7695}).in_grams() / 453.59237 ==
        Approx(0.278).margin(0.0005));
  CHECK(bar_mass(inch, inch, inch, Density{7610}).in_grams() / 453.59237 ==
        Approx(0.275).margin(0.0005));
}

// Source: common practice for 7.85 g/cm3: a 25 x 4 x 300 mm bar is 235 g, a 38 x 5 x 450 mm bar 671
// g.
TEST_CASE("bars weigh what makers expect") {
  const auto mm = [](std::int64_t n) { return Length::millimetres(n); };
  CHECK(bar_mass(mm(300), mm(25), mm(4), Density{}).in_grams() == Approx(235).margin(0.6));
  CHECK(bar_mass(mm(450), mm(38), mm(5), Density{}).in_grams() == Approx(671).margin(0.6));
}
