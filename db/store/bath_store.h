// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/stock/bath.h"

namespace tangmark::db {

std::optional<stock::KeptBath> load_bath(const ShopFile& shop, stock::BathId id);
std::optional<stock::KeptBath> find_bath(const ShopFile& shop, std::string_view name);
/// Tanks and trays in use, by name.
std::vector<stock::KeptBath> list_baths(const ShopFile& shop);
stock::BathId insert_bath(const ShopFile& shop, const stock::Bath& bath);
/// Stores what a check or a new filling found.
void store_bath(const ShopFile& shop, const stock::KeptBath& bath);

}  // namespace tangmark::db
