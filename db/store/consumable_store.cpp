// SPDX-License-Identifier: MIT
#include "db/store/consumable_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace stock;

KeptConsumableUse use_from(const Query& row) {
  return {row.id<ConsumableUseId>("id"),
          ConsumableUse{.lot = row.id<LotId>("lot_id"),
                        .at = row.instant("at"),
                        .quantity = row.share("quantity_ppm"),
                        .blade = row.maybe_id<blade::BladeId>("blade_id"),
                        .billet = row.maybe_id<BilletId>("billet_id"),
                        .note = row.maybe_text("note")}};
}

}  // namespace

std::vector<KeptConsumableUse> uses_of_lot(const ShopFile& shop, LotId lot) {
  Query query(shop, "SELECT * FROM consumable_use WHERE lot_id = ? ORDER BY at, id");
  query.bind(lot);
  return all_rows(std::move(query), use_from);
}

std::vector<KeptConsumableUse> uses_of_blade(const ShopFile& shop, blade::BladeId blade) {
  Query query(shop, "SELECT * FROM consumable_use WHERE blade_id = ? ORDER BY at, id");
  query.bind(blade);
  return all_rows(std::move(query), use_from);
}

std::vector<KeptConsumableUse> uses_of_billet(const ShopFile& shop, BilletId billet) {
  Query query(shop, "SELECT * FROM consumable_use WHERE billet_id = ? ORDER BY at, id");
  query.bind(billet);
  return all_rows(std::move(query), use_from);
}

ConsumableUseId insert_consumable_use(const ShopFile& shop, const ConsumableUse& use) {
  Row row("consumable_use");
  row.set("lot_id", use.lot).set("at", use.at).set("quantity_ppm", use.quantity);
  row.set("blade_id", use.blade).set("billet_id", use.billet).set("note", use.note);
  return ConsumableUseId{row.insert(shop)};
}

std::vector<ConsumableLevel> consumable_levels(const ShopFile& shop) {
  Query query(shop, R"(
WITH used AS (SELECT lot_id, sum(quantity_ppm) AS ppm FROM consumable_use GROUP BY lot_id),
     one AS (SELECT lot.kind, lot.name, coalesce(lot.unit, '') AS unit, lot.floor_ppm,
                    lot.quantity_ppm AS bought, coalesce(used.ppm, 0) AS used, lot.expires_on
             FROM lot LEFT JOIN used ON used.lot_id = lot.id
             WHERE lot.kind NOT IN('steel', 'handle') AND lot.quantity_ppm IS NOT NULL
               AND lot.owner_id IS NULL)
SELECT kind, name, unit, sum(bought) AS bought, sum(used) AS used, max(floor_ppm) AS floor_ppm,
       min(CASE WHEN bought > used THEN expires_on END) AS expires_next
FROM one GROUP BY kind, name, unit ORDER BY kind, name)");
  std::vector<ConsumableLevel> levels;
  while (query.next()) {
    ConsumableLevel level;
    level.kind = query.word<LotKind>("kind");
    level.name = query.text("name");
    level.unit = query.text("unit");
    level.bought = query.share("bought");
    level.used = query.share("used");
    level.left = level.bought - level.used;
    level.floor = query.maybe_share("floor_ppm");
    level.expires_next = query.maybe_date("expires_next");
    levels.push_back(std::move(level));
  }
  return levels;
}

}  // namespace tangmark::db
