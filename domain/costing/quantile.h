// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

namespace tangmark::costing {

/// The quantile of a sample at `part` (0 to 1), linear between the two nearest of the sorted
/// figures at position (n - 1) x part.
/// Source: Hyndman and Fan, The American Statistician 50 (1996) 361, definition 7 (the default of R
/// and NumPy). The sample must not be empty; its order does not matter.
double quantile(std::vector<double> sample, double part);

}  // namespace tangmark::costing
