// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace tangmark::kiln {

/// The steepest rise and fall over any 5 minutes of a curve of straight lines. The extremes lie
/// where either end of the 5 minutes is a sample, so only those are looked at. Holds the last 5
/// minutes.
class RecordRamp {
 public:
  void add(std::int64_t ms, double kelvin);
  /// C per hour; nought when it never rises (falls), none when the curve is shorter than 5 minutes.
  std::optional<double> steepest_rise() const { return steepest(rise_k_); }
  std::optional<double> steepest_fall() const { return steepest(fall_k_); }

 private:
  struct Point {
    std::int64_t ms;
    double kelvin;
  };
  void meet(double change_k);
  std::optional<double> steepest(double change_k) const;

  // From first_ on: the last point at or before 5 minutes ago, and later.
  std::vector<Point> points_;
  std::size_t first_ = 0;
  std::size_t next_start_ = 0;  // the first point that has not yet been a beginning
  double rise_k_ = 0, fall_k_ = 0;
};

}  // namespace tangmark::kiln
