// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_check.h"

namespace tangmark::kiln {

/// The times that follow from a firing and the operations of its members (in the same order): soak,
/// quench, slow cooling, unloading and each member's own end. Everything but the heating, which
/// hangs on the firing before it. Common practice, no source.
void set_times(const PlanKiln& kiln, const PlanFiring& firing,
               const std::vector<const PlanOperation*>& operations, TimedFiring& timed);

/// What a firing draws once it is at heat, watt-minutes: holding, controlled cooling at the mean of
/// its ends, and the blades' own heat.
std::int64_t watt_min_at_heat(int ambient_c, const PlanKiln& kiln, const PlanFiring& firing,
                              const TimedFiring& timed);

}  // namespace tangmark::kiln
