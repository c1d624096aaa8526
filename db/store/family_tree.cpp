// SPDX-License-Identifier: MIT
#include "db/store/family_tree.h"

#include <algorithm>

#include "db/row.h"
#include "db/store/billet_store.h"
#include "db/store/lot_store.h"
#include "db/store/piece_store.h"

namespace tangmark::db {
namespace {

using namespace stock;

template <class Values, class I>
bool has(const Values& values, I id) {
  return std::any_of(values.begin(), values.end(),
                     [&](const auto& value) { return value.id == id; });
}

void climb(const ShopFile& shop, PieceId id, Ancestors& found) {
  if (has(found.pieces, id)) return;
  const auto piece = load_piece(shop, id);
  if (!piece) return;
  found.pieces.push_back(*piece);
  if (piece->parent) climb(shop, *piece->parent, found);
  if (piece->billet && !has(found.billets, *piece->billet)) {
    if (auto billet = load_billet(shop, *piece->billet))
      found.billets.push_back(std::move(*billet));
    for (const KeptBilletPart& part : parts_of_billet(shop, *piece->billet))
      climb(shop, part.piece, found);
  }
  if (piece->lot && !has(found.lots, *piece->lot))
    if (auto lot = load_lot(shop, *piece->lot)) found.lots.push_back(std::move(*lot));
}

std::vector<BilletId> billets_with(const ShopFile& shop, PieceId piece) {
  Query query(shop,
              "SELECT DISTINCT billet_id FROM billet_part WHERE piece_id = ? ORDER BY billet_id");
  query.bind(piece);
  std::vector<BilletId> billets;
  while (query.next()) billets.push_back(query.id<BilletId>("billet_id"));
  return billets;
}

void add_blades(const ShopFile& shop, PieceId piece, Descendants& found) {
  Query query(shop, "SELECT id, number, title FROM blade WHERE piece_id = ? ORDER BY number");
  query.bind(piece);
  while (query.next())
    found.blades.push_back(
        {query.id<blade::BladeId>("id"), query.integer("number"), query.text("title"), piece});
}

void descend(const ShopFile& shop, PieceId id, Descendants& found) {
  if (has(found.pieces, id)) return;
  const auto piece = load_piece(shop, id);
  if (!piece) return;
  found.pieces.push_back(*piece);
  add_blades(shop, id, found);
  for (const KeptPiece& part : parts_of_piece(shop, id)) descend(shop, part.id, found);
  for (const BilletId billet : billets_with(shop, id)) {
    if (has(found.billets, billet)) continue;
    if (auto kept = load_billet(shop, billet)) found.billets.push_back(std::move(*kept));
    for (const KeptPiece& part : pieces_of_billet(shop, billet)) descend(shop, part.id, found);
  }
}

}  // namespace

Ancestors ancestors_of(const ShopFile& shop, PieceId piece) {
  Ancestors found;
  climb(shop, piece, found);
  return found;
}

Descendants descendants_of(const ShopFile& shop, PieceId piece) {
  Descendants found;
  descend(shop, piece, found);
  return found;
}

Descendants descendants_of(const ShopFile& shop, LotId lot) {
  Descendants found;
  for (const KeptPiece& piece : pieces_of_lot(shop, lot)) descend(shop, piece.id, found);
  return found;
}

std::vector<std::optional<std::string>> grades_of(const ShopFile& shop, PieceId piece) {
  std::vector<std::optional<std::string>> grades;
  for (const KeptLot& lot : ancestors_of(shop, piece).lots)
    if (std::find(grades.begin(), grades.end(), lot.grade) == grades.end())
      grades.push_back(lot.grade);
  return grades;
}

}  // namespace tangmark::db
