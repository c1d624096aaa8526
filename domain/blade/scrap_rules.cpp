// SPDX-License-Identifier: MIT
#include "domain/blade/scrap_rules.h"

#include <fmt/format.h>

namespace tangmark::blade {

Catch scrap_without_cost(std::int64_t blade, std::optional<CostGoesTo> cost_goes_to) {
  if (cost_goes_to) return std::nullopt;
  return Caught{27, Weight::stop, "cost_to",
                fmt::format("Nobody said who bears what blade {} has cost so far.", blade),
                "Give cost_to: job or shop."};
}

Catch scrap_leaves_promise(std::int64_t blade, std::optional<std::int64_t> commission,
                           bool other_blade_lives) {
  if (!commission || other_blade_lives) return std::nullopt;
  return Caught{27, Weight::remark, "blade",
                fmt::format("Commission {} has no blade for this item now that {} is scrapped.",
                            *commission, blade),
                "Begin a new blade, look at the promise again and tell the buyer. The number is "
                "not given again."};
}

}  // namespace tangmark::blade
