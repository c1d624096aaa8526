// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "domain/blade/state.h"
#include "domain/measure/caught.h"
#include "domain/measure/temperature.h"

namespace tangmark::blade {

/// How long a quenched blade may wait for its temper, by the shop's own rule.
struct TemperClock {
  Duration remark;  ///< from here on it is said
  Duration limit;   ///< from here on it is asked about
};

/// The moment by which a quenched blade must be in a temper; nothing for a blade that is not
/// waiting or was given a snap temper or is being held warm. Water and brine quenched blades have
/// the shorter of the two times: they crack first. Source: common practice, no source.
std::optional<Instant> temper_due_at(const BladeState& state, const TemperClock& clock);

/// Catch 8: quenched, and no temper started by the limit. A remark, for lists of today and beside
/// anything logged on the blade; the hard state itself stands in `blocks`.
Catch temper_overdue(const BladeState& state, const TemperClock& clock, Instant now);

/// Catch 8, at the temper itself: it began later than the limit. A remark.
Catch temper_late(const BladeState& state, const TemperClock& clock, Instant begun_at);

/// Catch 8, at another operation on a blade that waits for its temper: asks. Straightening in the
/// soft window, sub-zero and looking at it are part of the quench.
Catch work_before_temper(const BladeState& state, std::string_view operation, Instant now);

/// Catch 10: a second temper before the blade had cooled to room. `cooled` is what the maker said;
/// without a word it is a stop, since nobody can know later.
Catch not_cooled_before(const BladeState& state, std::optional<bool> cooled);

/// A planned or logged set point of one blade of a batch.
struct SetPoint {
  std::int64_t blade;
  Temperature set;
};

/// Catch 11: the set points of blades in one temper batch differ by more than the shop allows.
/// Asks.
Catch set_points_differ(std::span<const SetPoint> batch, TemperatureDifference tolerance,
                        TemperatureUnit unit);

}  // namespace tangmark::blade
