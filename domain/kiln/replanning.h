// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_search.h"

namespace tangmark::kiln {

/// Firings that are booked already, and what it costs to move or drop one of them: the maker has
/// arranged the week around them.
struct BookedPlan {
  std::vector<PlanFiring> firings;  ///< not those that are locked: the case holds these
  std::int64_t moved_mc = 0;        ///< for each booked firing that no longer stands
};

struct Replanned {
  PlanAnswer answer;            ///< its cost and bound are without the moves
  int moved = 0;                ///< booked firings that do not stand in the plan
  std::int64_t total_mc = 0;    ///< cost of the plan and of the moves
  std::int64_t bound_mc = 0;    ///< no plan of these blades has a lower total
};

/// Whether a booked firing stands in a plan: one in the same kiln, of the same kind and
/// temperature, at the same minute, with at least one of its blades for the same operation. Its
/// load may change.
bool stands(const PlanFiring& booked, const FiringPlan& plan);

/// What the case no longer allows about a booked firing, whatever else is planned; empty while it
/// may stand with one of its blades at least. Judged beside the locked firings alone, so that it
/// never blames a firing that only another movable one is in the way of.
std::vector<PlanViolation> why_it_cannot_stand(const PlanCase& a_case, const PlanFiring& booked);

/// Plans anew around what is booked, so that the cost of the plan and of the moved firings together
/// is little. Without a price for moves it is the same as plan_firings.
///
/// Assumes: first everything that can stand is held in place and only the rest is planned; then
/// firings are let go a few at a time, and all at once, and those that came off worse than their
/// price are put back. So with a high price no firing moves that could have stayed.
Replanned replan_firings(const PlanCase& a_case, const BookedPlan& booked,
                         const SearchLimits& limits, std::uint64_t seed);

}  // namespace tangmark::kiln
