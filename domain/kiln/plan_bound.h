// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <set>

#include "domain/kiln/plan_tables.h"

namespace tangmark::kiln {

/// A cost in millicents that no plan of these blades can beat: what is left of the rules when
/// blades do not get in each other's way.
/// - Lateness and time in work: each blade alone in the shop, through all its operations.
/// - Hands and holding: operations that could share a firing are taken as sharing the fullest one;
///   a group needs at least as many firings as it takes to reach every temperature range with the
///   slots there are (the greedy cover of intervals by points of limited capacity).
/// - Heating: one kiln at least goes from where it stands to the hottest work, and nothing else is
///   heated at all.
/// Honest rather than sharp: below the cost of the best plan, often by a quarter.
std::int64_t least_cost_mc(const PlanTables& tables, const std::set<int>& blades_left_out = {});

/// The earliest minute at which each blade can be through with its chain, alone in the shop.
/// Indexed by blade; `never` where it has no way at all.
std::vector<int> earliest_ends(const PlanTables& tables);

}  // namespace tangmark::kiln
