// SPDX-License-Identifier: MIT
#include "db/listing/kiln_rows.h"

#include "db/row.h"

namespace tangmark::db {
namespace {

constexpr const char* firing_statement = R"sql(
SELECT f.id, f.number, f.kiln_id, k.name AS kiln, f.kind, f.state, f.set_k1800, f.soak_s, f.rest_s,
  f.cool_k1800_per_h, f.cool_to_k1800, f.heat_from, f.starts_at, f.ends_at, f.actual_start, f.actual_end,
  f.locked, f.energy_j, EXISTS (SELECT 1 FROM kiln_record r WHERE r.firing_id = f.id) AS recorded
FROM firing f JOIN kiln k ON k.id = f.kiln_id
)sql";

FiringRow firing_of(const Query& query) {
  FiringRow row;
  row.number = query.integer("number");
  row.kiln_id = query.integer("kiln_id");
  row.kiln = query.text("kiln");
  row.kind = query.text("kind");
  row.state = query.text("state");
  row.set = query.temperature("set_k1800");
  row.soak = query.duration("soak_s");
  row.rest = query.duration("rest_s");
  row.cool_per_hour = query.maybe_difference("cool_k1800_per_h");
  row.cool_to = query.maybe_temperature("cool_to_k1800");
  row.heat_from = query.instant("heat_from");
  row.starts_at = query.instant("starts_at");
  row.ends_at = query.instant("ends_at");
  row.actual_start = query.maybe_instant("actual_start");
  row.actual_end = query.maybe_instant("actual_end");
  row.locked = query.yes("locked");
  row.recorded = query.yes("recorded");
  row.energy = query.energy("energy_j");
  return row;
}

void read_members(const ShopFile& shop, FiringRow& row) {
  Query query(shop, R"sql(
SELECT b.number, s.operation, s.soak_s, s.soak_max_s, m.time_in, m.time_out
FROM firing_blade m JOIN firing f ON f.id = m.firing_id JOIN blade b ON b.id = m.blade_id
LEFT JOIN route_step s ON s.id = m.route_step_id
WHERE f.number = ? ORDER BY m.position)sql");
  query.bind(row.number);
  while (query.next()) {
    row.members.push_back({query.integer("number"), query.text("operation"),
                           query.maybe_duration("soak_s"), query.maybe_duration("soak_max_s"),
                           query.maybe_instant("time_in"), query.maybe_instant("time_out")});
  }
}

}  // namespace

std::vector<KilnRow> kiln_rows(const ShopFile& shop) {
  std::vector<KilnRow> rows;
  Query query(shop, R"sql(
SELECT id, name, kind, circuit, slots, usable_length_nm, low_k1800, high_k1800, heat_k1800_per_h, tau_s,
  heat_w, hold_mw_per_c, load_s, unload_s, checked_on, check_days
FROM kiln WHERE out_of_use_on IS NULL ORDER BY id)sql");
  while (query.next()) {
    KilnRow row;
    row.id = query.integer("id");
    row.name = query.text("name");
    row.kind = query.text("kind");
    row.circuit = query.text("circuit");
    row.slots = static_cast<int>(query.integer("slots"));
    row.usable_length = query.length("usable_length_nm");
    row.low = query.temperature("low_k1800");
    row.high = query.temperature("high_k1800");
    row.heat_per_hour = query.difference("heat_k1800_per_h");
    row.time_constant = query.duration("tau_s");
    row.heat_w = query.integer("heat_w");
    row.hold_mw_per_c = query.integer("hold_mw_per_c");
    row.load = query.duration("load_s");
    row.unload = query.duration("unload_s");
    row.checked_on = query.maybe_date("checked_on");
    row.check_days = query.maybe_integer("check_days");
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<FiringRow> firing_rows(const ShopFile& shop, Instant from, Instant to) {
  std::vector<FiringRow> rows;
  {
    Query query(shop, std::string(firing_statement) +
                          "WHERE f.state <> 'cancelled' AND f.ends_at > ? AND f.heat_from < ? "
                          "ORDER BY f.starts_at, f.id");
    query.bind(from).bind(to);
    while (query.next()) rows.push_back(firing_of(query));
  }
  for (FiringRow& row : rows) read_members(shop, row);
  return rows;
}

std::optional<FiringRow> firing_row(const ShopFile& shop, std::int64_t number) {
  std::optional<FiringRow> row;
  {
    Query query(shop, std::string(firing_statement) + "WHERE f.number = ?");
    query.bind(number);
    if (query.next()) row = firing_of(query);
  }
  if (row) read_members(shop, *row);
  return row;
}

std::vector<FiringRow> all_firings(const ShopFile& shop) {
  std::vector<FiringRow> rows;
  Query query(shop, std::string(firing_statement) + "ORDER BY f.starts_at DESC, f.id DESC");
  while (query.next()) rows.push_back(firing_of(query));
  return rows;
}

std::vector<BenchHoursRow> bench_hours(const ShopFile& shop) {
  std::vector<BenchHoursRow> rows;
  Query query(shop, "SELECT weekday, from_s, to_s FROM bench_hours ORDER BY weekday, from_s");
  while (query.next()) {
    rows.push_back({static_cast<int>(query.integer("weekday")), query.duration("from_s"),
                    query.duration("to_s")});
  }
  return rows;
}

std::vector<CalendarDate> days_off(const ShopFile& shop) {
  std::vector<CalendarDate> days;
  Query query(shop, "SELECT day FROM day_off ORDER BY day");
  while (query.next()) days.push_back(query.date("day"));
  return days;
}

}  // namespace tangmark::db
