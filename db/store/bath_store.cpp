// SPDX-License-Identifier: MIT
#include "db/store/bath_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace stock;

KeptBath bath_from(const Query& row) {
  Bath bath;
  bath.name = row.text("name");
  bath.medium = row.text("medium");
  bath.use = row.word<BathUse>("use");
  bath.lot = row.maybe_id<LotId>("lot_id");
  bath.depth = row.maybe_length("depth_nm");
  bath.volume = row.maybe_volume("volume_ul");
  bath.low = row.maybe_temperature("low_k1800");
  bath.high = row.maybe_temperature("high_k1800");
  bath.cooling = row.maybe_duration("cooling_tau_s");
  bath.filled_at = row.maybe_instant("filled_at");
  bath.checked_at = row.maybe_instant("checked_at");
  bath.check_days = row.maybe_integer("check_days");
  bath.strength = row.maybe_share("strength_ppm");
  bath.retired_at = row.maybe_instant("retired_at");
  return {row.id<BathId>("id"), std::move(bath)};
}

Row row_of(const Bath& bath) {
  Row row("bath");
  row.set("name", bath.name).set("medium", bath.medium).set_word("use", bath.use);
  row.set("lot_id", bath.lot).set("depth_nm", bath.depth).set("volume_ul", bath.volume);
  row.set("low_k1800", bath.low).set("high_k1800", bath.high).set("filled_at", bath.filled_at);
  row.set("cooling_tau_s", bath.cooling);
  row.set("checked_at", bath.checked_at).set("check_days", bath.check_days);
  row.set("strength_ppm", bath.strength).set("retired_at", bath.retired_at);
  return row;
}

}  // namespace

std::optional<KeptBath> load_bath(const ShopFile& shop, BathId id) {
  Query query(shop, "SELECT * FROM bath WHERE id = ?");
  query.bind(id);
  return first_row(std::move(query), bath_from);
}

std::optional<KeptBath> find_bath(const ShopFile& shop, std::string_view name) {
  Query query(shop, "SELECT * FROM bath WHERE name = ? COLLATE NOCASE");
  query.bind(name);
  return first_row(std::move(query), bath_from);
}

std::vector<KeptBath> list_baths(const ShopFile& shop) {
  Query query(shop, "SELECT * FROM bath WHERE retired_at IS NULL ORDER BY name");
  std::vector<KeptBath> baths;
  while (query.next()) baths.push_back(bath_from(query));
  return baths;
}

BathId insert_bath(const ShopFile& shop, const Bath& bath) {
  return BathId{row_of(bath).insert(shop)};
}

void store_bath(const ShopFile& shop, const KeptBath& bath) {
  row_of(bath).update(shop, bath.id.row());
}

}  // namespace tangmark::db
