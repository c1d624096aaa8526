// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>

#include "domain/kiln/plan_case.h"

namespace tangmark::kiln {

/// How a kiln heats and cools between two firings. Between firings it is never held: it coasts and
/// is switched on as late as possible.
/// Assumes: one time constant for natural cooling (Newton's law of cooling), a constant heating
/// rate whatever the load. Common practice, no source; the shop's kilns are fitted to it.

/// Tolerance of every comparison of temperatures, degrees C; the only one there is.
inline constexpr double plan_tolerance_c = 1e-6;

/// Where the previous firing left the kiln.
struct KilnLeft {
  int end_min = 0;  ///< emptied
  int off_min = 0;  ///< switched off
  int off_c = 0;    ///< at this temperature
};

/// a / b rounded up, b > 0, either sign of a.
constexpr std::int64_t divided_up(std::int64_t a, std::int64_t b) {
  return a >= 0 ? (a + b - 1) / b : -(-a / b);
}

/// Temperature of an unpowered kiln `minutes` after it was at `off_c`.
double coasting_c(int ambient_c, int off_c, int time_constant_min, int minutes);

/// Minutes of heating that have the kiln at `temp_c` at `start_min`; empty when it would still be
/// too hot or cannot be heated in time. A kiln with no previous firing starts from the room.
std::optional<int> heating_min(int ambient_c, const PlanKiln& kiln,
                               const std::optional<KilnLeft>& left, int start_min, int temp_c);

/// Power to hold `temp_c`, whole watts, rounded down.
std::int64_t holding_w(int ambient_c, const PlanKiln& kiln, int temp_c);

/// What so many blades in a firing draw beside holding, whole watt-minutes, rounded down.
std::int64_t load_watt_min(int ambient_c, const PlanKiln& kiln, int temp_c, std::int64_t blades);

/// Millicents for `watt_minutes`, rounded once per firing.
std::int64_t energy_mc(std::int64_t watt_minutes, std::int64_t cents_per_kwh);

}  // namespace tangmark::kiln
