// SPDX-License-Identifier: MIT
// Worked examples and problems of textbooks, typed as a maker would type them.
#include <catch2/catch.hpp>
#include <cmath>

#include "domain/steel/carbon_diffusion.h"
#include "domain/steel/cooling.h"
#include "domain/steel/iron_carbon.h"
#include "domain/steel/martensite_start.h"
#include "domain/steel/temper_parameter.h"

using namespace tangmark;
using namespace tangmark::steel;

namespace {

double carbon_after(const CarbonProfile& profile, double depth_mm) {
  return carbon_at_depth_wt(profile, depth_mm).value();
}

}  // namespace

// Source: Callister, Materials Science and Engineering, table of diffusion data (from memory):
// carbon in gamma iron 5.9e-12 m2/s at 900 C and 5.3e-11 m2/s at 1100 C.
TEST_CASE("the diffusivities tabled for carbon in austenite come out") {
  CHECK(carbon_diffusivity_m2_s(Temperature::celsius(900)).value() ==
        Approx(5.9e-12).epsilon(0.01));
  CHECK(carbon_diffusivity_m2_s(Temperature::celsius(1100)).value() ==
        Approx(5.3e-11).epsilon(0.02));
}

// Source: Smith, Foundations of Materials Science and Engineering, examples of gas carburizing a
// 1020 gear at 927 C with D 1.28e-11 m2/s and 0.90 % at the surface (answers from memory): 0.40 %
// at 0.50 mm after 143 min; 0.52 % at 0.50 mm after 5 h. The problem data stand on public pages,
// too.
TEST_CASE("a 1020 gear carburized at 927 C") {
  CHECK(carbon_after({0.90, 0.20, 1.28e-11, 143.0 / 60}, 0.50) == Approx(0.40).margin(0.003));
  CHECK(carbon_after({0.90, 0.20, 1.28e-11, 5}, 0.50) == Approx(0.52).margin(0.005));
  CHECK(depth_of_carbon_mm({0.90, 0.20, 1.28e-11, 143.0 / 60}, 0.40).value() ==
        Approx(0.50).epsilon(0.01));
}

// Source: Callister, problems on nonsteady diffusion (answers from memory): 0.20 % steel, surface
// 1.30 %, 0.45 % at 2 mm at 1000 C needs 19.7 h; 0.35 % steel in oxygen at 1400 K, surface 0, D
// 6.9e-11 m2/s: 0.15 % at 1.26 mm after 10 h; twice the depth needs four times as long (10 and 40
// h).
TEST_CASE("carburizing and decarburizing problems of the textbook") {
  const double at_1000_c = carbon_diffusivity_m2_s(Temperature::celsius(1000)).value();
  CHECK(carbon_after({1.30, 0.20, at_1000_c, 19.7}, 2) == Approx(0.45).margin(0.005));
  CHECK(depth_of_carbon_mm({0.0, 0.35, 6.9e-11, 10}, 0.15).value() == Approx(1.26).margin(0.005));
  CHECK(carbon_after({1.2, 0.2, 1.1e-11, 10}, 2.5) ==
        Approx(carbon_after({1.2, 0.2, 1.1e-11, 40}, 5.0)));
}

