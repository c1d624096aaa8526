// SPDX-License-Identifier: MIT
#include "domain/kiln/record_soak.h"

#include <algorithm>
#include <cmath>

namespace tangmark::kiln {
namespace {

struct Point {
  std::int64_t ms;
  double kelvin;
};

std::vector<Point> points_of(const KilnRecord& record) {
  std::vector<Point> points;
  for (std::size_t i = 0; i < record.rows(); ++i) {
    if (const Reading& reading = record.readings.front()[i]) {
      points.push_back({record.ms[i], reading->in_kelvin()});
    }
  }
  return points;
}

double kelvin_at(const Point& a, const Point& b, std::int64_t ms) {
  if (a.ms == b.ms) return b.kelvin;
  return std::lerp(a.kelvin, b.kelvin,
                   static_cast<double>(ms - a.ms) / static_cast<double>(b.ms - a.ms));
}

// The curve between two times, its ends cut on the straight lines.
std::vector<Point> cut(const std::vector<Point>& points, std::int64_t in_ms, std::int64_t out_ms) {
  std::vector<Point> part;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Point& b = points[i];
    const Point& a = points[i == 0 ? 0 : i - 1];
    if (a.ms < in_ms && b.ms > in_ms) part.push_back({in_ms, kelvin_at(a, b, in_ms)});
    if (a.ms < out_ms && b.ms > out_ms) part.push_back({out_ms, kelvin_at(a, b, out_ms)});
    if (b.ms >= in_ms && b.ms <= out_ms) part.push_back(b);
  }
  return part;
}

double minutes(std::int64_t ms) { return static_cast<double>(ms) / 60'000; }

// When a straight line first is inside the window; none when it never is.
std::optional<std::int64_t> first_inside(const Point& a, const Point& b, double low, double high) {
  if (share_inside(a.kelvin, b.kelvin, low, high) == 0 && (b.kelvin < low || b.kelvin > high)) {
    return std::nullopt;
  }
  if (a.kelvin >= low && a.kelvin <= high) return a.ms;
  const double edge = a.kelvin < low ? low : high;
  const double share = (edge - a.kelvin) / (b.kelvin - a.kelvin);
  return a.ms + std::llround(share * static_cast<double>(b.ms - a.ms));
}

struct Recovery {
  std::size_t at;
  double lowest_k;
};

// Where the kiln made good half of a fall that was noticed at `fallen`; none when it did not in
// time.
std::optional<Recovery> recovered(const std::vector<Point>& points, std::size_t top,
                                  std::size_t fallen) {
  constexpr std::int64_t recovery_ms = 15 * 60'000;
  double lowest = points[fallen].kelvin;
  for (std::size_t i = fallen; i < points.size(); ++i) {
    if (points[i].ms - points[top].ms > recovery_ms) break;
    lowest = std::min(lowest, points[i].kelvin);
    const double half_way = (points[top].kelvin + lowest) / 2;
    if (i > fallen && points[i].kelvin >= half_way) return Recovery{i, lowest};
  }
  return std::nullopt;
}

BladeSoak sum_up(const std::vector<Point>& part, const SoakWindow& window, std::int64_t in_ms) {
  const double low = window.low.in_kelvin();
  const double high = window.high.in_kelvin();
  BladeSoak soak;
  steel::TemperIntegral heat;
  double least = part.front().kelvin;
  double most = least;
  double kelvin_minutes = 0;
  for (std::size_t i = 1; i < part.size(); ++i) {
    const Point& a = part[i - 1];
    const Point& b = part[i];
    const double length_min = minutes(b.ms - a.ms);
    soak.recorded_min += length_min;
    soak.in_window_min += length_min * share_inside(a.kelvin, b.kelvin, low, high);
    kelvin_minutes += length_min * (a.kelvin + b.kelvin) / 2;
    heat.add(a.kelvin, b.kelvin, length_min * 60);
    least = std::min(least, b.kelvin);
    most = std::max(most, b.kelvin);
    if (!soak.reached_ms) soak.reached_ms = first_inside(a, b, low, high);
  }
  soak.lowest = Temperature::nearest_celsius(least - 273.15);
  soak.highest = Temperature::nearest_celsius(most - 273.15);
  soak.mean_c = kelvin_minutes / soak.recorded_min - 273.15;
  if (soak.reached_ms) soak.back_at_heat_min = minutes(*soak.reached_ms - in_ms);
  if (!heat.empty()) soak.temper_parameter_k = heat.parameter();
  return soak;
}

}  // namespace

Outcome<BladeSoak> blade_soak(const KilnRecord& record, const SoakWindow& window,
                              std::int64_t in_ms, std::int64_t out_ms) {
  if (out_ms <= in_ms) {
    return Problem{"time_out", "The blade came out before it went in.", "Check both times."};
  }
  const auto part = cut(points_of(record), in_ms, out_ms);
  if (part.size() < 2 || part.front().ms == part.back().ms) {
    return Problem{"time_in", "The record covers nothing of this blade's time in the kiln.",
                   "Check the date and the clock of the logger."};
  }
  BladeSoak soak = sum_up(part, window, in_ms);
  soak.in_kiln_min = minutes(out_ms - in_ms);
  return soak;
}

Outcome<BladeSoak> blade_soak(const KilnRecord& record, const SoakWindow& window, Instant in,
                              Instant out) {
  const RecordClock clock = record.shape.clock;
  if (clock == RecordClock::elapsed || clock == RecordClock::time_of_day) {
    return Problem{"record", "The record has no dates, so a blade's times cannot be found in it.",
                   "Say when the record began."};
  }
  return blade_soak(record, window, in.time_since_epoch().count() * 1000,
                    out.time_since_epoch().count() * 1000);
}

std::vector<DoorOpening> door_openings(const KilnRecord& record) {
  constexpr double least_fall_k = 4;
  constexpr double hot_k = 373.15;
  constexpr std::int64_t fall_ms = 60'000;
  const auto points = points_of(record);
  std::vector<DoorOpening> openings;
  std::size_t from = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    while (points[i].ms - points[from].ms > fall_ms) ++from;
    // Where it began to fall: the last of the highest samples of this minute.
    std::size_t top = from;
    for (std::size_t k = from; k < i; ++k) {
      if (points[k].kelvin >= points[top].kelvin) top = k;
    }
    const double fall_k = points[top].kelvin - points[i].kelvin;
    if (points[top].kelvin < hot_k || fall_k < least_fall_k) continue;
    const auto recovery = recovered(points, top, i);
    if (!recovery) continue;
    openings.push_back({points[top].ms, points[top].kelvin - recovery->lowest_k});
    i = from = recovery->at;
  }
  return openings;
}

KilnRecord corrected(const KilnRecord& record, std::size_t sensor, TemperatureDifference by) {
  KilnRecord right = record;
  for (Reading& reading : right.readings[sensor]) {
    if (reading) reading = *reading + by;
  }
  right.shape.sensors[sensor].name += " (corrected)";
  return right;
}

}  // namespace tangmark::kiln
