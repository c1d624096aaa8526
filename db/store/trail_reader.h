// SPDX-License-Identifier: MIT
#pragma once

#include "db/shop_file.h"
#include "domain/certificate/steel_trail.h"
#include "domain/stock/stock_id.h"

namespace tangmark::db {

/// Every piece, lot, billet and melt that a piece comes from.
certificate::SteelTrail read_trail(const ShopFile& shop, stock::PieceId blade_piece);

/// Whose hand a name stands for: nobody named is the maker, "outside: NAME" an outside service, any
/// other name somebody in the same shop.
certificate::Hand hand_of(const std::optional<std::string>& who);

/// Photos of something, by their numbers.
std::vector<int> photo_numbers(const ShopFile& shop, std::string_view subject, std::int64_t id);

}  // namespace tangmark::db
