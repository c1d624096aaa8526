// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/stock/lot.h"

namespace tangmark::db {

std::optional<stock::KeptLot> load_lot(const ShopFile& shop, stock::LotId id);
std::optional<stock::KeptLot> find_lot(const ShopFile& shop, std::int64_t number);
/// All lots, the newest first.
std::vector<stock::KeptLot> list_lots(const ShopFile& shop);
std::vector<stock::KeptLot> list_lots(const ShopFile& shop, stock::LotKind kind);
/// Material that belongs to a customer and has not been given back.
std::vector<stock::KeptLot> lots_of_customer(const ShopFile& shop, commission::CustomerId owner);
/// The newest steel lot of a grade that the shop bought itself: what the grade costs today.
std::optional<stock::KeptLot> latest_lot_of_grade(const ShopFile& shop, std::string_view grade);

stock::LotId insert_lot(const ShopFile& shop, const stock::Lot& lot);
void store_return_of_lot(const ShopFile& shop, stock::LotId id, Instant at,
                         const std::string& note);

}  // namespace tangmark::db
