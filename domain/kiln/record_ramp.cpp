// SPDX-License-Identifier: MIT
#include "domain/kiln/record_ramp.h"

#include <algorithm>
#include <cmath>

namespace tangmark::kiln {
namespace {

constexpr std::int64_t span_ms = 5 * 60 * 1000;
constexpr double spans_per_hour = 12;

template <class P>
double between(const P& a, const P& b, std::int64_t ms) {
  if (b.ms == a.ms) return b.kelvin;
  return std::lerp(a.kelvin, b.kelvin,
                   static_cast<double>(ms - a.ms) / static_cast<double>(b.ms - a.ms));
}

}  // namespace

void RecordRamp::add(std::int64_t ms, double kelvin) {
  const Point now{ms, kelvin};
  if (points_.empty()) {
    points_.push_back(now);
    return;
  }
  const Point before = points_.back();
  points_.push_back(now);
  // Each earlier sample whose 5 minutes end on the new line.
  while (points_[next_start_].ms + span_ms <= ms) {
    const Point& start = points_[next_start_];
    meet(between(before, now, start.ms + span_ms) - start.kelvin);
    ++next_start_;
  }
  if (next_start_ == 0) return;
  // The 5 minutes that end at the new sample begin on the line behind the last start.
  first_ = next_start_ - 1;
  meet(kelvin - between(points_[first_], points_[next_start_], ms - span_ms));
  constexpr std::size_t room = 4096;
  if (first_ >= room && first_ * 2 >= points_.size()) {
    points_.erase(points_.begin(), points_.begin() + static_cast<std::ptrdiff_t>(first_));
    next_start_ -= first_;
    first_ = 0;
  }
}

void RecordRamp::meet(double change_k) {
  rise_k_ = std::max(rise_k_, change_k);
  fall_k_ = std::max(fall_k_, -change_k);
}

std::optional<double> RecordRamp::steepest(double change_k) const {
  if (next_start_ == 0) return std::nullopt;
  return change_k * spans_per_hour;
}

}  // namespace tangmark::kiln
