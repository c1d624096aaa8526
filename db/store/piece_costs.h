// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "db/shop_file.h"
#include "domain/commission/shop_settings.h"
#include "domain/costing/billet_cost.h"
#include "domain/measure/mass.h"
#include "domain/measure/money.h"
#include "domain/stock/piece.h"

namespace tangmark::db {

/// What a billet made here cost: each part at what it cost itself, down the whole family tree (a
/// part may be a piece of another billet), and the hours of its making at the shop's rate and
/// overhead. What burnt to scale or was cropped and thrown away makes the rest dearer. None when a
/// part has no price on record in the shop's currency, or more is left than went in.
std::optional<costing::BilletCost> cost_of_billet(const ShopFile& shop, stock::BilletId billet,
                                                  const commission::ShopSettings& settings);

/// What so much of a piece cost: of a bar by its lot's price and mass, of a billet by its part of
/// what the billet cost. None when it is not on record.
std::optional<Money> cost_of_piece(const ShopFile& shop, const stock::Piece& piece, Mass mass,
                                   const commission::ShopSettings& settings);

}  // namespace tangmark::db
