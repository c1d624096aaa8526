// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/temperature.h"
#include "domain/measure/when.h"
#include "domain/steel/grade_origin.h"

namespace tangmark::steel {

/// The published window of one heat-treat step of one grade. A single published figure is a window
/// of no width: the usual tolerance of such figures is about 14 C (25 F) either way.
struct HeatTreatWindow {
  std::string operation;  ///< "normalize", "anneal", "harden", "temper"
  Temperature low;
  Temperature high;
  std::optional<Duration> hold_least;
  std::optional<Duration> hold_most;
  std::string cooling;                                      ///< "oil to about 65 C"
  std::optional<TemperatureDifference> most_fall_per_hour;  ///< of a slow cool
  std::optional<Temperature> slow_until;                    ///< where the slow cool may end
  std::string note;
  std::string source;
  GradeOrigin origin = GradeOrigin::published;
  friend bool operator==(const HeatTreatWindow&, const HeatTreatWindow&) = default;
};

/// All published windows of a grade, by its main name.
std::vector<HeatTreatWindow> published_windows(std::string_view grade_name);

}  // namespace tangmark::steel
