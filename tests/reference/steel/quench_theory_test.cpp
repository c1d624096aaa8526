// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>
#include <cmath>

#include "domain/steel/hardenability.h"
#include "domain/steel/quench_severity.h"

using namespace tangmark::steel;

namespace {

// Half-temperature time of the one-term solution: C1 exp(-z^2 Fo) = 1/2.
double half_time(double z, double c1) {
  return std::log(2 * c1) / (z * z);
}

const double ideal = half_time(2.4048, 1.6021);  // a cylinder whose surface is held cold

}  // namespace

// Source: coefficients of the one-term solution of transient conduction, as tabled in heat-transfer
// texts (from memory): Bi, zeta1 and C1 of the long cylinder. Bi is H x D of the bar.
TEST_CASE("rounds by the tabled one-term coefficients of the long cylinder") {
  struct Row {
    double biot, z, c1;
  };
  for (const Row& row : {Row{0.02, 0.1995, 1.0050}, Row{0.1, 0.4417, 1.0246},
                         Row{0.5, 0.9408, 1.1143}, Row{1, 1.2558, 1.2071}, Row{2, 1.5995, 1.3384},
                         Row{5, 1.9898, 1.5029}, Row{10, 2.1795, 1.5677}}) {
    CAPTURE(row.biot);
    CHECK(ideal_diameter_needed_in(1, row.biot) ==
          Approx(std::sqrt(half_time(row.z, row.c1) / ideal)).epsilon(0.005));
  }
}

// Source: as above, the plane wall; Bi there is H x thickness.
TEST_CASE("plates by the tabled one-term coefficients of the plane wall") {
  struct Row {
    double biot, z, c1;
  };
  for (const Row& row : {Row{0.02, 0.1410, 1.0033}, Row{0.1, 0.3111, 1.0161},
                         Row{0.5, 0.6533, 1.0701}, Row{1, 0.8603, 1.1191}, Row{2, 1.0769, 1.1785},
                         Row{5, 1.3138, 1.2403}, Row{10, 1.4289, 1.2620}}) {
    CAPTURE(row.biot);
    CHECK(ideal_diameter_needed_for_plate_in(1, row.biot) ==
          Approx(std::sqrt(half_time(row.z, row.c1) / ideal)).epsilon(0.005));
  }
}

// Source: multiplying factors tabled in ASTM A255 and SAE J406 (from memory).
TEST_CASE("tabled multiplying factors come out") {
  struct Row {
    const char* steel;
    Element element;
    double factor;
  };
  for (const Row& row :
       {Row{"C:0.20", Element::C, 0.108}, Row{"C:0.30", Element::C, 0.162},
        Row{"C:0.40", Element::C, 0.213}, Row{"C:0.50", Element::C, 0.238},
        Row{"C:0.60", Element::C, 0.262}, Row{"C:0.4,Mn:0.50", Element::Mn, 2.667},
        Row{"C:0.4,Mn:1.00", Element::Mn, 4.333}, Row{"C:0.4,Si:0.25", Element::Si, 1.175},
        Row{"C:0.4,Ni:0.50", Element::Ni, 1.182}, Row{"C:0.4,Cr:0.50", Element::Cr, 2.080},
        Row{"C:0.4,Cr:1.00", Element::Cr, 3.160}, Row{"C:0.4,Mo:0.20", Element::Mo, 1.600},
        Row{"C:0.4,V:0.10", Element::V, 1.173}, Row{"C:0.4,Cu:0.20", Element::Cu, 1.073}}) {
    CAPTURE(row.steel);
    const auto di = hardenability(parse_composition(row.steel, "composition").value(), 7).value();
    for (const HardenabilityFactor& factor : di.factors)
      if (factor.element == row.element) CHECK(factor.factor == Approx(row.factor).margin(0.0012));
  }
}
