// SPDX-License-Identifier: MIT
#include "domain/costing/quantile.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace tangmark::costing {

double quantile(std::vector<double> sample, double part) {
  assert(!sample.empty() && part >= 0 && part <= 1 && "a quantile of something, between 0 and 1");
  std::sort(sample.begin(), sample.end());
  const double at = static_cast<double>(sample.size() - 1) * part;
  const auto below = static_cast<std::size_t>(std::floor(at));
  const auto above = std::min(below + 1, sample.size() - 1);
  return sample[below] + (at - std::floor(at)) * (sample[above] - sample[below]);
}

}  // namespace tangmark::costing
