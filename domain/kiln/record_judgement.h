// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "domain/kiln/record.h"
#include "domain/kiln/record_intervals.h"
#include "domain/kiln/record_ramp.h"
#include "domain/measure/temperature.h"
#include "domain/steel/temper_parameter.h"

namespace tangmark::kiln {

/// The temperatures that a soak is meant to lie in, both ends included.
struct SoakWindow {
  Temperature low;
  Temperature high;
  bool holds(Temperature t) const { return t >= low && t <= high; }
  friend bool operator==(const SoakWindow&, const SoakWindow&) = default;
};

/// One sensor against the judged one.
struct SensorComparison {
  std::int64_t samples = 0;          ///< rows in which both read, inside the window if there is one
  double mean_above_judged_c =
      0;  ///< how much higher it read, on the mean; drift when two sit together
  Temperature peak;
};

/// A record judged by its first sensor. Between samples the temperature is taken as a straight
/// line.
struct RecordJudgement {
  std::int64_t samples = 0;  ///< rows with a reading of the judged sensor
  std::int64_t start_ms = 0, end_ms = 0;
  Temperature peak;
  std::int64_t peak_ms = 0;
  // Of the soak; none without a window. Start and end are the first and the last sample inside.
  std::optional<std::int64_t> soak_start_ms, soak_end_ms;
  std::optional<double> in_window_min;  ///< all time inside, also between two samples outside
  std::optional<double> overshoot_c;    ///< of the peak above the window, else nought
  // Over any 5 minutes, the steepest; nought when it never rises (falls), none when it is shorter.
  std::optional<double> max_ramp_c_per_h;
  std::optional<double> max_cooling_c_per_h;
  double median_interval_s = 0;
  std::vector<RecordGap> gaps;  ///< over three times the median interval
  /// The heat of the whole curve as minutes at the window's upper end, or at the peak without one.
  /// **Source**: steel::TemperIntegral, c 20.
  double temper_minutes = 0;
  Temperature temper_at;
  std::optional<double> temper_parameter_k;  ///< the same as kelvin x (20 + log10 hours)
  std::vector<SensorComparison> sensors;     ///< in the order of the shape
  double widest_spread_c = 0;  ///< between sensors in one row, inside the window if there is one
};

/// Judges rows as they come, in memory that does not grow with the record (but for the gaps).
class RecordJudge final : public RecordSink {
 public:
  explicit RecordJudge(std::optional<SoakWindow> window);
  void take(const RecordRow& row) override;
  /// Refuses a record in which the judged sensor never read.
  Outcome<RecordJudgement> finish();

 private:
  void compare_sensors(const RecordRow& row, Temperature judged);
  void join(std::int64_t ms, Temperature reading);

  std::optional<SoakWindow> window_;
  double low_k_ = 0, high_k_ = 0;
  RecordJudgement judged_;
  double inside_ms_ = 0;
  std::vector<double> above_sum_c_;
  RecordIntervals intervals_;
  RecordRamp ramp_;
  steel::TemperIntegral heat_;
  std::int64_t last_ms_ = 0;
  double last_k_ = 0;
};

/// Judges a record that is held as a value.
Outcome<RecordJudgement> judge(const KilnRecord& record, std::optional<SoakWindow> window);

/// The part of a straight line from a to b that lies within low and high, 0 to 1.
double share_inside(double a, double b, double low, double high);

}  // namespace tangmark::kiln
