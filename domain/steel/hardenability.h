// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/steel/composition.h"

namespace tangmark::steel {

/// The grain size the tables are made for.
inline constexpr double usual_grain = 7;

/// One factor of the product that gives the ideal diameter.
struct HardenabilityFactor {
  Element element = Element::C;
  double factor = 1;
};

/// The ideal critical diameter: the round bar that hardens to half martensite at its centre in a
/// bath that takes its surface to the bath's temperature at once.
struct Hardenability {
  double di_in = 0;
  std::vector<HardenabilityFactor> factors;  ///< carbon's base diameter first
  bool in_range = false;                     ///< inside the scope of the method
  std::vector<std::string> out_of_range;     ///< symbols of elements, or "grain"
  double di_mm() const { return di_in * 25.4; }
};

/// Base diameter for carbon at grain No. 7, times a factor for Mn, Si, Ni, Cr, Mo, Cu and V;
/// sulphur and phosphorus ignored.
/// **Source**: ASTM A255 factors (our table a255_factors.csv says which from memory). Other grain
/// sizes scale the base diameter by (1.70 - 0.09 n) / (1.70 - 0.63), a formula of the handbooks,
/// from memory. **Valid**: the scope of A255-10/14 (C 0.10-0.70, Mn 0.50-1.65, Si 0.15-0.60, Ni
/// to 1.50, Cr to 1.35, Mo to 0.55, Cu to 0.35, V to 0.20), no boron, grain No. 7. Most knife
/// steels are outside by their carbon. **Outside**: computed with the last piece of each factor and
/// listed in out_of_range. Refuses no carbon and a grain size outside 1 to 12.
Outcome<Hardenability> hardenability(const Composition& composition, double grain = usual_grain);

}  // namespace tangmark::steel
