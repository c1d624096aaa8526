// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/measure/temperature.h"
#include "domain/measure/when.h"

namespace tangmark::reports {

/// One point of a temperature curve, planned or recorded.
struct CurvePoint {
  Instant at{};
  Temperature temperature;
  friend bool operator==(const CurvePoint&, const CurvePoint&) = default;
};

/// The band a soak must stay in.
struct Window {
  Temperature low;
  Temperature high;
  friend bool operator==(const Window&, const Window&) = default;
};

/// A moment worth naming on the curve: "214 out".
struct CurveMark {
  Instant at{};
  std::string text;
  friend bool operator==(const CurveMark&, const CurveMark&) = default;
};

/// What a model says of a stretch of a record, drawn over it.
struct FittedStretch {
  std::string text;  ///< "fitted: heats by 862 °C/h, error 3.1 °C"
  std::vector<CurvePoint> points;
  friend bool operator==(const FittedStretch&, const FittedStretch&) = default;
};

/// A curve to be drawn. Points are in order of time; a record of a million points is thinned to
/// what a page can show, keeping the extremes.
struct Curve {
  std::string title;
  std::vector<CurvePoint> points;
  std::optional<Window> window;
  std::vector<CurveMark> marks;
  std::vector<FittedStretch> fitted{};
  friend bool operator==(const Curve&, const Curve&) = default;
};

}  // namespace tangmark::reports
