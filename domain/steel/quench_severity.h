// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/length.h"
#include "domain/measure/outcome.h"

namespace tangmark::steel {

/// A bath as the handbooks class it: medium and agitation with the quench severity H in 1/in. The
/// words of agitation are not measured, so H is a range.
struct QuenchSeverity {
  std::string bath;       ///< "air", "oil", "water", "brine"
  std::string agitation;  ///< "none", "mild", "moderate", "good", "strong", "violent"
  double low_per_in = 0;
  double high_per_in = 0;
  std::string source;
  double middle_per_in() const { return (low_per_in + high_per_in) / 2; }
};

/// Grossmann's H for usual baths. **Source**: standard handbooks, from memory
/// (quench_severity.csv).
const std::vector<QuenchSeverity>& quench_severities();
/// Refuses a bath or an agitation that is not in the table, naming those that are.
Outcome<QuenchSeverity> quench_severity(std::string_view bath, std::string_view agitation);

/// The ideal diameter (in) that a round bar of diameter D needs to harden to half martensite at its
/// centre in a bath of severity H: D sqrt(tau(HD) / tau(inf)), tau the Fourier number at which the
/// centre has lost half its temperature difference; H D is the Biot number.
/// **Source**: theory of Grossmann, Asimow & Urban (1939) as Fourier's series for a cylinder;
/// within about 8 % of the published chart. Arguments above zero.
double ideal_diameter_needed_in(double round_in, double severity_per_in);
/// The same for a wide plate, by the plate's own series: the ideal diameter of the round bar whose
/// centre cools in the same time as the plate's middle. **Source**: as above.
double ideal_diameter_needed_for_plate_in(double plate_in, double severity_per_in);
/// The largest plate thickness (in) that an ideal diameter hardens through, half martensite.
double plate_hardened_through_in(double di_in, double severity_per_in);

/// Whether a section hardens through in a bath.
enum class ThroughHardening { through, doubtful, not_through };

/// Against an ideal diameter: through when it is at least 1.3 times what the plate needs at the low
/// H of the bath, not through when it is below what it needs at the high H, doubtful between. 1.3
/// stands for the gap between half martensite and a blade's nearly full martensite (common
/// practice, no source). For ranking, not a promise of hardness.
ThroughHardening through_hardening(double di_in, Length thickness, const QuenchSeverity& bath);

}  // namespace tangmark::steel
