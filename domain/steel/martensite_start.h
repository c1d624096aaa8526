// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/steel/composition.h"

namespace tangmark::steel {

/// Where martensite starts to form on quenching, by three formulas, in C. Use the carbon dissolved
/// at the hardening heat, not the total; 25 C either way at best.
struct MartensiteStart {
  double andrews_c = 0;
  double steven_haynes_c = 0;
  double andrews_product_c = 0;
  std::vector<std::string> outside_andrews;        ///< elements beyond its range
  std::vector<std::string> outside_steven_haynes;  ///< elements beyond its range
};

/// Linear: 539 - 423 C - 30.4 Mn - 17.7 Ni - 12.1 Cr - 7.5 Mo - 7.5 Si (the Si term is a later
/// addition). Product: 512 - 453 C - 16.9 Ni + 15 Cr - 9.5 Mo + 217 C^2 - 71.5 C Mn - 67.6 C Cr.
/// **Source**: Andrews, JISI 203 (1965) 721. **Valid**: C to 0.6, Mn to 4.9, Cr and Ni to 5, Mo to
/// 5.4 % (from memory).
/// Steven and Haynes: 561 - 474 C - 33 Mn - 17 Cr - 17 Ni - 21 Mo. **Source**: JISI 183 (1956) 349,
/// from memory. **Valid**: C 0.10-0.55, Mn 0.2-1.7, Cr to 3.5, Ni to 5, Mo to 1 %.
/// **Outside**: computed, the elements named. Refuses a composition without carbon.
Outcome<MartensiteStart> martensite_start(const Composition& composition);

/// The share of austenite that a quench to a temperature leaves, 0 to 1: exp(-0.011 (Ms - Tq)).
/// **Source**: Koistinen & Marburger, Acta Met. 7 (1959) 59, from memory. **Valid**: carbon steels,
/// no hold on the way; all of it at or above Ms.
double retained_austenite_share(double ms_c, double quench_c);

}  // namespace tangmark::steel
