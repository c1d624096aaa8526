// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/stock/cutting_plan.h"
#include "domain/stock/cutting_shape.h"

namespace tangmark::stock {

/// A plan quickly: the sizes in falling order, each into the bar where it fits most tightly, or
/// where it costs least; the better of what the rules give. None when no rule places every size.
std::optional<Assignment> quick_plan(const CuttingShape& shape);

/// Makes a plan better by emptying a few bars at a time and cutting what was in them anew, as well
/// as is possible. Ends after `patience` tries in a row without gain, or when out of time. The
/// choice of bars is the same each time it is called.
Assignment improved_plan(const CuttingShape& shape, Assignment plan, int patience,
                         const OutOfTime& out_of_time);

}  // namespace tangmark::stock
