// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/outcome.h"

namespace tangmark::steel {

enum class FuelGas { propane, natural_gas };

/// How much gas, by the one measure that was taken.
enum class FuelMeasure { mass_kg, liquid_l, gas_m3 };

/// Heat of burning an amount of gas. Gross counts the heat of the water vapour, net does not.
struct FuelHeat {
  double gross_btu = 0;
  double net_btu = 0;
};

/// Propane: 91,452 Btu gross and about 84,250 Btu net per US gallon of liquid, 4.24 lb/gal at 60 F,
/// 36.4 ft3 of vapour a gallon. Natural gas: 1,037 Btu/ft3 gross (United States average, between
/// 1,029 and 1,038 by year), net 0.902 of it (from memory).
/// **Source**: US EIA unit tables; mass, vapour and net figures of propane from secondary pages.
/// **Valid**: as delivered gas of usual make-up. Refuses an amount that is not above zero, natural
/// gas by mass or by liquid volume.
Outcome<FuelHeat> fuel_heat(FuelGas gas, FuelMeasure measure, double amount);

/// Btu (IT) in MJ and kWh. **Source**: NIST SP 811, 1055.056 J.
double btu_in_mj(double btu);
double btu_in_kwh(double btu);

}  // namespace tangmark::steel
