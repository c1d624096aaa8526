// SPDX-License-Identifier: MIT
#include "domain/steel/iron_carbon.h"

#include <catch2/catch.hpp>

#include "domain/steel/critical_points.h"
#include "domain/steel/martensite_start.h"

using namespace tangmark;
using namespace tangmark::steel;

namespace {

IronCarbonPhases at(double carbon_wt, std::int64_t celsius) {
  return iron_carbon_phases(carbon_wt, Temperature::celsius(celsius)).value();
}
Composition steel_of(const char* text) {
  return parse_composition(text, "composition").value();
}

}  // namespace

// Source: Callister, Materials Science and Engineering, the example on a 0.35 %C alloy just below
// the eutectoid (from memory): total ferrite 0.95, cementite 0.05; pearlite 0.44, proeutectoid
// ferrite 0.56; eutectoid ferrite 0.39.
TEST_CASE("the textbook's hypoeutectoid steel comes out by the lever rule") {
  const auto found = at(0.35, 727);
  CHECK(found.ferrite == Approx(0.95).margin(0.005));
  CHECK(found.cementite == Approx(0.05).margin(0.005));
  CHECK(found.constituents->pearlite == Approx(0.44).margin(0.005));
  CHECK(found.constituents->proeutectoid_ferrite == Approx(0.56).margin(0.005));
  CHECK(found.ferrite - found.constituents->proeutectoid_ferrite == Approx(0.39).margin(0.006));
}

// Source: the same textbook's figures for a eutectoid steel (from memory): 0.89 ferrite, 0.11
// cementite.
TEST_CASE("eutectoid steel is all pearlite, eleven per cent of it cementite") {
  const auto found = at(0.76, 727);
  CHECK(found.constituents->pearlite == Approx(1.0));
  CHECK(found.cementite == Approx(0.11).margin(0.005));
  CHECK(found.ferrite == Approx(0.89).margin(0.005));
}

// Source: our own arithmetic from the stated constants.
TEST_CASE("a hypereutectoid steel by the stated constants") {
  const auto found = at(0.95, 700);
  CHECK(found.constituents->pearlite == Approx(0.968).margin(0.0005));
  CHECK(found.constituents->proeutectoid_cementite == Approx(0.032).margin(0.0005));
  CHECK(found.cementite == Approx(0.139).margin(0.0005));
}

// Source: the carbon that austenite holds, read from the ASM diagram to 0.05 % (from memory). The
// straight line bulges off the curve by up to 0.1 % in the middle.
TEST_CASE("the straight Acm line follows the diagram within a tenth of a per cent carbon") {
  struct Row {
    std::int64_t celsius;
    double carbon_wt;
  };
  for (const Row& row : {Row{728, 0.76}, Row{800, 0.95}, Row{900, 1.25}, Row{1000, 1.55},
                         Row{1100, 1.9}, Row{1147, 2.125}}) {
    CAPTURE(row.celsius);
    const auto found = at(2.14, row.celsius);
    CHECK(*found.carbon_in_austenite_wt == Approx(row.carbon_wt).margin(0.13));
  }
  CHECK(*at(2.14, 1147).carbon_in_austenite_wt == Approx(2.14));
}

// Source: constants of the diagram as the textbooks print them (from memory).
TEST_CASE("the corners of the diagram stand where the textbooks put them") {
  CHECK(eutectoid_c == 727);
  CHECK(eutectoid_carbon_wt == 0.76);
  CHECK(cementite_carbon_wt == 6.70);
  CHECK(ferrite_carbon_wt == 0.022);
  CHECK(pure_iron_change_c == 912);
  CHECK(austenite_most_carbon_wt == 2.14);
  CHECK(eutectic_c == 1147);
  CHECK(ferrite_dissolved_c(0).value() == 912);
  CHECK(cementite_dissolved_c(2.14).value() == Approx(1147));
}

// Source: our own arithmetic from Andrews' and Steven and Haynes' formulas (coefficients read in
// secondary transcriptions); Andrews here without silicon's later term.
TEST_CASE("transformation temperatures of usual steels by the stated formulas") {
  struct Row {
    const char* steel;
    double ac1, ac3, andrews, steven_haynes;
  };
  const Row rows[] = {
      {"C:0.40,Mn:0.90,Si:0.25,Cr:1.00,Mo:0.20", 737.5, 799.1, 328.8, 320.5},
      {"C:0.60,Mn:0.88,Si:0.25,Cr:0.80", 734.4, 763.9, 248.8, 234.0},
      {"C:0.80", 723, 0, 200.6, 181.8},
      {"C:0.75,Mn:0.40,Si:0.25,Ni:2.0", 692.2, 0, 174.2, 158.3},
  };
  for (const Row& row : rows) {
    CAPTURE(row.steel);
    const auto composition = steel_of(row.steel);
    const auto points = critical_points(composition).value();
    const auto ms = martensite_start(composition).value();
    CHECK(points.ac1_c == Approx(row.ac1).margin(0.06));
    if (row.ac3 > 0) CHECK(points.ac3_c.value() == Approx(row.ac3).margin(0.06));
    const double silicon = 7.5 * composition.weight_percent(Element::Si);
    CHECK(ms.andrews_c + silicon == Approx(row.andrews).margin(0.06));
    CHECK(ms.steven_haynes_c == Approx(row.steven_haynes).margin(0.06));
  }
  CHECK(martensite_start(steel_of("C:0.40,Mn:0.90,Si:0.25,Cr:1.00,Mo:0.20"))->andrews_product_c ==
        Approx(325.8).margin(0.06));
  CHECK(retained_austenite_share(200, 25) == Approx(0.146).margin(0.0005));
}

// Source: a producer's D2 sheet, Ac1 788 C; a maker's copy of a producer's A2 text, Ac1 793 C. The
// formula is not made for so much chromium and must say so.
TEST_CASE("high-chromium steel is flagged, because the formula misses its measured Ac1") {
  const auto d2 = critical_points(steel_of("C:1.5,Mn:0.3,Si:0.3,Cr:12,Mo:0.9,V:0.9")).value();
  CHECK(d2.ac1_c - 788 > 100);
  CHECK(std::find(d2.outside.begin(), d2.outside.end(), "Cr") != d2.outside.end());
}
