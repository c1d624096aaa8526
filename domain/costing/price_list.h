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

/// A price by formula: a base, so much for each millimetre of blade longer than the base covers
/// (and less for a shorter one), and extras from the list.
/// Source of the shape: makers publish "fixed + per millimetre + premium" (for example
/// 100 + 1 a millimetre + 100 for 255 mm is 455); common practice.
struct ListFormula {
  Money base;
  Money per_mm;
  Length covered{};  ///< blade length that the base price is for; nothing: every millimetre counts
  std::vector<ListedExtra> extras;
  friend bool operator==(const ListFormula&, const ListFormula&) = default;
};

/// The list price of a blade of this length, half to even; give it to price_for as a ListPrice.
/// Refuses mixed currencies, negative amounts, and a length of zero.
Outcome<Money> list_price(const ListFormula& formula, Length blade);

/// "255.00 + 20 mm x 1.00 + W2 40.00 + engraved name 60.00": how the price comes about.
std::string in_words(const ListFormula& formula, Length blade);

}  // namespace tangmark::costing
