// SPDX-License-Identifier: MIT
#include "db/store/cutting_case.h"

#include <algorithm>

#include "db/row.h"
#include "db/store/grade_store.h"
#include "db/store/item_store.h"
#include "db/store/model_store.h"
#include "db/store/named.h"
#include "db/store/piece_store.h"
#include "domain/stock/steel_match.h"

namespace tangmark::db {
namespace {

constexpr std::int64_t mm = 1'000'000;

Money price_of(const stock::Lot& lot, Length length) {
  const std::int64_t bought = lot.length ? lot.length->nanometres() * lot.count : 0;
  if (bought <= 0) return Money(0, lot.price.currency());
  return scaled_half_even(lot.price, length.nanometres() / 1'000, bought / 1'000);
}

void add_bars(const ShopFile& shop, const stock::KeptLot& lot, LotCutting& cutting) {
  Query query(shop, R"(
SELECT id FROM piece WHERE lot_id = ? AND state = 'on hand' AND length_nm IS NOT NULL
  AND NOT EXISTS(SELECT 1 FROM reservation WHERE piece_id = piece.id AND released_at IS NULL)
ORDER BY id)");
  query.bind(lot.id);
  while (query.next()) {
    const auto piece = load_piece(shop, query.id<stock::PieceId>("id"));
    cutting.cutting.bars.push_back(
        {piece->tag, piece->length->nanometres() / mm, price_of(lot, *piece->length).minor()});
    cutting.pieces.push_back(*piece);
  }
}

bool waits_for_its_blank(const ShopFile& shop, commission::ItemId item) {
  Query query(shop, R"(
SELECT 1 AS one FROM item JOIN commission ON commission.id = item.commission_id
WHERE item.id = ?1 AND commission.state IN('accepted', 'in work') AND item.cancelled_on IS NULL
  AND NOT EXISTS(SELECT 1 FROM blade WHERE item_id = ?1 AND scrapped_at IS NULL)
  AND NOT EXISTS(SELECT 1 FROM reservation WHERE item_id = ?1 AND released_at IS NULL
    AND piece_id IS NOT NULL))");
  query.bind(item);
  return query.next();
}

void add_blanks(const ShopFile& shop, const stock::KeptLot& lot, LotCutting& cutting) {
  const auto book = grade_book(shop);
  for (const auto& item : open_items(shop)) {
    const auto model = item.model ? load_model(shop, *item.model) : std::nullopt;
    const auto grade = item.grade ? item.grade : model ? model->grade : std::nullopt;
    if (!model || !grade || !lot.grade || !stock::same_grade(*grade, *lot.grade, book)) continue;
    if (lot.thickness && model->blank_thickness != *lot.thickness) continue;
    if (!waits_for_its_blank(shop, item.id)) continue;
    const Length length = model->blank_length + (item.blade_length - model->blade_length);
    cutting.cutting.blanks.push_back(
        {"item " + std::to_string(item.id.row()), (length.nanometres() + mm - 1) / mm});
    cutting.items.push_back(item);
  }
}

}  // namespace

Outcome<LotCutting> cutting_of_lot(const ShopFile& shop, std::string_view number,
                                   const commission::ShopSettings& settings) {
  const auto lot = lot_named(shop, number, "lot");
  if (!lot) return lot.problems();
  LotCutting cutting;
  cutting.cutting.kerf_mm = (settings.kerf.nanometres() + mm - 1) / mm;
  cutting.cutting.keep_mm = settings.keep_at_least.nanometres() / mm;
  add_bars(shop, *lot, cutting);
  add_blanks(shop, *lot, cutting);
  if (cutting.cutting.bars.empty())
    return Problem{"lot", "Nothing of lot " + std::string(number) + " lies free.",
                   "Receive more, or release a reservation."};
  if (cutting.cutting.blanks.empty())
    return Problem{"lot", "No accepted item without a blade wants this steel and thickness.",
                   "Cut for one item with cut_piece."};
  return cutting;
}

}  // namespace tangmark::db
