// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <vector>

#include "sample_blades.h"

namespace tangmark::certificate::sample {

/// One piece of evidence that is taken away, or contradicted.
struct Without {
  const char* what;
  std::function<void(Dossier&)> take;
};

/// A claim, a blade whose record bears it, and each piece of evidence that it cannot do without.
struct BothWays {
  Claim claim;
  const char* name;
  Dossier proven;
  std::vector<Without> withouts;
};

/// The cases of all claims, by what they speak of.
std::vector<BothWays> both_ways();
std::vector<BothWays> both_ways_of_steel();
std::vector<BothWays> both_ways_of_construction();
std::vector<BothWays> both_ways_of_work();

}  // namespace tangmark::certificate::sample
