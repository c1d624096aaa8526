// SPDX-License-Identifier: MIT
#include "domain/steel/fuel.h"

namespace tangmark::steel {
namespace {

constexpr double joules_per_btu = 1055.056;
constexpr double kg_per_lb = 0.45359237;
constexpr double litres_per_us_gallon = 3.785411784;
constexpr double m3_per_ft3 = 0.028316846592;

constexpr double propane_gross_btu_per_gal = 91'452;
constexpr double propane_net_btu_per_gal = 84'250;
constexpr double propane_lb_per_gal = 4.24;
constexpr double propane_vapour_ft3_per_gal = 36.4;
constexpr double natural_gas_btu_per_ft3 = 1037;
constexpr double natural_gas_net_share = 0.902;
constexpr double most_amount = 1e6;

double propane_gallons(FuelMeasure measure, double amount) {
  switch (measure) {
    case FuelMeasure::mass_kg: return amount / kg_per_lb / propane_lb_per_gal;
    case FuelMeasure::liquid_l: return amount / litres_per_us_gallon;
    case FuelMeasure::gas_m3: break;
  }
  return amount / m3_per_ft3 / propane_vapour_ft3_per_gal;
}

}  // namespace

Outcome<FuelHeat> fuel_heat(FuelGas gas, FuelMeasure measure, double amount) {
  if (!(amount > 0 && amount <= most_amount)) {
    return Problem{"amount", "The amount of gas must be above zero and at most a million units.",
                   "Weigh the cylinder before and after."};
  }
  if (gas == FuelGas::propane) {
    const double gallons = propane_gallons(measure, amount);
    return FuelHeat{gallons * propane_gross_btu_per_gal, gallons * propane_net_btu_per_gal};
  }
  if (measure != FuelMeasure::gas_m3) {
    return Problem{"gas", "Natural gas is metered as a gas: give volume_m3.",
                   "Read the gas meter before and after."};
  }
  const double btu = amount / m3_per_ft3 * natural_gas_btu_per_ft3;
  return FuelHeat{btu, btu * natural_gas_net_share};
}

double btu_in_mj(double btu) { return btu * joules_per_btu / 1e6; }
double btu_in_kwh(double btu) { return btu * joules_per_btu / 3.6e6; }

}  // namespace tangmark::steel
