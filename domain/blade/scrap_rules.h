// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>

#include "domain/blade/blade.h"
#include "domain/measure/caught.h"

namespace tangmark::blade {

/// Catch 27: a scrap with nobody to bear its cost. Stops until the maker chose the job or the shop.
Catch scrap_without_cost(std::int64_t blade, std::optional<CostGoesTo> cost_goes_to);

/// Catch 27: a scrap takes the blade out of the promise made for its item. A remark that names the
/// commission; nothing when another living blade serves the item, or no commission waits.
Catch scrap_leaves_promise(std::int64_t blade, std::optional<std::int64_t> commission,
                           bool other_blade_lives);

}  // namespace tangmark::blade
