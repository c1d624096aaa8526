// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "domain/steel/temper_hardness.h"

namespace tangmark::steel {

/// A blade's measured hardness beside what the tables let one expect.
struct ExpectedAndMeasured {
  ExpectedHardness expected;
  RockwellC measured;  ///< the mean of its readings after the last temper
};

/// How a shop's blades of one grade, from one kiln, come out against the published tables.
struct HardnessBias {
  std::size_t blades = 0;
  double mean_points = 0;        ///< measured less the middle of the band; above nought: harder
  std::size_t outside_band = 0;  ///< blades whose reading lies outside the band
  /// The spread of the single blades about the mean, one standard deviation; none below 3 blades.
  std::optional<double> spread_points;
};

/// None without blades. The caller picks the blades of one grade and one kiln. **Source**:
/// arithmetic.
std::optional<HardnessBias> hardness_bias(const std::vector<ExpectedAndMeasured>& blades);

}  // namespace tangmark::steel
