// SPDX-License-Identifier: MIT
#include "domain/kiln/record_judgement.h"

#include <algorithm>

namespace tangmark::kiln {

double share_inside(double a, double b, double low, double high) {
  const double least = std::min(a, b);
  const double most = std::max(a, b);
  if (least >= low && most <= high) return 1;
  if (most < low || least > high) return 0;
  return (std::min(most, high) - std::max(least, low)) / (most - least);
}

RecordJudge::RecordJudge(std::optional<SoakWindow> window) : window_(window) {
  if (!window_) return;
  low_k_ = window_->low.in_kelvin();
  high_k_ = window_->high.in_kelvin();
}

void RecordJudge::take(const RecordRow& row) {
  const Reading& reading = row.readings.front();
  if (!reading) return;
  if (judged_.samples == 0) {
    judged_.start_ms = row.ms;
    judged_.peak = *reading;
    judged_.peak_ms = row.ms;
  } else {
    if (*reading > judged_.peak) {
      judged_.peak = *reading;
      judged_.peak_ms = row.ms;
    }
    join(row.ms, *reading);
  }
  ++judged_.samples;
  judged_.end_ms = row.ms;
  if (window_ && window_->holds(*reading)) {
    if (!judged_.soak_start_ms) judged_.soak_start_ms = row.ms;
    judged_.soak_end_ms = row.ms;
  }
  last_ms_ = row.ms;
  last_k_ = reading->in_kelvin();
  ramp_.add(row.ms, last_k_);
  if (row.readings.size() > 1) compare_sensors(row, *reading);
}

void RecordJudge::join(std::int64_t ms, Temperature reading) {
  const double kelvin = reading.in_kelvin();
  const auto length_ms = static_cast<double>(ms - last_ms_);
  if (window_) inside_ms_ += length_ms * share_inside(last_k_, kelvin, low_k_, high_k_);
  heat_.add(last_k_, kelvin, length_ms / 1000);
  intervals_.add(last_ms_, ms);
}

void RecordJudge::compare_sensors(const RecordRow& row, Temperature judged) {
  const std::size_t n = row.readings.size();
  if (judged_.sensors.empty()) {
    judged_.sensors.resize(n);
    above_sum_c_.resize(n);
  }
  const bool counts = !window_ || window_->holds(judged);
  Temperature lowest = judged;
  Temperature highest = judged;
  for (std::size_t i = 0; i < n; ++i) {
    const Reading& reading = row.readings[i];
    if (!reading) continue;
    SensorComparison& sensor = judged_.sensors[i];
    if (sensor.peak < *reading) sensor.peak = *reading;
    if (!counts) continue;
    ++sensor.samples;
    above_sum_c_[i] += (*reading - judged).kelvins();
    lowest = std::min(lowest, *reading);
    highest = std::max(highest, *reading);
  }
  judged_.widest_spread_c = std::max(judged_.widest_spread_c, (highest - lowest).kelvins());
}

Outcome<RecordJudgement> RecordJudge::finish() {
  if (judged_.samples == 0) {
    return Problem{"record", "The judged sensor never read a temperature.",
                   "Choose another sensor, or check its wire."};
  }
  if (window_) {
    judged_.in_window_min = inside_ms_ / 60'000;
    judged_.overshoot_c = std::max(0.0, (judged_.peak - window_->high).kelvins());
  }
  judged_.max_ramp_c_per_h = ramp_.steepest_rise();
  judged_.max_cooling_c_per_h = ramp_.steepest_fall();
  judged_.median_interval_s = intervals_.median_ms() / 1000;
  judged_.gaps = intervals_.gaps();
  judged_.temper_at = window_ ? window_->high : judged_.peak;
  judged_.temper_minutes = heat_.minutes_at(judged_.temper_at.in_kelvin());
  if (!heat_.empty()) judged_.temper_parameter_k = heat_.parameter();
  if (judged_.sensors.empty()) judged_.sensors.push_back({judged_.samples, 0, judged_.peak});
  for (std::size_t i = 0; i < above_sum_c_.size(); ++i) {
    SensorComparison& sensor = judged_.sensors[i];
    if (sensor.samples > 0) {
      sensor.mean_above_judged_c = above_sum_c_[i] / static_cast<double>(sensor.samples);
    }
  }
  return std::move(judged_);
}

Outcome<RecordJudgement> judge(const KilnRecord& record, std::optional<SoakWindow> window) {
  RecordJudge judge(window);
  replay(record, judge);
  return judge.finish();
}

}  // namespace tangmark::kiln
