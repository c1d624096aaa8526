// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "domain/steel/carbon_diffusion.h"

using namespace tangmark;
using namespace tangmark::steel;

// Source: D0 and Q from Callister's table; the diffusivities are our own arithmetic with them.
TEST_CASE("the diffusivity of carbon in austenite") {
  CHECK(carbon_diffusivity_m2_s(Temperature::celsius(950)).value() ==
        Approx(1.10e-11).epsilon(0.005));
  CHECK(carbon_diffusivity_m2_s(Temperature::celsius(1000)).value() ==
        Approx(1.95e-11).epsilon(0.005));
}

// Source: Callister's carburizing example: 0.25 %C steel, surface 1.20 %, 0.80 % wanted at 0.5 mm,
// D 1.6e-11 m2/s at 950 C: z = 0.392 and 25,400 s = 7.1 h (the answer from memory).
TEST_CASE("the textbook's carburizing time comes out") {
  const CarbonProfile profile{1.20, 0.25, 1.6e-11, 25'400.0 / 3600};
  CHECK(carbon_at_depth_wt(profile, 0.5).value() == Approx(0.80).margin(0.002));
  CHECK(depth_of_carbon_mm(profile, 0.80).value() == Approx(0.5).epsilon(0.003));
  const double z = 0.5e-3 / (2 * std::sqrt(1.6e-11 * 25'400));
  CHECK(z == Approx(0.392).margin(0.001));
}

// Source: a course text's problem: 0.2 %C steel, surface 1.0 %, 0.6 % at 0.75 mm after 10 h needs D
// = 1.73e-11 m2/s (erf z = 0.5 with z taken as 0.4755).
TEST_CASE("the course text's diffusivity comes out") {
  CHECK(carbon_at_depth_wt({1.0, 0.2, 1.73e-11, 10}, 0.75).value() == Approx(0.60).margin(0.003));
}

// Source: tables of the error function (Abramowitz & Stegun 7.1).
TEST_CASE("the profile is the tabled error function") {
  struct Row {
    double z, erf;
  };
  for (const Row& row :
       {Row{0.0, 0.0}, Row{0.1, 0.1124629}, Row{0.2, 0.2227026}, Row{0.3, 0.3286268},
        Row{0.4, 0.4283924}, Row{0.5, 0.5204999}, Row{0.6, 0.6038561}, Row{0.8, 0.7421010},
        Row{1.0, 0.8427008}, Row{1.2, 0.9103140}, Row{1.5, 0.9661051}, Row{2.0, 0.9953223}}) {
    const CarbonProfile profile{1.0, 0.0, 1e-11, 1};
    const double depth_mm = row.z * 2000 * std::sqrt(1e-11 * 3600);
    CHECK(carbon_at_depth_wt(profile, depth_mm).value() == Approx(1 - row.erf).margin(1e-7));
  }
}

// Source: Crank, The Mathematics of Diffusion: the first term of the series is 4/pi exp(-pi^2
// Dt/l^2), which is all of it within a thousandth once a fifth of l^2/D has passed.
TEST_CASE("layers equalize by the first term of their series") {
  const double layer_m = 0.1e-3;
  const double d = 1.1e-11;
  const double hours = 0.3 * layer_m * layer_m / d / 3600;
  const double first = 4 / std::acos(-1.0) * std::exp(-std::acos(-1.0) * std::acos(-1.0) * 0.3);
  CHECK(layer_difference_left(0.1, d, hours) == Approx(first).epsilon(0.001));
  CHECK(layer_difference_left(0.1, d, 0) == Approx(1).margin(0.001));
  CHECK(layer_difference_left(10, d, 0.1) == Approx(1).margin(0.001));
  CHECK(layer_difference_left(0.01, d, 1) == Approx(0).margin(1e-6));
}
