// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/item.h"
#include "domain/commission/shop_settings.h"
#include "domain/stock/cutting_plan.h"
#include "domain/stock/piece.h"

namespace tangmark::db {

/// What may be cut from a lot for the queue: its bars and offcuts that lie free, and the blanks
/// that accepted items without a blade want of its steel and thickness.
struct LotCutting {
  stock::CuttingCase cutting;
  std::vector<stock::KeptPiece> pieces;     ///< of cutting.bars, one for one
  std::vector<commission::KeptItem> items;  ///< of cutting.blanks, one for one
};

/// Lengths in whole millimetres: blanks and kerf rounded up, bars down. A bar's price is its part
/// of the lot's, by length. Refuses a lot of which nothing lies free or nothing is wanted.
Outcome<LotCutting> cutting_of_lot(const ShopFile& shop, std::string_view lot,
                                   const commission::ShopSettings& settings);

}  // namespace tangmark::db