// Source: Callister, problems on the lever rule (answers from memory). 2.5 kg of 0.65 %: 2.26 kg
// ferrite and 0.24 kg cementite in all, 2.12 kg pearlite, 0.38 kg proeutectoid ferrite; 6.0 kg of
// 0.9
// %: 5.21 and 0.79 kg, 5.86 kg pearlite, 0.14 kg proeutectoid cementite; 1.0 kg of 1.15 %: 0.83 and
// 0.17 kg, 0.93 kg pearlite, 0.07 kg proeutectoid cementite; 0.25 %: 0.31 pearlite, 0.69 ferrite.
TEST_CASE("lever-rule problems of the textbook") {
  struct Row {
    double carbon, kg, ferrite, cementite, pearlite, proeutectoid;
  };
  for (const Row& row :
       {Row{0.65, 2.5, 2.26, 0.24, 2.12, 0.38}, Row{0.9, 6.0, 5.21, 0.79, 5.86, 0.14},
        Row{1.15, 1.0, 0.83, 0.17, 0.93, 0.07}, Row{0.25, 1.0, 0.966, 0.034, 0.31, 0.69}}) {
    CAPTURE(row.carbon);
    const auto found = iron_carbon_phases(row.carbon, Temperature::celsius(726)).value();
    const double margin = 0.012 * row.kg;
    CHECK(row.kg * found.ferrite == Approx(row.ferrite).margin(margin));
    CHECK(row.kg * found.cementite == Approx(row.cementite).margin(margin));
    CHECK(row.kg * found.constituents->pearlite == Approx(row.pearlite).margin(margin));
    const double before = row.carbon > 0.76 ? found.constituents->proeutectoid_cementite
                                            : found.constituents->proeutectoid_ferrite;
    CHECK(row.kg * before == Approx(row.proeutectoid).margin(margin));
  }
  // 0.43 %: proeutectoid ferrite 0.45, eutectoid ferrite 0.49 (from memory).
  const auto found = iron_carbon_phases(0.43, Temperature::celsius(726)).value();
  CHECK(found.constituents->proeutectoid_ferrite == Approx(0.45).margin(0.005));
  CHECK(found.ferrite - found.constituents->proeutectoid_ferrite == Approx(0.49).margin(0.005));
}

// Source: Callister, design example on the same time-temperature parameter for creep (from memory):
// 24.0e3 at 800 C (1073 K) is met in 233 h. Problems: 100 days (2400 h) at 773 K is 18.1e3; 5 years
// (4.38e4 h) 19.05e3 and 20 years (1.752e5 h) 19.51e3 there; 20,000 h at 923 K is 22.4e3.
TEST_CASE("the parameter in the textbook's worked examples, constant 20") {
  CHECK(hours_at(1073, 24.0e3) == Approx(233).margin(2));
  CHECK(temper_parameter(1073, 233) == Approx(24.0e3).epsilon(0.0005));
  CHECK(temper_parameter(773, 2400) == Approx(18.1e3).epsilon(0.003));
  CHECK(temper_parameter(773, 4.38e4) == Approx(19.05e3).epsilon(0.0005));
  CHECK(temper_parameter(773, 1.752e5) == Approx(19.51e3).epsilon(0.0005));
  CHECK(temper_parameter(923, 20'000) == Approx(22.4e3).epsilon(0.002));
}

// Source: a public page on martensite start: with Ms 200 C about 15 % austenite is left at 25 C.
TEST_CASE("retained austenite as a public page works it out") {
  CHECK(retained_austenite_share(200, 25) == Approx(0.15).margin(0.006));
}

// Source: calculus texts on Newton's law of cooling (from memory). Stewart: a bottle at 72 F in a
// 44 F refrigerator is at 61 F after 30 min, at 54.3 F after 60 and at 50 F after about 93 min.
// Boyce and DiPrima: a body at 85 F in 68 F air is at 74 F two hours later; 98.6 F was 1.129 h
// before.
TEST_CASE("cooling problems of the calculus texts") {
  const auto minutes = [](double from, double to, double air, double tau) {
    const auto f = [](double x) {
      return Temperature::fahrenheit(0) + TemperatureDifference::counts(std::llround(x * 1000));
    };
    return cooling_minutes(f(from), f(to), f(air), tau).value();
  };
  const double bottle = 30 / std::log(28.0 / 17.0);
  CHECK(minutes(72, 61, 44, bottle) == Approx(30));
  CHECK(minutes(72, 54.3, 44, bottle) == Approx(60).margin(0.3));
  CHECK(minutes(72, 50, 44, bottle) == Approx(93).margin(0.7));
  const double body = 120 / std::log(17.0 / 6.0);
  CHECK(minutes(85, 74, 68, body) == Approx(120));
  CHECK(minutes(98.6, 85, 68, body) / 60 == Approx(1.129).margin(0.001));
}
