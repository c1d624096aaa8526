// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/stock/piece.h"

namespace tangmark::db {

std::optional<stock::KeptPiece> load_piece(const ShopFile& shop, stock::PieceId id);
std::optional<stock::KeptPiece> find_piece(const ShopFile& shop, std::string_view tag);
/// All pieces on hand, by tag.
std::vector<stock::KeptPiece> pieces_on_hand(const ShopFile& shop);
/// All pieces whatever became of them, by tag.
std::vector<stock::KeptPiece> list_pieces(const ShopFile& shop);
std::vector<stock::KeptPiece> pieces_of_lot(const ShopFile& shop, stock::LotId lot);
std::vector<stock::KeptPiece> pieces_of_billet(const ShopFile& shop, stock::BilletId billet);
/// The parts that a piece was cut into, in the order of the cuts.
std::vector<stock::KeptPiece> parts_of_piece(const ShopFile& shop, stock::PieceId parent);
/// The newest cuts of the shop, newest first.
std::vector<stock::KeptCut> latest_cuts(const ShopFile& shop, int most);
std::vector<stock::KeptCut> cuts_of_piece(const ShopFile& shop, stock::PieceId piece);

stock::PieceId insert_piece(const ShopFile& shop, const stock::Piece& piece);
stock::CutId insert_cut(const ShopFile& shop, const stock::Cut& cut);
void store_piece_state(const ShopFile& shop, stock::PieceId id, stock::PieceState state);

/// The tag of the next part of a piece: the tag of the bar that the piece was cut from and the
/// first letter that no part of that bar has: "17-2" gives "17-2A" and "17-2B", then "17-2B" gives
/// "17-2C" and "17-2D" ... "17-2Z", "17-2AA". It stays short, however often a bar is cut.
std::string next_part_tag(const ShopFile& shop, const stock::KeptPiece& parent);

}  // namespace tangmark::db
