// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "domain/kiln/record_shape.h"

namespace tangmark::kiln {

/// What the head of a column says it holds.
enum class HeadRole { unknown, time, sensor, other };

struct Head {
  HeadRole role = HeadRole::unknown;
  bool elapsed = false;  ///< says that its time is counted from the start
  bool minutes_and_seconds = false;  ///< "mm:ss": a time of two figures is not hours and minutes
  std::optional<ElapsedUnit> elapsed_unit;
  std::optional<TemperatureUnit> unit;
};

/// Reads a column head such as "Elapsed (min)", "Temp [F]", "TC1 °C", "Set point", "Output %". Set
/// points, outputs, steps and the like are `other`: they are not what the steel saw.
Head read_head(std::string_view head);

}  // namespace tangmark::kiln
