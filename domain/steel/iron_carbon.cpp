// SPDX-License-Identifier: MIT
#include "domain/steel/iron_carbon.h"

#include <algorithm>

namespace tangmark::steel {
namespace {

constexpr double a3_span_c = pure_iron_change_c - eutectoid_c;
constexpr double acm_span_c = eutectic_c - eutectoid_c;
constexpr double acm_span_wt = austenite_most_carbon_wt - eutectoid_carbon_wt;

double carbon_on_a3_wt(double c) {
  return eutectoid_carbon_wt * (pure_iron_change_c - c) / a3_span_c;
}
double carbon_on_acm_wt(double c) {
  return eutectoid_carbon_wt + acm_span_wt * (c - eutectoid_c) / acm_span_c;
}
double ferrite_limit_wt(double c) {
  return ferrite_carbon_wt * (pure_iron_change_c - c) / a3_span_c;
}

// The share of the richer of two phases in a mixture of both.
double lever(double carbon_wt, double poor_wt, double rich_wt) {
  return (carbon_wt - poor_wt) / (rich_wt - poor_wt);
}

IronCarbonPhases all_ferrite(double carbon_wt) {
  IronCarbonPhases phases;
  phases.ferrite = 1;
  phases.carbon_in_ferrite_wt = carbon_wt;
  return phases;
}

Constituents constituents_of(double carbon_wt) {
  Constituents found;
  if (carbon_wt <= ferrite_carbon_wt) {
    found.proeutectoid_ferrite = 1;
  } else if (carbon_wt <= eutectoid_carbon_wt) {
    found.pearlite = lever(carbon_wt, ferrite_carbon_wt, eutectoid_carbon_wt);
    found.proeutectoid_ferrite = 1 - found.pearlite;
  } else {
    found.proeutectoid_cementite = lever(carbon_wt, eutectoid_carbon_wt, cementite_carbon_wt);
    found.pearlite = 1 - found.proeutectoid_cementite;
  }
  return found;
}

IronCarbonPhases below_eutectoid(double carbon_wt) {
  IronCarbonPhases phases = all_ferrite(carbon_wt);
  if (carbon_wt > ferrite_carbon_wt) {
    phases.cementite = lever(carbon_wt, ferrite_carbon_wt, cementite_carbon_wt);
    phases.ferrite = 1 - phases.cementite;
    phases.carbon_in_ferrite_wt = ferrite_carbon_wt;
    phases.carbon_in_cementite_wt = cementite_carbon_wt;
  }
  phases.constituents = constituents_of(carbon_wt);
  return phases;
}

IronCarbonPhases above_eutectoid(double carbon_wt, double c) {
  IronCarbonPhases phases;
  if (c < pure_iron_change_c && carbon_wt <= ferrite_limit_wt(c)) return all_ferrite(carbon_wt);
  if (c < pure_iron_change_c && carbon_wt < carbon_on_a3_wt(c)) {
    phases.carbon_in_ferrite_wt = ferrite_limit_wt(c);
    phases.carbon_in_austenite_wt = carbon_on_a3_wt(c);
    phases.austenite =
        lever(carbon_wt, *phases.carbon_in_ferrite_wt, *phases.carbon_in_austenite_wt);
    phases.ferrite = 1 - phases.austenite;
    return phases;
  }
  phases.carbon_in_austenite_wt = std::min(carbon_wt, carbon_on_acm_wt(c));
  if (carbon_wt > carbon_on_acm_wt(c)) {
    phases.carbon_in_cementite_wt = cementite_carbon_wt;
    phases.cementite = lever(carbon_wt, *phases.carbon_in_austenite_wt, cementite_carbon_wt);
  }
  phases.austenite = 1 - phases.cementite;
  return phases;
}

}  // namespace

Outcome<IronCarbonPhases> iron_carbon_phases(double carbon_wt, Temperature at) {
  Gather form;
  if (!(carbon_wt >= 0 && carbon_wt <= austenite_most_carbon_wt)) {
    form.add({"carbon_wt", "The carbon must lie between 0 and 2.14 %.",
              "Above 2.14 % the alloy is cast iron; this diagram stops there."});
  }
  if (at > Temperature::celsius(1147)) {
    form.add({"temperature_c", "Above 1147 C part of the steel may melt; this diagram stops there.",
              "Give a temperature up to 1147 C."});
  }
  if (form.refused()) return form.problems();
  if (at <= Temperature::celsius(727)) return below_eutectoid(carbon_wt);
  return above_eutectoid(carbon_wt, at.in_celsius());
}

std::optional<double> cementite_dissolved_c(double carbon_wt) {
  if (carbon_wt <= eutectoid_carbon_wt || carbon_wt > austenite_most_carbon_wt) return std::nullopt;
  return eutectoid_c + acm_span_c * (carbon_wt - eutectoid_carbon_wt) / acm_span_wt;
}

std::optional<double> ferrite_dissolved_c(double carbon_wt) {
  if (carbon_wt < 0 || carbon_wt >= eutectoid_carbon_wt) return std::nullopt;
  return pure_iron_change_c - a3_span_c * carbon_wt / eutectoid_carbon_wt;
}

double begins_to_melt_c(double carbon_wt) {
  constexpr double peritectic_c = 1493;
  constexpr double peritectic_austenite_wt = 0.17;
  const double carbon = std::clamp(carbon_wt, peritectic_austenite_wt, austenite_most_carbon_wt);
  return peritectic_c - (peritectic_c - eutectic_c) * (carbon - peritectic_austenite_wt) /
                            (austenite_most_carbon_wt - peritectic_austenite_wt);
}

}  // namespace tangmark::steel
