// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_search.h"

namespace tangmark::kiln {

/// Why a blade has no place, and the nearest change that would give it one. First the blade is
/// looked at by itself: length, temperatures, the hours of the shop. Then each rule is eased in
/// turn, in an empty shop and beside `plan`, until the blade goes in; the least easing that helps
/// is the change.
/// Assumes: the planner's own way of putting one blade in; where that overlooks a place, the
/// sentence still names a change that was tried and helps. Once `in_time` says no, nothing more is
/// tried, and the answer may be that time did not allow one.
Unplaced reason_unplaced(const PlanCase& a_case, const FiringPlan& plan, const std::string& blade,
                         const std::function<bool()>& in_time,
                         const PlanWords& words = {});

}  // namespace tangmark::kiln
