// SPDX-License-Identifier: MIT
#pragma once

#include "db/store/quote_inputs.h"
#include "gui/desk/quote_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// A cost sheet as the quote desk shows it: rows in groups with their sums, the survivals behind
/// the loss, the bar, the answers to the price, and the lines that move it most.
QuoteLive live_of(const Sight& sight, const costing::CostInputs& costs,
                  const costing::CostSheet& sheet, const std::vector<costing::LineChange>& changes);

}  // namespace tangmark::desk
