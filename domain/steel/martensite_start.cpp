// SPDX-License-Identifier: MIT
#include "domain/steel/martensite_start.h"

#include <algorithm>
#include <cmath>

#include "domain/steel/fitted_range.h"

namespace tangmark::steel {

Outcome<MartensiteStart> martensite_start(const Composition& composition) {
  if (!composition.stated(Element::C)) return carbon_missing();
  const double c = composition.weight_percent(Element::C);
  const double mn = composition.weight_percent(Element::Mn);
  const double si = composition.weight_percent(Element::Si);
  const double ni = composition.weight_percent(Element::Ni);
  const double cr = composition.weight_percent(Element::Cr);
  const double mo = composition.weight_percent(Element::Mo);
  MartensiteStart ms;
  ms.andrews_c = 539 - 423 * c - 30.4 * mn - 17.7 * ni - 12.1 * cr - 7.5 * mo - 7.5 * si;
  ms.steven_haynes_c = 561 - 474 * c - 33 * mn - 17 * cr - 17 * ni - 21 * mo;
  ms.andrews_product_c = 512 - 453 * c - 16.9 * ni + 15 * cr - 9.5 * mo + 217 * c * c -
                         71.5 * c * mn - 67.6 * c * cr;
  ms.outside_andrews = elements_outside(composition, {{Element::C, 0, 0.6},
                                                      {Element::Mn, 0, 4.9},
                                                      {Element::Cr, 0, 5},
                                                      {Element::Ni, 0, 5},
                                                      {Element::Mo, 0, 5.4}});
  ms.outside_steven_haynes = elements_outside(composition, {{Element::C, 0.10, 0.55},
                                                            {Element::Mn, 0.2, 1.7},
                                                            {Element::Cr, 0, 3.5},
                                                            {Element::Ni, 0, 5},
                                                            {Element::Mo, 0, 1}});
  return ms;
}

double retained_austenite_share(double ms_c, double quench_c) {
  return std::exp(-0.011 * std::max(0.0, ms_c - quench_c));
}

}  // namespace tangmark::steel
