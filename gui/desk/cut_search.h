// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "domain/measure/outcome.h"
#include "domain/stock/cutting_plan.h"
#include "gui/desk/cut_drawing.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// A plan that was searched for longer, and the case it is of.
struct SearchedCuts {
  stock::CuttingCase of;
  stock::CuttingPlan plan;
};

/// Searches up to ten seconds, or until `stop`.
Outcome<SearchedCuts> searched_cuts(const Sight& sight, const std::string& lot,
                                    const std::function<bool()>& stop);

/// The best plan found in a moment, proven best or not. Refuses what cutting_of_lot refuses.
Outcome<stock::CuttingPlan> quick_cutting_plan(const Sight& sight, const std::string& lot);

/// None when nothing of the lot lies free or nothing is wanted of it. The search is cut short so
/// that the window never waits for it; whether the plan is proven best is said.
/// A plan that was searched for longer, when it is of this lot as it stands, is taken instead.
std::optional<CutProposal> cut_proposal(const Sight& sight, const std::string& lot,
                                        const std::optional<SearchedCuts>& searched);

}  // namespace tangmark::desk
