// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_search.h"

namespace tangmark::kiln {

/// Why a blade has no place, and the nearest change that would give it one. First the blade is looked
/// at by itself: length, temperatures, the hours of the shop. Then each rule is eased in turn, in an
/// empty shop and beside `plan`, until the blade goes in; the least easing that helps is the change.
/// Assumes: the planner's own way of putting one blade in; where that overlooks a place, the sentence
/// still names a change that was tried and helps.
Unplaced reason_unplaced(const PlanCase& a_case, const FiringPlan& plan, const std::string& blade,
                         const PlanWords& words = {});

}  // namespace tangmark::kiln
