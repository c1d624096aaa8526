// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "domain/blade/blade_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/share.h"
#include "domain/measure/when.h"

namespace tangmark::blade {

/// One hardness reading, or a file test that brackets it.
struct HardnessReading {
  BladeId blade;
  Instant at{}, entered_at{};
  std::string place{};                      ///< "edge, 40 mm from the heel"
  std::optional<Share> along{}, up{};       ///< where on the outline: heel to tip, edge to spine
  std::string scale{};                      ///< "HRC", "HV", "file"
  std::int64_t tenths = 0;                  ///< 61.5 HRC is 615
  std::optional<std::int64_t> tenths_to{};  ///< upper end of a file bracket
  std::optional<std::string> tester{};
  std::optional<std::int64_t> block_nominal_tenths{}, block_read_tenths{};  ///< test block that day
  bool on_coupon = false;
  std::optional<std::string> void_why{};  ///< re-hardened since, or misread
  friend bool operator==(const HardnessReading&, const HardnessReading&) = default;
};
using KeptReading = Kept<HardnessReading, ReadingId>;

}  // namespace tangmark::blade
