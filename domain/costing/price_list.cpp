// SPDX-License-Identifier: MIT
#include "domain/costing/price_list.h"

namespace tangmark::costing {

Outcome<Money> list_price(const ListFormula& formula, Length blade) {
  if (blade <= Length{})
    return Problem{"length", "A price by length needs the length of the blade.",
                   "Give the blade's length."};
  const Currency currency = formula.base.currency();
  Money price = formula.base;
  std::vector<ListedExtra> parts = formula.extras;
  parts.push_back({"price per millimetre", formula.per_mm});
  for (const ListedExtra& part : parts) {
    if (part.price.currency() != currency)
      return Problem{part.text, "This price is in another currency than the base price.",
                     "Give the list in one currency."};
    if (part.price.minor() < 0)
      return Problem{part.text, "A price on the list cannot be below zero.", "Check the list."};
  }
  for (const ListedExtra& extra : formula.extras) price += extra.price;
  return price +
         scaled_half_even(formula.per_mm, (blade - formula.covered).nanometres(), 1'000'000);
}

std::string in_words(const ListFormula& formula, Length blade) {
  std::string text = amount_text(formula.base);
  const Length counted = blade - formula.covered;
  if (!formula.per_mm.is_zero() && counted != Length{}) {
    const Length size = counted < Length{} ? formula.covered - blade : counted;
    text += (counted < Length{} ? " \xE2\x88\x92 " : " + ") +
            to_text(size, LengthUnit::millimetre) + " x " + amount_text(formula.per_mm);
  }
  for (const ListedExtra& extra : formula.extras)
    text += " + " + extra.text + " " + amount_text(extra.price);
  return text;
}

}  // namespace tangmark::costing
