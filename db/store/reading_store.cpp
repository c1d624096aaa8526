// SPDX-License-Identifier: MIT
#include "db/store/reading_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace blade;

KeptReading reading_from(const Query& row) {
  HardnessReading reading{.blade = row.id<BladeId>("blade_id")};
  reading.at = row.instant("at");
  reading.entered_at = row.instant("entered_at");
  reading.place = row.text("place");
  reading.along = row.maybe_share("along_ppm");
  reading.up = row.maybe_share("up_ppm");
  reading.scale = row.text("scale");
  reading.tenths = row.integer("tenths");
  reading.tenths_to = row.maybe_integer("tenths_to");
  reading.tester = row.maybe_text("tester");
  reading.block_nominal_tenths = row.maybe_integer("block_nominal_tenths");
  reading.block_read_tenths = row.maybe_integer("block_read_tenths");
  reading.on_coupon = row.yes("on_coupon");
  reading.void_why = row.maybe_text("void_why");
  return {row.id<ReadingId>("id"), std::move(reading)};
}

}  // namespace

std::vector<KeptReading> readings_of(const ShopFile& shop, BladeId blade) {
  Query query(shop, "SELECT * FROM hardness_reading WHERE blade_id = ? ORDER BY at, id");
  query.bind(blade);
  std::vector<KeptReading> readings;
  while (query.next()) readings.push_back(reading_from(query));
  return readings;
}

std::optional<KeptReading> load_reading(const ShopFile& shop, ReadingId id) {
  Query query(shop, "SELECT * FROM hardness_reading WHERE id = ?");
  query.bind(id);
  if (!query.next()) return std::nullopt;
  return reading_from(query);
}

ReadingId insert_reading(const ShopFile& shop, const HardnessReading& reading) {
  Row row("hardness_reading");
  row.set("blade_id", reading.blade).set("at", reading.at).set("entered_at", reading.entered_at);
  row.set("place", reading.place).set("along_ppm", reading.along).set("up_ppm", reading.up);
  row.set("scale", reading.scale).set("tenths", reading.tenths).set("tenths_to", reading.tenths_to);
  row.set("tester", reading.tester).set("block_nominal_tenths", reading.block_nominal_tenths);
  row.set("block_read_tenths", reading.block_read_tenths).set("on_coupon", reading.on_coupon);
  row.set("void_why", reading.void_why);
  return ReadingId{row.insert(shop)};
}

void store_reading_void(const ShopFile& shop, ReadingId id, const std::string& why) {
  Row("hardness_reading").set("void_why", why).update(shop, id.row());
}

}  // namespace tangmark::db
