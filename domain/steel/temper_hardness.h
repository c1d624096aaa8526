// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/steel/grade.h"
#include "domain/steel/hardness_scale.h"
#include "domain/steel/temper_parameter.h"

namespace tangmark::steel {

/// What a grade's tables let one expect: a band, never one figure.
struct ExpectedHardness {
  RockwellC low;
  RockwellC high;
  std::string band;  ///< how the band was made, for printing beside it
  std::vector<std::string> sources;
};

/// The hardness after tempers, linear in the temper parameter between the rows of each of the
/// grade's tables, the shop's own and the published ones. The band is one point wider than the
/// tables' spread, or 2 points either way of a single table, since published tables of one steel
/// differ by 1 to 4 points (common practice, no source). An estimate: the same quench as the
/// table's is taken for granted. **Valid** between the first and the last row. **Outside**, for a
/// grade without a table, and for no steps: refused.
Outcome<ExpectedHardness> expected_hardness(const Grade& grade,
                                            const std::vector<TemperStep>& steps);

/// The hardness off the quench, before any temper: what the tables print as quenched, with a band
/// as above. Refused for a grade none of whose tables prints it.
Outcome<ExpectedHardness> expected_as_quenched(const Grade& grade);

}  // namespace tangmark::steel
