// SPDX-License-Identifier: MIT
#include "db/store/piece_costs.h"

#include <algorithm>

#include "db/store/billet_store.h"
#include "db/store/consumable_store.h"
#include "db/store/lot_store.h"
#include "db/store/piece_store.h"
#include "domain/costing/price.h"
#include "domain/stock/lot_mass.h"

namespace tangmark::db {
namespace {

using commission::ShopSettings;

// A billet is made of older things only; a damaged file that says otherwise must not run forever.
constexpr int deepest = 32;

std::optional<Money> cost_at(const ShopFile& shop, const stock::Piece& piece, Mass mass,
                             const ShopSettings& settings, int depth);

// Gas weighed, flux, cans: each use by its lot's price. One bought in another currency, or whose
// lot has no amount, is left out, as a blade's is.
void add_used_up(const ShopFile& shop, stock::BilletId billet, Currency currency,
                 std::vector<Money>& work) {
  for (const auto& use : uses_of_billet(shop, billet)) {
    const auto lot = load_lot(shop, use.lot);
    if (!lot || !lot->quantity || lot->quantity->millionths() <= 0) continue;
    if (lot->price.currency() != currency) continue;
    work.push_back(
        scaled_half_even(lot->price, use.quantity.millionths(), lot->quantity->millionths()));
  }
}

std::optional<costing::BilletCost> billet_at(const ShopFile& shop, stock::BilletId billet,
                                             const ShopSettings& settings, int depth) {
  if (depth > deepest) return std::nullopt;
  costing::BilletMaking making;
  for (const auto& part : parts_of_billet(shop, billet)) {
    const auto piece = load_piece(shop, part.piece);
    const auto cost = piece ? cost_at(shop, *piece, part.mass, settings, depth + 1) : std::nullopt;
    if (!cost) return std::nullopt;
    making.parts.push_back({piece->tag, part.mass, *cost});
  }
  Duration hands_on{};
  for (const auto& stage : stages_of_billet(shop, billet)) hands_on += stage.hands_on;
  const Money per_hour = settings.hourly_rate + settings.overhead_per_hour;
  making.work.push_back(costing::pay_for(per_hour, {hands_on, Duration{}, Share()}));
  add_used_up(shop, billet, settings.currency, making.work);
  making.finished = mass_of_billet(shop, billet);
  const auto cost = costing::billet_cost(making);
  if (!cost) return std::nullopt;
  return *cost;
}

std::optional<Money> cost_at(const ShopFile& shop, const stock::Piece& piece, Mass mass,
                             const ShopSettings& settings, int depth) {
  if (piece.billet) {
    const auto billet = billet_at(shop, *piece.billet, settings, depth);
    if (!billet) return std::nullopt;
    const auto cost = costing::cost_of_piece(*billet, std::min(mass, billet->usable));
    if (!cost) return std::nullopt;
    return *cost;
  }
  const auto lot = piece.lot ? load_lot(shop, *piece.lot) : std::nullopt;
  const auto per_kg = lot ? stock::price_per_kg(*lot) : std::nullopt;
  if (!per_kg || per_kg->currency() != settings.currency) return std::nullopt;
  return scaled_half_even(*per_kg, mass.micrograms(), Mass::grams(1000).micrograms());
}

}  // namespace

std::optional<costing::BilletCost> cost_of_billet(const ShopFile& shop, stock::BilletId billet,
                                                  const ShopSettings& settings) {
  return billet_at(shop, billet, settings, 0);
}

std::optional<Money> cost_of_piece(const ShopFile& shop, const stock::Piece& piece, Mass mass,
                                   const ShopSettings& settings) {
  return cost_at(shop, piece, mass, settings, 0);
}

}  // namespace tangmark::db
