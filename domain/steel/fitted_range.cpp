// SPDX-License-Identifier: MIT
#include "domain/steel/fitted_range.h"

namespace tangmark::steel {

std::vector<std::string> elements_outside(const Composition& composition,
                                          const std::vector<FittedRange>& ranges) {
  std::vector<std::string> outside;
  for (const FittedRange& range : ranges) {
    const double percent = composition.weight_percent(range.element);
    if (percent < range.least_percent || percent > range.most_percent) {
      outside.emplace_back(symbol(range.element));
    }
  }
  return outside;
}

Problem carbon_missing() {
  return {"composition", "The composition does not state carbon.", "Add it, for example C:0.95."};
}

}  // namespace tangmark::steel
