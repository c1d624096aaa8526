// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/steel/composition.h"

namespace tangmark::steel {

/// Where a steel changes on slow heating.
struct CriticalPoints {
  double ac1_c = 0;
  std::optional<double> ac3_c;       ///< none above 0.76 %C: there is no ferrite left to dissolve
  std::string no_ac3_reason;         ///< why there is none, else empty
  std::vector<std::string> outside;  ///< elements beyond the range the formulas were fitted in
};

/// Ac1 = 723 - 10.7 Mn - 16.9 Ni + 29.1 Si + 16.9 Cr + 6.38 W + 290 As;
/// Ac3 = 910 - 203 sqrt C - 15.2 Ni + 44.7 Si + 104 V + 31.5 Mo + 13.1 W (the short form; the long
/// form's Mn, Cr, Cu, P, Al, As and Ti terms are left out), weight per cent in, C out.
/// **Source**: Andrews, JISI 203 (1965) 721; the coefficients read in secondary transcriptions.
/// **Valid**: low-alloy steel, C to 0.6, Mn and Cr and Ni to 5, Mo to 5.4 % (from memory); for D2
/// it reads about 140 C too high. **Outside**: computed, the elements named in `outside`; Ac3 only
/// to 0.76 %C. Refuses a composition without carbon.
Outcome<CriticalPoints> critical_points(const Composition& composition);

}  // namespace tangmark::steel
