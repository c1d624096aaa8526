// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "domain/costing/build_up.h"
#include "domain/costing/cost_draft.h"

namespace tangmark::costing {

/// The drafts of all items, in order; the fixed part of a build-up.
using DraftedItems = std::vector<std::vector<CostDraft>>;

/// A change to try: one line's quantity by a factor, or every survival at one end of its band.
struct Trial {
  enum class What { nothing, line, survival_low, survival_high };
  What what = What::nothing;
  std::size_t line = 0;
  Share factor = Share::whole();
};

/// The build-up down to the cost before the payment fee.
struct Settled {
  std::vector<CostLine> lines;  ///< all but the fee
  Money cost;                   ///< their sum
  Money labour;                 ///< the hours lines among them
  Hours hours;
  PaidTime paid;
};

/// Works out every line. `Text::leave_out` saves the strings when only the figures are wanted.
enum class Text { write, leave_out };
Outcome<Settled> settle(const DraftedItems& drafts, const CostInputs& inputs, const Trial& trial,
                        Text text);

/// The same in the currency the quote is sold in: every line by itself, so that the printed lines
/// sum to the printed cost.
Settled in_currency_sold(Settled settled, const CostInputs& inputs);

/// The lines of one item alone; the trial counts lines from the first of the whole quote,
/// `first_line` being this item's. For trying changes without working the other items out again.
Outcome<Settled> settle_item(const DraftedItems& drafts, const CostInputs& inputs, std::size_t item,
                             std::size_t first_line, const Trial& trial);

/// The three lines that move the price most.
std::vector<Mover> movers_of(const DraftedItems& drafts, const CostInputs& inputs,
                             const Settled& base, const Price& price);

/// Survivals of one operation at the low and high end: the band on record, or a loss a tenth
/// larger or smaller.
std::pair<Share, Share> survival_ends(const PlannedOperation& op);

}  // namespace tangmark::costing
