// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/costing/cost_inputs.h"

namespace tangmark::costing {

/// A cost line of one piece before losses, overhead and fees are known.
struct CostDraft {
  LineKind kind = LineKind::material;
  std::string text;
  Quantity quantity;
  Money each;
  Money amount;  ///< for one piece, half to even; for hours, computed from the time when settled
  Duration hands_on{}, attended{}, unattended{};
  std::size_t operation = 0;
  LineOrigin origin;
  std::optional<Swing> swing;
  bool by_hand = false;

  /// Hours that take no paid time have no line, unless the maker set them so.
  bool has_line() const {
    return kind != LineKind::hours || by_hand || hands_on + attended != Duration{};
  }
};

/// The drafts of one item in the order they are shown: ingredients, then hours by operation.
/// Refuses, naming the ingredient or operation at fault: what its own model refuses, other
/// currencies, negative figures, an operation that does not exist, a survival outside (0, 1].
Outcome<std::vector<CostDraft>> drafts_of(const CostedItem& item, const CostInputs& inputs);

}  // namespace tangmark::costing
