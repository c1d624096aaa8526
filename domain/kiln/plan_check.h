// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "domain/kiln/plan_case.h"

namespace tangmark::kiln {

/// The rules of a firing plan, judged on their own, without the planner: a plan that comes out of
/// the planner is looked at by this before anybody sees it. Common practice, no source.
///
/// R1  kilns, blades, operations exist; start, soak, rest are not negative; only anneals rest.
/// R2  no more blades than slots, no blade twice, no blade longer than the kiln.
/// R3  the temperature is within the kiln's reach.
/// R4  one kind of work in a firing; its temperature suits every member and is the target of one.
/// R5  every member soaks within its limits (waiting for its quench counts as soaking, unless the
///     kiln is loaded at the same intervals: then the last is in before the first comes out).
/// R6  loading and unloading each lie within one attended window.
/// R7  attended work lies within one attended window from loading to the end.
/// R8  nothing ends after the horizon.
/// R9  every operation of every blade is done exactly once.
/// R10 no blade starts before its release.
/// R11 the gap since the blade's previous operation is neither too short nor too long.
/// R12 the kiln can be at temperature in time: heated after unloading, or cooled by itself.
/// R13 the maker has one pair of hands, also for what ran before the plan.
/// R14 of the kilns on one circuit only one is on.
/// R15 firings locked by the maker stand as they were.
/// R16 no quench takes its tank above the tank's limit (plan_bath.h).
struct PlanViolation {
  int rule = 0;          ///< 1 to 16
  std::string sentence;  ///< what is wrong, in words
  // Where it is wrong, as far as it can be told.
  std::optional<std::size_t> firing{}, other{};  ///< by their places in the plan
  std::string blade{};
  std::optional<std::pair<int, int>> span{};     ///< minutes in which it is wrong
};

/// A firing with the times that follow from it.
struct TimedFiring {
  std::size_t firing = 0;  ///< its place in the plan
  std::string kiln;
  int heating_min = 0;     ///< the kiln is switched on so long before the start
  int start_min = 0;
  int soak_from_min = 0;
  int soak_to_min = 0;
  int off_min = 0;         ///< the kiln is switched off
  int off_c = 0;
  int end_min = 0;         ///< the kiln is empty
  std::vector<int> member_end_min;
  std::vector<std::pair<int, int>> hands;  ///< the maker is at the kiln
};

struct PlanCheck {
  std::vector<PlanViolation> violations;
  std::vector<TimedFiring> firings;  ///< those whose times can be told, in the plan's order
  std::optional<PlanCost> cost;      ///< empty while an operation is missing
  bool feasible() const { return violations.empty(); }
};

/// Judges a plan. Blades named in `left_out` need not be in it (the planner said why); their cost
/// counts as nothing.
PlanCheck check_plan(const PlanCase& a_case, const FiringPlan& plan,
                     const std::set<std::string>& left_out = {});

}  // namespace tangmark::kiln
