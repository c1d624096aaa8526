// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "db/shop_file.h"
#include "domain/commission/item.h"
#include "domain/measure/outcome.h"
#include "domain/stock/mass_balance.h"
#include "domain/stock/piece.h"

namespace tangmark::db {

/// A cut as the maker asks for it.
struct CutWish {
  stock::KeptPiece piece;
  std::optional<commission::KeptItem> item;
  Length length, kerf;
  std::optional<stock::MarkWentTo> mark;
  std::optional<Mass> blank_mass, rest_mass;  ///< weighed
  bool takes_all() const { return piece.length && length == *piece.length; }
  /// Length and kerf; no kerf when all of the piece is the blank.
  Length taken() const { return takes_all() ? length : length + kerf; }
  Length rest_length() const {
    return takes_all() || !piece.length ? Length() : *piece.length - taken();
  }
};

/// What cannot be cut: nothing, more than there is, a piece without a length.
Problems problems_of(const CutWish& wish, LengthUnit shown_in);

/// Masses of the parts: as weighed, else by their part of the piece's length. The swarf is the
/// kerf's part; what is then missing is the gap.
struct CutMasses {
  Mass blank, rest;
  stock::MassBalance balance;
};
CutMasses masses_of(const CutWish& wish);

struct CutParts {
  std::string blank_tag, rest_tag;  ///< rest_tag empty when nothing is left
  stock::PieceId blank;
  std::optional<stock::PieceId> rest;
};
/// Stores the cut and its parts; the piece is cut up from then on.
CutParts store_cut(const ShopFile& shop, const CutWish& wish, const CutMasses& masses, Instant at);

}  // namespace tangmark::db
