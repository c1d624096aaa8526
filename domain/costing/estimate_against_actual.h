// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/costing/build_up.h"

namespace tangmark::costing {

/// One line of a finished piece: what was quoted, what it came to, and why they differ.
struct LineCompared {
  LineKind kind = LineKind::material;
  std::string text;
  Quantity quoted_quantity{0, ""}, actual_quantity{0, ""};
  Money quoted, actual;
  Money by_quantity;  ///< part of the difference from using more or less, at the quoted price
  Money by_price;     ///< the rest: a dearer or cheaper unit
  friend bool operator==(const LineCompared&, const LineCompared&) = default;
};

struct Comparison {
  std::vector<LineCompared> lines;  ///< lines of the quote in their order, then unquoted ones
  Money quoted, actual;  ///< the sums; by_quantity + by_price = actual - quoted, per line
  std::optional<Money> quoted_per_hour, actual_per_hour;
  friend bool operator==(const Comparison&, const Comparison&) = default;
};

/// Lines are paired by kind and text; several of one name are added up first. A line on one side
/// only is compared with nothing. Loss and fee lines pair like the others: the quoted loss is an
/// allowance, the actual one is what scrapped blades of this piece cost.
/// Source of the split: price and quantity variance of standard costing (actual quantity - quoted
/// quantity) x quoted price, any cost accounting textbook.
/// Both sheets must be in one currency; refused otherwise.
Outcome<Comparison> compare(const CostSheet& quoted, const CostSheet& actual);

/// The lines that make the most of the difference, largest first, at most three.
std::vector<LineCompared> why_they_differ(const Comparison& comparison);

}  // namespace tangmark::costing
