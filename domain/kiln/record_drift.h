// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>

#include "domain/kiln/record.h"
#include "domain/kiln/record_judgement.h"

namespace tangmark::kiln {

/// How much a controller's sensor read above a check thermocouple in the same firing.
struct RecordDrift {
  std::size_t samples = 0;  ///< of the controller while the check thermocouple was in the window
  double mean_c = 0;        ///< above nought: the controller reads too high
  double least_c = 0, most_c = 0;
};

/// Fewer samples than this say nothing of a drift.
inline constexpr std::size_t fewest_drift_samples = 5;

/// Compares the judged sensors of two records on one clock (milliseconds since 1970): at each
/// sample of the controller, the check thermocouple's straight line. Only where that line lies in
/// the window, since on a ramp the two lag differently. None below fewest_drift_samples.
/// **Source**: comparison of two sensors that sit together, common practice, no source. The check
/// thermocouple is taken for right.
std::optional<RecordDrift> drift_of(const KilnRecord& controller, const KilnRecord& check,
                                    const SoakWindow& window);

}  // namespace tangmark::kiln
