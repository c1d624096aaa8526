// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"

namespace tangmark::steel {

// The iron-cementite diagram with straight lines; compositions in weight per cent carbon.
inline constexpr double eutectoid_c = 727;
inline constexpr double eutectoid_carbon_wt = 0.76;
inline constexpr double ferrite_carbon_wt = 0.022;  ///< most that ferrite holds, at 727 C
inline constexpr double cementite_carbon_wt = 6.70;
inline constexpr double pure_iron_change_c = 912;
inline constexpr double eutectic_c = 1147;
inline constexpr double austenite_most_carbon_wt = 2.14;  ///< at 1147 C

/// The constituents seen after slow cooling, as mass fractions that sum to one.
struct Constituents {
  double pearlite = 0;
  double proeutectoid_ferrite = 0;
  double proeutectoid_cementite = 0;
};

/// The phases at equilibrium: mass fractions that sum to one, and the carbon in each that is
/// present.
struct IronCarbonPhases {
  double ferrite = 0;
  double austenite = 0;
  double cementite = 0;
  std::optional<double> carbon_in_ferrite_wt;
  std::optional<double> carbon_in_austenite_wt;
  std::optional<double> carbon_in_cementite_wt;
  std::optional<Constituents> constituents;  ///< at or below 727 C
};

/// Lever rule in the iron-cementite diagram. A3 runs straight from (0 %, 912 C) to (0.76 %, 727 C),
/// Acm from (0.76 %, 727 C) to (2.14 %, 1147 C), ferrite's limit from 0.022 % at 727 C to none at
/// 912 C; at and below 727 C ferrite holds 0.022 %.
/// **Source**: Callister's constants; straight lines are an approximation (Acm within about 0.05
/// %C, A3 up to 0.1 %C to the left of the real curve). **Valid**: iron and carbon alone; Cr, Mn, Ni
/// and Si move every line. **Outside** 0 to 2.14 %C, or above 1147 C: refused.
Outcome<IronCarbonPhases> iron_carbon_phases(double carbon_wt, Temperature at);

/// Where the last cementite dissolves (Acm), above 0.76 %C; none below.
std::optional<double> cementite_dissolved_c(double carbon_wt);
/// Where the last ferrite dissolves (A3), below 0.76 %C; none above.
std::optional<double> ferrite_dissolved_c(double carbon_wt);

/// Where steel begins to melt on heating: the solidus as a straight line from austenite at the
/// peritectic (0.17 %C, 1493 C) to 2.14 %C at 1147 C. **Source**: corners of the iron-carbon
/// diagram, from memory; the straight line is ours. **Valid** 0 to 2.14 %C (below 0.17 the
/// peritectic itself); phosphorus, sulfur and alloy lower it. **Outside**: as at the nearer end.
double begins_to_melt_c(double carbon_wt);

}  // namespace tangmark::steel
