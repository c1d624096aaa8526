// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "domain/costing/cost_inputs.h"

namespace tangmark::costing {

struct Hours {
  Duration hands_on{}, attended{}, unattended{};
  friend bool operator==(const Hours&, const Hours&) = default;
};

/// How far one line can move the price. The whole build-up is worked out again with the line's
/// quantity at its low and at its high end, losses, overhead and fees following; the loss line
/// moves by the survivals instead.
struct Mover {
  std::size_t line = 0;  ///< index into CostSheet::lines
  std::string text;
  /// The price by the rule before the step; with a fixed or listed price, the floor price. As it
  /// stands, and at the two ends.
  Money price_now, price_low, price_high;
  std::optional<Money> earned_low, earned_high;  ///< per hour at the sheet's own price
  bool assumed = false;  ///< no range on record: ten in a hundred either way was taken
  friend bool operator==(const Mover&, const Mover&) = default;
};

/// The shop's side of a quote. Lines sum to `price.cost` exactly.
struct CostSheet {
  std::vector<CostLine> lines;
  Price price;
  std::optional<Money> earned_per_hour;  ///< none when no hours are planned
  Money floor;                           ///< below it the maker earns less than the hourly rate
  Hours hours;                           ///< for all pieces, losses not counted
  std::vector<Mover> movers;             ///< the three that move the price most, the largest first
  friend bool operator==(const CostSheet&, const CostSheet&) = default;
};

/// The full build-up of a quote, in the currency it is sold in. Order of lines: for each item its
/// ingredients, hours by operation, overhead and loss; then packing, shipping and the payment fee.
/// Source of the loss: cost_per_good (loss.h). The rest is common practice, no source.
/// Refuses with every fault found, each naming its line.
Outcome<CostSheet> build_up(const CostInputs& inputs);

/// A line of the quote as the buyer sees it: no cost, margin or hours.
struct PriceLine {
  std::string text;
  std::int64_t pieces = 1;
  Money amount;
  friend bool operator==(const PriceLine&, const PriceLine&) = default;
};

/// One line for each item, each option and the shipping; they sum to price.shown. The items share
/// what is left after options and shipping by their cost, and the parts sum exactly. Tax stands
/// beneath them: price.tax and price.total. Shipping is charged at its cost (with its tax when the
/// prices hold tax) and is not shown apart when the price is too small to hold it.
std::vector<PriceLine> price_lines(const CostInputs& inputs, const CostSheet& sheet);

}  // namespace tangmark::costing
