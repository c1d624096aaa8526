// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/stock/billet.h"
#include "domain/stock/lot.h"
#include "domain/stock/piece.h"

namespace tangmark::db {

/// A blade as the family tree knows it.
struct BladeOfPiece {
  blade::BladeId id;
  std::int64_t number;
  std::string title;
  stock::PieceId piece;
};

/// Everything a piece came from: the pieces it was cut from, the billets it was welded into, the
/// pieces in those, and the lots at the end. Each once, nearest first.
struct Ancestors {
  std::vector<stock::KeptPiece> pieces;  ///< the piece itself at the head
  std::vector<stock::KeptBillet> billets;
  std::vector<stock::KeptLot> lots;
};
Ancestors ancestors_of(const ShopFile& shop, stock::PieceId piece);

/// Everything a piece or lot became: its parts, billets they went into, pieces of those, and
/// blades.
struct Descendants {
  std::vector<stock::KeptPiece> pieces;
  std::vector<stock::KeptBillet> billets;
  std::vector<BladeOfPiece> blades;
};
Descendants descendants_of(const ShopFile& shop, stock::PieceId piece);
Descendants descendants_of(const ShopFile& shop, stock::LotId lot);

/// The grades of the lots behind a piece: one for a bar, one for each lot of a billet; none for a
/// lot that nobody identified.
std::vector<std::optional<std::string>> grades_of(const ShopFile& shop, stock::PieceId piece);

}  // namespace tangmark::db
