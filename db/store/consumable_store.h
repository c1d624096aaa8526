// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "db/shop_file.h"
#include "domain/stock/consumable.h"

namespace tangmark::db {

/// Uses of one lot, oldest first.
std::vector<stock::KeptConsumableUse> uses_of_lot(const ShopFile& shop, stock::LotId lot);
std::vector<stock::KeptConsumableUse> uses_of_blade(const ShopFile& shop, blade::BladeId blade);
std::vector<stock::KeptConsumableUse> uses_of_billet(const ShopFile& shop, stock::BilletId billet);
stock::ConsumableUseId insert_consumable_use(const ShopFile& shop, const stock::ConsumableUse& use);
/// What is left of every kind of belt, gas, oil, etchant, adhesive and the like, over all its lots
/// of one name, against the floor.
std::vector<stock::ConsumableLevel> consumable_levels(const ShopFile& shop);

}  // namespace tangmark::db
