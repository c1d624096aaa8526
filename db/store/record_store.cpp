// SPDX-License-Identifier: MIT
#include "db/store/record_store.h"

#include "db/row.h"
#include "db/store/settings_store.h"
#include "domain/kiln/record_soak.h"

namespace tangmark::db {
namespace {

std::int64_t ms_of(Instant at) {
  return std::chrono::duration_cast<std::chrono::milliseconds>(at.time_since_epoch()).count();
}

std::vector<RecordCorrection> corrections_of(const ShopFile& shop, std::int64_t record) {
  Query query(shop,
              "SELECT * FROM record_correction WHERE kiln_record_id = ? AND withdrawn_at IS NULL "
              "ORDER BY id");
  query.bind(record);
  std::vector<RecordCorrection> corrections;
  while (query.next())
    corrections.push_back({query.integer("id"), static_cast<std::size_t>(query.integer("sensor")),
                           query.difference("by_k1800"), query.text("why"),
                           query.instant("at")});
  return corrections;
}

const char* column_of(Logger logger) {
  return logger == Logger::check ? "check_record_shape" : "record_shape";
}

// A record without dates counts from the moment that was found for it when it was attached.
void set_on_clock(kiln::KilnRecord& record, Instant starts_at) {
  if (record.ms.empty()) return;
  // To the second, as the start is kept; a dated record stays where it is.
  const std::int64_t shift = ms_of(starts_at) - record.ms.front() / 1000 * 1000;
  for (std::int64_t& ms : record.ms) ms += shift;
}

}  // namespace

Outcome<kiln::KilnRecord> read_kept_record(std::string_view bytes, const std::string& settings,
                                           const Zone& zone) {
  const auto shape = kiln::shape_from_stored(settings, "settings");
  if (!shape) return kiln::read_kiln_record(bytes, zone);
  return kiln::read_kiln_record(bytes, zone, *shape);
}

std::vector<KeptRecord> records_of_firing(const ShopFile& shop, kiln::FiringId firing) {
  Query query(shop, R"(
SELECT r.*, a.bytes, a.name FROM kiln_record r JOIN attachment a ON a.id = r.attachment_id
WHERE r.firing_id = ? ORDER BY r.independent, r.id)");
  query.bind(firing);
  const Zone zone = load_settings(shop).zone;
  std::vector<KeptRecord> records;
  while (query.next()) {
    auto read_back = read_kept_record(query.text("bytes"), query.text("settings"), zone);
    if (!read_back) continue;
    KeptRecord kept{query.integer("id"),
                    query.id<kiln::KilnId>("kiln_id"),
                    query.text("name"),
                    query.yes("independent"),
                    {},
                    std::move(read_back).value()};
    set_on_clock(kept.record, query.instant("starts_at"));
    kept.corrections = corrections_of(shop, kept.id);
    for (const RecordCorrection& correction : kept.corrections)
      if (correction.sensor < kept.record.readings.size())
        kept.record = kiln::corrected(kept.record, correction.sensor, correction.by);
    records.push_back(std::move(kept));
  }
  return records;
}

bool has_record(const ShopFile& shop, std::int64_t firing_number) {
  Query query(shop, R"(
SELECT r.id FROM kiln_record r JOIN firing f ON f.id = r.firing_id WHERE f.number = ? LIMIT 1)");
  query.bind(firing_number);
  return query.next();
}

std::optional<kiln::RecordShape> record_shape_of(const ShopFile& shop, kiln::KilnId kiln,
                                                 Logger logger) {
  Query query(shop, "SELECT record_shape, check_record_shape FROM kiln WHERE id = ?");
  query.bind(kiln);
  if (!query.next() || query.is_null(column_of(logger))) return std::nullopt;
  auto shape = kiln::shape_from_stored(query.text(column_of(logger)), column_of(logger));
  if (!shape) return std::nullopt;
  return std::move(shape).value();
}

void store_record_shape(const ShopFile& shop, kiln::KilnId kiln, Logger logger,
                        const kiln::RecordShape& shape) {
  Row("kiln").set(column_of(logger), kiln::shape_to_stored(shape)).update(shop, kiln.row());
}

void insert_correction(const ShopFile& shop, std::int64_t record,
                       const RecordCorrection& correction) {
  Row("record_correction")
      .set("kiln_record_id", record)
      .set("sensor", static_cast<std::int64_t>(correction.sensor))
      .set("by_k1800", correction.by)
      .set("at", correction.at)
      .set("why", correction.why)
      .insert(shop);
}

void withdraw_corrections(const ShopFile& shop, std::int64_t record, std::size_t sensor,
                          Instant at) {
  for (const RecordCorrection& correction : corrections_of(shop, record))
    if (correction.sensor == sensor)
      Row("record_correction").set("withdrawn_at", at).update(shop, correction.id);
}

}  // namespace tangmark::db
