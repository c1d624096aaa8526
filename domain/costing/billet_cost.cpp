// SPDX-License-Identifier: MIT
#include "domain/costing/billet_cost.h"

namespace tangmark::costing {
namespace {

Problem other_currency(const std::string& field) {
  return {field, "The costs of a billet must all be in one currency.",
          "Give them in the currency of the shop."};
}

}  // namespace

Outcome<BilletCost> billet_cost(const BilletMaking& making) {
  if (making.parts.empty())
    return Problem{"parts", "A billet is made from at least one piece.",
                   "Name the pieces that went into the stack."};
  const Currency currency = making.parts.front().cost.currency();
  BilletCost billet{Mass{}, Mass{}, making.finished, Money(0, currency)};
  for (const BilletPart& part : making.parts) {
    if (part.cost.currency() != currency) return other_currency(part.text);
    billet.in = billet.in + part.mass;
    billet.cost += part.cost;
  }
  for (const Money& work : making.work) {
    if (work.currency() != currency) return other_currency("work");
    billet.cost += work;
  }
  for (const Mass& crop : making.crops_kept) billet.usable = billet.usable + crop;
  if (making.finished <= Mass{})
    return Problem{"finished", "The finished billet needs a mass above zero.", "Weigh the billet."};
  if (billet.usable > billet.in)
    return Problem{"finished", "More mass comes out of the billet (" +
                                   to_text(billet.usable, MassUnit::gram) + ") than went in (" +
                                   to_text(billet.in, MassUnit::gram) + ").",
                   "Check the masses of the stack and of the billet."};
  billet.lost = billet.in - billet.usable;
  return billet;
}

Outcome<Money> cost_of_piece(const BilletCost& billet, Mass piece) {
  if (piece < Mass{} || piece > billet.usable)
    return Problem{"mass", "The piece is heavier than what the billet has.",
                   "Check the mass of the piece."};
  return scaled_half_even(billet.cost, piece.micrograms(), billet.usable.micrograms());
}

}  // namespace tangmark::costing
