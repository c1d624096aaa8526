// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/measure/money.h"
#include "domain/measure/outcome.h"
#include "domain/measure/share.h"

namespace tangmark::costing {

/// One operation of a route as the loss sees it: what it costs each time it is done, and the share
/// of blades that survive it.
struct StepAtRisk {
  Money cost;                       ///< for one blade going through this operation once
  Share survival = Share::whole();  ///< above 0 and up to 1
  friend bool operator==(const StepAtRisk&, const StepAtRisk&) = default;
};

/// What one good blade costs when some are lost on the way.
struct GoodBlade {
  Money steps;  ///< the sum of the steps, as if nothing were ever lost
  Money loss;   ///< per_good - steps: the loss line of a quote
  Money per_good;
  double started_per_good = 1;  ///< blades to start for one good one: 1 / product of survivals
  friend bool operator==(const GoodBlade&, const GoodBlade&) = default;
};

/// Cost per good blade = sum_i c_i * prod_{k<i} q_k / prod_all q_k, computed exactly and rounded
/// half to even once, at the end. A lost blade is worth nothing and is begun again from the first
/// operation.
/// Source: process cost with yield: units started = good units / yield, every operation paid for
/// the units that reach it (common cost accounting practice for normal spoilage). Refuses an empty
/// list, mixed currencies, negative costs and a survival outside (0, 1].
Outcome<GoodBlade> cost_per_good(const std::vector<StepAtRisk>& steps);

}  // namespace tangmark::costing
