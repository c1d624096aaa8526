// SPDX-License-Identifier: MIT
#include "domain/steel/carbon_diffusion.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "domain/steel/iron_carbon.h"

namespace tangmark::steel {
namespace {

constexpr double frequency_m2_s = 2.3e-5;
constexpr double activation_j_mol = 148'000;
constexpr double gas_constant_j_mol_k = 8.314462618;
constexpr double most_diffusivity_m2_s = 1e-6;  // no element moves in solid steel so fast

Problems faults_of(const CarbonProfile& profile) {
  Problems faults;
  const auto carbon = [&](const char* field, double wt) {
    if (wt >= 0 && wt <= austenite_most_carbon_wt) return;
    faults.push_back({field,
                      "The carbon must lie between 0 and 2.14 %, which is all that austenite "
                      "can hold.",
                      "Check the figure."});
  };
  carbon("surface_wt", profile.surface_wt);
  carbon("initial_wt", profile.initial_wt);
  if (!(profile.diffusivity_m2_s > 0 && profile.diffusivity_m2_s <= most_diffusivity_m2_s)) {
    faults.push_back({"diffusivity_m2_s", "The diffusivity must be above zero and below 1e-6 m2/s.",
                      "For austenite at 950 C it is about 1.1e-11 m2/s."});
  }
  if (!(profile.hours > 0)) {
    faults.push_back({"hours", "The time must be above zero.", "Give the hours at heat."});
  }
  return faults;
}

double twice_root_dt_mm(const CarbonProfile& profile) {
  return 2000 * std::sqrt(profile.diffusivity_m2_s * profile.hours * 3600);
}

// Bisection on erf: the argument whose error function is y, 0 < y < 1.
double inverse_erf(double y) {
  double low = 0;
  double high = 6;
  for (int i = 0; i < 100; ++i) {
    const double middle = (low + high) / 2;
    (std::erf(middle) < y ? low : high) = middle;
  }
  return (low + high) / 2;
}

}  // namespace

Outcome<double> carbon_diffusivity_m2_s(Temperature at) {
  if (at < Temperature::celsius(727) || at > Temperature::celsius(1493)) {
    return Problem{"temperature_c", "This diffusivity is for austenite, between 727 and 1493 C.",
                   "Give diffusivity_m2_s for another phase."};
  }
  return frequency_m2_s * std::exp(-activation_j_mol / (gas_constant_j_mol_k * at.in_kelvin()));
}

Outcome<double> carbon_at_depth_wt(const CarbonProfile& profile, double depth_mm) {
  Problems faults = faults_of(profile);
  if (!(depth_mm >= 0)) {
    faults.push_back({"depth_mm", "A depth below the surface cannot be negative.",
                      "Measure inward from the surface."});
  }
  if (!faults.empty()) return faults;
  const double z = depth_mm / twice_root_dt_mm(profile);
  return profile.surface_wt - (profile.surface_wt - profile.initial_wt) * std::erf(z);
}

Outcome<double> depth_of_carbon_mm(const CarbonProfile& profile, double carbon_wt) {
  Problems faults = faults_of(profile);
  if (!faults.empty()) return faults;
  const double gone = (profile.surface_wt - carbon_wt) / (profile.surface_wt - profile.initial_wt);
  if (!(gone > 0 && gone < 1)) {
    return Problem{"carbon_wt", "That carbon content is met at no depth between surface and core.",
                   "Give a figure between the surface's and the steel's."};
  }
  return inverse_erf(gone) * twice_root_dt_mm(profile);
}

double layer_difference_left(double layer_mm, double diffusivity_m2_s, double hours) {
  const double layer_m = layer_mm / 1000;
  const double rate =
      std::numbers::pi * std::numbers::pi * diffusivity_m2_s * hours * 3600 / (layer_m * layer_m);
  double left = 0;
  // Odd harmonics with alternating sign; for hardly any time the series needs many terms.
  for (int k = 0; k < 2000; ++k) {
    const double n = 2 * k + 1;
    const double term = 4 / (std::numbers::pi * n) * std::exp(-n * n * rate);
    left += k % 2 == 0 ? term : -term;
    if (term < 1e-9) break;
  }
  return std::clamp(left, 0.0, 1.0);
}

}  // namespace tangmark::steel
