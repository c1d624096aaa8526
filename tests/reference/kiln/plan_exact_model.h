// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>

#include "domain/kiln/plan_case.h"

namespace tangmark::kiln {

/// What a general-purpose exact solver says of a small case: glpsol of GLPK 5.0 (package
/// glpk-utils), branch and bound on a time-indexed model that shares no line with the planner.
///
/// One binary variable stands for each kiln, set of operations in their order, temperature, start,
/// soak and rest; one flow for each idling of a kiln from where one firing leaves it to where the
/// next begins, with the heating in between tried minute by minute. Rows: every operation once,
/// each kiln and the hands and each circuit taken once a minute, the gaps of each blade, and each
/// tank at each minute. Energy is separable without rounding only at 60 cents a kilowatt hour:
/// cases have that.
///
/// Valid: at most two blades in a firing, no locked firings, no load effect.
struct Settled {
  bool proven = false;                       ///< false: not settled in the seconds given
  std::optional<std::int64_t> optimum_mc{};  ///< empty though proven: there is no plan
};

bool have_exact_solver();
Settled settle_exactly(const PlanCase& a_case, int seconds);

}  // namespace tangmark::kiln
