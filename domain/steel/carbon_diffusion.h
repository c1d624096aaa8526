// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"

namespace tangmark::steel {

/// Diffusivity of carbon in austenite, m2/s: D0 exp(-Q / R T) with D0 = 2.3e-5 m2/s, Q = 148
/// kJ/mol.
/// **Source**: Callister's table (another published set: 2.0e-5 m2/s, 142 kJ/mol). **Valid**:
/// austenite of plain steel; alloy and carbon content move it. **Outside** 727 to 1493 C: refused,
/// since there is no austenite of plain steel.
Outcome<double> carbon_diffusivity_m2_s(Temperature at);

/// A surface held at one carbon content over steel that began with another: carburizing when the
/// surface is richer, decarburizing when it is poorer.
struct CarbonProfile {
  double surface_wt = 0;
  double initial_wt = 0;
  double diffusivity_m2_s = 0;
  double hours = 0;
};

/// The carbon at a depth: Cs - (Cs - C0) erf(x / (2 sqrt(D t))). **Source**: Fick's second law for
/// a half-infinite body with a fixed surface, as in any text. **Valid**: depth well inside a piece
/// thicker than 4 sqrt(D t). Refuses a negative depth, carbon outside 0 to 2.14 %, a time or a
/// diffusivity that is not above zero.
Outcome<double> carbon_at_depth_wt(const CarbonProfile& profile, double depth_mm);

/// The depth in mm at which a carbon content is met. Refuses one that does not lie strictly between
/// surface and start. **Source**: as carbon_at_depth_wt.
Outcome<double> depth_of_carbon_mm(const CarbonProfile& profile, double carbon_wt);

/// How much of the first difference between the layers of a billet is left, 0 to 1, for two kinds
/// of layer of equal thickness: the square wave's Fourier series, at the middle of a layer.
/// **Source**: Fick's second law for a periodic stack (Crank, The Mathematics of Diffusion).
/// **Valid**: carbon alone, both layers austenite; chromium, nickel and manganese stay where they
/// are, and carbon ends where its activity is even, not its content.
double layer_difference_left(double layer_mm, double diffusivity_m2_s, double hours);

}  // namespace tangmark::steel
