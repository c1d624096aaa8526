// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "domain/steel/cooling.h"
#include "domain/steel/etchant.h"
#include "domain/steel/fuel.h"

using namespace tangmark;
using namespace tangmark::steel;

// Source: a producer's table of FeCl3 solutions at 20 C, as republished online; the Baume degrees
// are our own arithmetic (145 - 145 / SG).
TEST_CASE("ferric chloride densities and degrees of the table") {
  struct Row {
    double wt, density, baume;
  };
  for (const Row& row :
       {Row{1, 1.007, 1.0}, Row{4, 1.033, 4.6}, Row{8, 1.068, 9.2}, Row{10, 1.086, 11.5},
        Row{16, 1.143, 18.1}, Row{20, 1.183, 22.4}, Row{28, 1.269, 30.7}, Row{30, 1.292, 32.8},
        Row{36, 1.364, 38.7}, Row{40, 1.415, 42.5}, Row{44, 1.469, 46.3}}) {
    CAPTURE(row.wt);
    CHECK(ferric_chloride_density_g_ml(row.wt).value() == row.density);
    CHECK(baume_of_density(row.density) == Approx(row.baume).margin(0.06));
    CHECK(ferric_chloride_from_baume_wt(baume_of_density(row.density)).value() == Approx(row.wt));
  }
}

// Source: commercial 42 Baume solution is of SG 1.408, about 39.5 % (a seller's figure).
TEST_CASE("forty-two Baume is about 39.5 per cent") {
  CHECK(ferric_chloride_from_baume_wt(42).value() == Approx(39.5).margin(0.2));
}

// Source: our own arithmetic from the table; parts by volume of 40 % stock and water.
TEST_CASE("usual dilutions by volume") {
  struct Row {
    double water_parts, wt;
  };
  for (const Row& row : {Row{1, 23.5}, Row{2, 16.6}, Row{4, 10.5}}) {
    const double by_mass = 40 * 1.415 / (1.415 + row.water_parts * 0.998);
    CHECK(by_mass == Approx(row.wt).margin(0.05));
    const auto mix = dilute_ferric_chloride(40, by_mass, 1000).value();
    CHECK(mix.water_ml / mix.stock_ml == Approx(row.water_parts).epsilon(1e-9));
  }
  const auto litre = dilute_ferric_chloride(40, 20, 1000).value();
  CHECK(litre.stock_ml == Approx(418).margin(0.5));
  CHECK(litre.water_ml == Approx(593).margin(0.5));
}

// Source: US EIA unit tables: 91,452 Btu a gallon of propane, 1,037 Btu a cubic foot of natural
// gas; 1 therm is 100,000 Btu; 3,412.14 Btu a kWh; a 20 lb cylinder is 4.717 gal (secondary page).
TEST_CASE("the heat of gas by its published figures") {
  const auto gallon = fuel_heat(FuelGas::propane, FuelMeasure::liquid_l, 3.785411784).value();
  CHECK(gallon.gross_btu == Approx(91'452));
  CHECK(btu_in_mj(gallon.gross_btu) == Approx(96.49).margin(0.005));
  CHECK(btu_in_kwh(gallon.gross_btu) == Approx(26.80).margin(0.005));
  CHECK(gallon.net_btu == Approx(84'250));
  const auto cylinder = fuel_heat(FuelGas::propane, FuelMeasure::mass_kg, 20 * 0.45359237).value();
  CHECK(cylinder.gross_btu == Approx(431'400).epsilon(0.0005));
  CHECK(btu_in_kwh(cylinder.gross_btu) == Approx(126).margin(0.5));
  const auto foot = fuel_heat(FuelGas::natural_gas, FuelMeasure::gas_m3, 0.028316846592).value();
  CHECK(foot.gross_btu == Approx(1037));
  CHECK(btu_in_kwh(3412.14) == Approx(1).epsilon(1e-5));
  // Secondary pages: 21,500 to 21,600 Btu a pound, about 2,500 Btu a cubic foot of vapour.
  const auto pound = fuel_heat(FuelGas::propane, FuelMeasure::mass_kg, 0.45359237).value();
  CHECK(pound.gross_btu == Approx(21'550).epsilon(0.002));
  const auto vapour = fuel_heat(FuelGas::propane, FuelMeasure::gas_m3, 0.028316846592).value();
  CHECK(vapour.gross_btu == Approx(2'500).epsilon(0.01));
}

// Source: common practice: one kilogram of propane is about 13.9 kWh gross and 12.9 net.
TEST_CASE("a kilogram of propane") {
  const auto kilogram = fuel_heat(FuelGas::propane, FuelMeasure::mass_kg, 1).value();
  CHECK(btu_in_kwh(kilogram.gross_btu) == Approx(13.9).margin(0.1));
  CHECK(btu_in_kwh(kilogram.net_btu) == Approx(12.9).margin(0.1));
}

// Source: common practice: a shut knife kiln with tau between 2 and 4 h takes 3 to 6 h from 815 to
// 200 C, with the door open (tau 0.5 to 1 h) 0.75 to 1.5 h; a pottery-size kiln read 362 F and fell
// by about 40 F in 45 min, which is tau 5.5 h (our own arithmetic).
TEST_CASE("kilns cool as makers report") {
  const auto hours = [](double tau_h) {
    return cooling_minutes(Temperature::celsius(815), Temperature::celsius(200),
                           Temperature::celsius(20), tau_h * 60)
               .value() /
           60;
  };
  CHECK(hours(2) == Approx(3).margin(0.1));
  CHECK(hours(4) == Approx(6).margin(0.1));
  CHECK(hours(0.5) == Approx(0.75).margin(0.02));
  CHECK(hours(1) == Approx(1.5).margin(0.02));
  CHECK(cooling_minutes(Temperature::fahrenheit(362), Temperature::fahrenheit(322),
                        Temperature::fahrenheit(70), 5.5 * 60)
            .value() == Approx(45).margin(4));
}
