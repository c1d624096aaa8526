// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/length.h"
#include "domain/measure/money.h"
#include "domain/measure/outcome.h"

namespace tangmark::costing {

/// Something added to the formula: a steel, a handle, a sheath.
struct ListedExtra {
  std::string text;
  Money price;
  friend bool operator==(const ListedExtra&, const ListedExtra&) = default;
};

/// A price by formula: a base, so much for each millimetre of blade, and extras from the list.
/// Source of the shape: makers publish "fixed + per millimetre + premium" (for example
/// 100 + 1 a millimetre + 100 for 255 mm is 455); common practice.
struct ListFormula {
  Money base;
  Money per_mm;
  std::vector<ListedExtra> extras;
  friend bool operator==(const ListFormula&, const ListFormula&) = default;
};

/// The list price of a blade of this length, half to even; give it to price_for as a ListPrice.
/// Refuses mixed currencies, negative amounts, and a length of zero.
Outcome<Money> list_price(const ListFormula& formula, Length blade);

}  // namespace tangmark::costing
