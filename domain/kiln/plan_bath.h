// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_check.h"

namespace tangmark::kiln {

/// How the heat of a row of quenches gathers in a tank.
///
/// Assumes: each blade gives its heat to the tank at once, at the end of its own quench, and warms
/// it by the figure that stands with its operation; a warm tank falls back towards rest
/// exponentially, with one time constant (Newton's law of cooling); it is stirred, so that one
/// temperature holds for all of it. Common practice, no source. What is judged is the tank just
/// after each quench: the hottest it gets.

/// A blade that comes out of a quench.
struct BathQuench {
  int at_min = 0;
  int warms_mk = 0;
};

/// A quench after which the tank is too hot.
struct BathExcess {
  std::size_t quench = 0;  ///< its place in the row
  double celsius = 0;      ///< of the tank just after it
};

/// The first quench of a row that takes the tank above its limit. `row` by rising minutes.
std::optional<BathExcess> first_excess(const PlanBath& bath, const std::vector<BathQuench>& row);

/// R16 of plan_check.h: the quenches of a plan, firing by firing as they were timed.
std::vector<PlanViolation> judge_baths(const PlanCase& a_case, const FiringPlan& plan,
                                       const std::vector<TimedFiring>& firings);

}  // namespace tangmark::kiln
