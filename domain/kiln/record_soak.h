// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "domain/kiln/record_judgement.h"

namespace tangmark::kiln {

/// What one blade saw between its own time in and its time out.
struct BladeSoak {
  double in_kiln_min = 0;            ///< between in and out
  double recorded_min = 0;           ///< of that, how much the record covers
  double in_window_min = 0;          ///< linear between samples
  std::optional<std::int64_t> reached_ms;  ///< when the record first was inside the window after
                                           ///< the blade went in
  std::optional<double> back_at_heat_min;  ///< from in until then
  Temperature lowest, highest;
  double mean_c = 0;
  std::optional<double> temper_parameter_k;  ///< c 20
  /// The record covers the blade from in to out.
  bool covered() const { return recorded_min >= in_kiln_min; }
};

/// The soak of one blade by the judged sensor, which measures the kiln: steel lags behind it. in
/// and out are on the record's clock (milliseconds since 1970 for a dated record); the record is
/// cut at them on its straight lines. Refuses an out that is not after in, and a blade of whose
/// time the record covers nothing.
Outcome<BladeSoak> blade_soak(const KilnRecord& record, const SoakWindow& window,
                              std::int64_t in_ms, std::int64_t out_ms);
/// The same by instants, for a dated record. Refuses an undated one.
Outcome<BladeSoak> blade_soak(const KilnRecord& record, const SoakWindow& window, Instant in,
                              Instant out);

/// A sudden fall while the kiln was hot: a door opened, a charge gone in. An estimate.
struct DoorOpening {
  std::int64_t at_ms = 0;
  double fall_c = 0;
};
/// Falls of at least 4 C within 60 s above 100 C that the kiln made good by half within 15 minutes;
/// the end of a firing is none. **Source**: common practice, no source (a door costs 5 to 17 C).
std::vector<DoorOpening> door_openings(const KilnRecord& record);

/// The record with one sensor set right by what a check thermocouple showed: every reading of that
/// sensor moved by the same difference. The shape names the sensor as corrected.
KilnRecord corrected(const KilnRecord& record, std::size_t sensor, TemperatureDifference by);

}  // namespace tangmark::kiln
