// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "domain/blade/blade.h"
#include "domain/blade/hardness.h"
#include "domain/blade/state.h"
#include "domain/measure/caught.h"
#include "domain/measure/temperature.h"
#include "domain/stock/bath.h"

namespace tangmark::blade {

/// Catch 6: hardening while steps that the route wants before it are open: normalizing, annealing,
/// thermal cycles, clay; or drilling and marking, which cannot be done in hard steel wherever they
/// stand on the route. Steps before an earlier hardening count as well. Asks for each.
Catches harden_too_early(std::int64_t blade, std::span<const KeptRouteStep> route);

/// Catch 12: a blade that is hardened again, or made soft again, still carries its old tempers and
/// readings. `after` is its state with the new entry. A remark that says what is taken back;
/// `steps_to_do_again` and `readings_to_void` say which.
Catch hardened_again(const BladeState& before, const BladeState& after,
                     std::span<const KeptReading> readings);
/// Tempers, snap tempers and sub-zero steps that were done before the new heat and must be done
/// anew; of a blade that was made soft also its hardening.
std::vector<RouteStepId> steps_to_do_again(std::span<const KeptRouteStep> route,
                                           const BladeState& after, Instant heated_at);
/// Readings that say nothing about the blade any more once it was heated again at `heated_at`.
std::vector<ReadingId> readings_to_void(std::span<const KeptReading> readings, Instant heated_at);

/// Catch 5: a blade longer than the tank is deep. Asks, since a long trough takes one lying; an
/// edge quench lies in any case. A bath without a depth gives nothing.
Catch longer_than_bath(const Blade& blade, const stock::Bath& bath, bool edge_only,
                       LengthUnit unit);

/// Catch 22: a quench in a bath outside the band the maker gave it. Asks. A bath without a band or
/// a quench without a measured bath gives nothing.
Catch bath_out_of_band(const stock::Bath& bath, std::optional<Temperature> measured,
                       TemperatureUnit unit);

/// Catch 22: the check of a bath is overdue by the maker's own rule. A remark. A bath that has a
/// rule and was never checked counts from its filling.
Catch bath_check_overdue(const stock::Bath& bath, Instant now);

}  // namespace tangmark::blade
