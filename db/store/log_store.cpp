// SPDX-License-Identifier: MIT
#include "db/store/log_store.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

using namespace blade;

void read_heat(const Query& row, LogEntry& entry) {
  entry.firing = row.maybe_id<kiln::FiringId>("firing_id");
  entry.set = row.maybe_temperature("set_k1800");
  entry.read = row.maybe_temperature("read_k1800");
  entry.hold = row.maybe_duration("hold_s");
  entry.time_in = row.maybe_instant("time_in");
  entry.time_out = row.maybe_instant("time_out");
  entry.cooling = row.maybe_text("cooling");
  entry.protection = row.maybe_text("protection");
  entry.cycles = row.maybe_integer("cycles");
  entry.bath = row.maybe_id<stock::BathId>("bath_id");
  entry.medium = row.maybe_text("medium");
  entry.bath_temperature = row.maybe_temperature("bath_k1800");
  if (const auto ms = row.maybe_integer("seconds_to_bath_ms"))
    entry.to_bath = std::chrono::milliseconds(*ms);
  entry.clay = row.maybe_yes("clay");
  entry.edge_only = row.maybe_yes("edge_only");
  entry.temper_number = row.maybe_integer("temper_number");
  entry.cooled_to_room = row.maybe_yes("cooled_to_room");
}

void read_bench(const Query& row, LogEntry& entry) {
  entry.warp = row.maybe_length("warp_nm");
  entry.edge = row.maybe_length("edge_nm");
  entry.grit = row.maybe_text("grit");
  entry.belts = row.maybe_share("belts_ppm");
  entry.etchant = row.maybe_text("etchant");
  entry.strength = row.maybe_share("strength_ppm");
  entry.passes = row.maybe_integer("passes");
  entry.resist = row.maybe_yes("resist");
  entry.etch_for = row.maybe_word<EtchFor>("etch_for");
  entry.contrast = row.maybe_integer("contrast");
  entry.mass_in = row.maybe_mass("mass_in_ug");
  entry.mass_out = row.maybe_mass("mass_out_ug");
  entry.gas = row.maybe_mass("gas_ug");
  entry.result = row.maybe_text("result");
  entry.note = row.maybe_text("note");
}

KeptLogEntry entry_from(const Query& row) {
  LogEntry entry{.blade = row.id<BladeId>("blade_id")};
  entry.step = row.maybe_id<RouteStepId>("route_step_id");
  entry.operation = row.text("operation");
  entry.started_at = row.instant("started_at");
  entry.ended_at = row.maybe_instant("ended_at");
  entry.entered_at = row.instant("entered_at");
  entry.how_timed = row.word<HowTimed>("how_timed");
  entry.supersedes = row.maybe_id<LogEntryId>("supersedes_id");
  entry.why = row.maybe_text("why");
  entry.who = row.maybe_text("who");
  entry.hands_on = row.duration("hands_on_s");
  entry.attended = row.duration("attended_s");
  read_heat(row, entry);
  read_bench(row, entry);
  return {row.id<LogEntryId>("id"), std::move(entry)};
}

void set_heat(Row& row, const LogEntry& entry) {
  row.set("firing_id", entry.firing).set("set_k1800", entry.set).set("read_k1800", entry.read);
  row.set("hold_s", entry.hold).set("time_in", entry.time_in).set("time_out", entry.time_out);
  row.set("cooling", entry.cooling).set("protection", entry.protection).set("cycles", entry.cycles);
  row.set("bath_id", entry.bath)
      .set("medium", entry.medium)
      .set("bath_k1800", entry.bath_temperature);
  std::optional<std::int64_t> to_bath_ms;
  if (entry.to_bath) to_bath_ms = entry.to_bath->count();
  row.set("seconds_to_bath_ms", to_bath_ms)
      .set("clay", entry.clay)
      .set("edge_only", entry.edge_only);
  row.set("temper_number", entry.temper_number).set("cooled_to_room", entry.cooled_to_room);
}

void set_bench(Row& row, const LogEntry& entry) {
  row.set("warp_nm", entry.warp).set("edge_nm", entry.edge).set("grit", entry.grit);
  row.set("belts_ppm", entry.belts)
      .set("etchant", entry.etchant)
      .set("strength_ppm", entry.strength);
  row.set("passes", entry.passes).set("resist", entry.resist).set("mass_in_ug", entry.mass_in);
  row.set("mass_out_ug", entry.mass_out).set("gas_ug", entry.gas).set("result", entry.result);
  row.set("note", entry.note).set("contrast", entry.contrast);
  if (entry.etch_for) row.set_word("etch_for", *entry.etch_for);
}

}  // namespace

std::vector<KeptLogEntry> log_of(const ShopFile& shop, BladeId blade) {
  Query query(
      shop,
      "SELECT * FROM log_entry e WHERE blade_id = ? AND operation <> 'struck out' AND NOT EXISTS "
      "(SELECT 1 FROM log_entry c WHERE c.supersedes_id = e.id AND c.blade_id = e.blade_id) "
      "ORDER BY started_at, id");
  query.bind(blade);
  return all_rows(std::move(query), entry_from);
}

std::vector<KeptLogEntry> whole_log_of(const ShopFile& shop, BladeId blade) {
  Query query(shop, "SELECT * FROM log_entry WHERE blade_id = ? ORDER BY started_at, id");
  query.bind(blade);
  return all_rows(std::move(query), entry_from);
}

std::vector<KeptLogEntry> log_of_firing(const ShopFile& shop, kiln::FiringId firing) {
  Query query(
      shop,
      "SELECT * FROM log_entry e WHERE firing_id = ? AND operation <> 'struck out' AND NOT EXISTS "
      "(SELECT 1 FROM log_entry c WHERE c.supersedes_id = e.id AND c.blade_id = e.blade_id) "
      "ORDER BY started_at, id");
  query.bind(firing);
  return all_rows(std::move(query), entry_from);
}

std::optional<KeptLogEntry> load_log_entry(const ShopFile& shop, LogEntryId id) {
  Query query(shop, "SELECT * FROM log_entry WHERE id = ?");
  query.bind(id);
  if (!query.next()) return std::nullopt;
  return entry_from(query);
}

bool is_superseded(const ShopFile& shop, LogEntryId id) {
  Query query(shop,
              "SELECT c.id FROM log_entry e JOIN log_entry c ON c.blade_id = e.blade_id "
              "AND c.supersedes_id = e.id WHERE e.id = ?");
  query.bind(id);
  return query.next();
}

std::optional<Instant> newest_entry_typed_at(const ShopFile& shop, BladeId blade) {
  Query query(shop, "SELECT entered_at FROM log_entry WHERE blade_id = ? ORDER BY id DESC LIMIT 1");
  query.bind(blade);
  if (!query.next()) return std::nullopt;
  return query.instant("entered_at");
}

LogEntryId insert_log_entry(const ShopFile& shop, const LogEntry& entry) {
  Row row("log_entry");
  row.set("blade_id", entry.blade)
      .set("route_step_id", entry.step)
      .set("operation", entry.operation);
  row.set("started_at", entry.started_at).set("ended_at", entry.ended_at);
  row.set("entered_at", entry.entered_at).set_word("how_timed", entry.how_timed);
  row.set("supersedes_id", entry.supersedes).set("why", entry.why).set("who", entry.who);
  row.set("hands_on_s", entry.hands_on).set("attended_s", entry.attended);
  set_heat(row, entry);
  set_bench(row, entry);
  return LogEntryId{row.insert(shop)};
}

}  // namespace tangmark::db
