// SPDX-License-Identifier: MIT
#include "domain/steel/critical_points.h"

#include <cmath>

#include "domain/steel/fitted_range.h"
#include "domain/steel/iron_carbon.h"

namespace tangmark::steel {

Outcome<CriticalPoints> critical_points(const Composition& composition) {
  if (!composition.stated(Element::C)) return carbon_missing();
  const auto wt = [&](Element element) { return composition.weight_percent(element); };
  CriticalPoints points;
  points.ac1_c = 723 - 10.7 * wt(Element::Mn) - 16.9 * wt(Element::Ni) + 29.1 * wt(Element::Si) +
                 16.9 * wt(Element::Cr) + 6.38 * wt(Element::W) + 290 * wt(Element::As);
  if (wt(Element::C) > eutectoid_carbon_wt) {
    points.no_ac3_reason =
        "above 0.76 %C the steel has no Ac3: cementite is the last to dissolve, not ferrite";
  } else {
    points.ac3_c = 910 - 203 * std::sqrt(wt(Element::C)) - 15.2 * wt(Element::Ni) +
                   44.7 * wt(Element::Si) + 104 * wt(Element::V) + 31.5 * wt(Element::Mo) +
                   13.1 * wt(Element::W);
  }
  points.outside = elements_outside(composition, {{Element::C, 0, 0.6},
                                                  {Element::Mn, 0, 5},
                                                  {Element::Cr, 0, 5},
                                                  {Element::Ni, 0, 5},
                                                  {Element::Mo, 0, 5.4}});
  return points;
}

}  // namespace tangmark::steel
