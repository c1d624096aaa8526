// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>

#include "domain/blade/state.h"
#include "domain/blade/tempering_rules.h"

namespace tangmark::blade {

/// What a blade wants next, and the sentence that says so.
struct NextStep {
  std::string operation;            ///< "temper", or "decide" for an open finding
  std::optional<RouteStepId> step;  ///< the step of the route that it is
  std::string sentence;             ///< "Temper 1 of 2 is due by 11:20."
};

/// The next sensible operation: a temper that a quenched blade waits for, then a finding to decide,
/// then the first open step of the route. Nothing when the route is done or the blade is scrapped.
std::optional<NextStep> next_step(const BladeState& state, std::span<const KeptRouteStep> route,
                                  const TemperClock& clock, const Zone& zone);

}  // namespace tangmark::blade
