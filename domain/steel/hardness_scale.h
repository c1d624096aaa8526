// SPDX-License-Identifier: MIT
#pragma once

#include <compare>

#include "domain/measure/outcome.h"

namespace tangmark::steel {

/// Rockwell C points. A converted figure is never a measured one; print "converted from HV".
struct RockwellC {
  double points = 0;
  friend auto operator<=>(RockwellC, RockwellC) = default;
};

/// Vickers hardness.
struct Vickers {
  double points = 0;
  friend auto operator<=>(Vickers, Vickers) = default;
};

/// Converts by every whole-HRC row from 20 to 68, linear only between neighbours.
/// **Source**: ASTM E140 Table 1 (non-austenitic steel). **Valid**: 20 to 68 HRC, 238 to 940 HV,
/// homogeneous steel; every conversion is approximate. **Outside**: refused.
Outcome<Vickers> to_vickers(RockwellC hardness);
Outcome<RockwellC> to_rockwell_c(Vickers hardness);

}  // namespace tangmark::steel
