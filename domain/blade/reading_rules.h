// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "domain/blade/hardness.h"
#include "domain/measure/caught.h"
#include "domain/measure/outcome.h"

namespace tangmark::blade {

/// Catch 14: hardness would be printed and no reading was taken on this blade after its last heat.
/// A remark where a blade is finished; a certificate then says "not measured".
Catch no_reading_after_heat(std::int64_t blade, std::span<const KeptReading> readings,
                            std::optional<Instant> last_heat_at);

/// Catch 12, at a reading typed late: it was taken before the blade's last heat and is void at
/// once.
Catch reading_before_heat(std::int64_t blade, Instant taken_at,
                          std::optional<Instant> last_heat_at);

/// One figure of a tester, or the bracket of a file test.
struct HardnessFigure {
  std::int64_t tenths;
  std::optional<std::int64_t> tenths_to;
  friend bool operator==(const HardnessFigure&, const HardnessFigure&) = default;
};

/// Reads "61.5,61,61.5", or "60-62" for the bracket of a file set, in a scale. Ranges in which a
/// figure is believed: HRC 20 to 70, HRA 60 to 87, HV 80 to 1200, file as HRC.
/// Source: HRC and HRA as in ASTM E18 table 1 (working ranges, widened at the hard end); HV common
/// practice, no source.
Outcome<std::vector<HardnessFigure>> parse_hardness(std::string_view text, std::string_view scale,
                                                    std::string_view field);

/// "61.5 HRC", "60 to 62 HRC (files)".
std::string hardness_text(const HardnessReading& reading);

}  // namespace tangmark::blade
