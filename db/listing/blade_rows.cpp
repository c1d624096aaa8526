// SPDX-License-Identifier: MIT
#include "db/listing/blade_rows.h"

#include <fmt/format.h>

#include "db/row.h"
#include "domain/blade/finding_kind.h"

namespace tangmark::db {
namespace {

constexpr const char* blades_statement = R"sql(
SELECT b.number, b.title, b.construction, b.grade, b.length_nm, c.number AS commission,
  cu.name AS buyer, b.due, b.finished_at, b.delivered_at, b.scrapped_at,
  last.operation AS last_operation, last.started_at AS last_at,
  next.operation AS next_operation, next.temperature_k1800 AS next_temperature_k1800,
  next.soak_s AS next_soak_s, held.operation AS held_by, held.started_at AS held_at,
  held.set_k1800 AS held_set_k1800,
  (SELECT max(coalesce(q.time_out, q.ended_at, q.started_at)) FROM log_entry q WHERE q.blade_id = b.id
     AND q.operation = 'harden'
     AND NOT EXISTS (SELECT 1 FROM log_entry s WHERE s.blade_id = b.id AND s.supersedes_id = q.id)) AS quenched_at,
  (SELECT count(*) FROM log_entry t WHERE t.blade_id = b.id AND t.operation = 'temper'
     AND NOT EXISTS (SELECT 1 FROM log_entry s WHERE s.blade_id = b.id AND s.supersedes_id = t.id)
     AND t.started_at >= (SELECT max(coalesce(q.time_out, q.ended_at, q.started_at)) FROM log_entry q
       WHERE q.blade_id = b.id AND q.operation = 'harden'
       AND NOT EXISTS (SELECT 1 FROM log_entry s WHERE s.blade_id = b.id AND s.supersedes_id = q.id))) AS tempers,
  (SELECT count(*) FROM route_step r WHERE r.blade_id = b.id AND r.operation = 'temper'
     AND r.done_at IS NULL AND r.skipped_why IS NULL) AS tempers_ahead,
  EXISTS (SELECT 1 FROM finding f WHERE f.blade_id = b.id AND f.decision = 'open'
     AND (f.affects = 1 OR f.kind NOT IN (SELECT value FROM json_each(?1)))) AS open_finding
FROM blade b
LEFT JOIN item i ON i.id = b.item_id
LEFT JOIN commission c ON c.id = i.commission_id
LEFT JOIN customer cu ON cu.id = c.customer_id
LEFT JOIN log_entry last ON last.id = (SELECT l.id FROM log_entry l WHERE l.blade_id = b.id
  AND NOT EXISTS (SELECT 1 FROM log_entry s WHERE s.blade_id = b.id AND s.supersedes_id = l.id)
  ORDER BY l.started_at DESC, l.id DESC LIMIT 1)
LEFT JOIN log_entry held ON held.id = (SELECT h.id FROM log_entry h WHERE h.blade_id = b.id
  AND h.operation IN ('snap temper', 'hold warm')
  AND NOT EXISTS (SELECT 1 FROM log_entry s WHERE s.blade_id = b.id AND s.supersedes_id = h.id)
  ORDER BY h.started_at DESC, h.id DESC LIMIT 1)
LEFT JOIN route_step next ON next.id = (SELECT r.id FROM route_step r WHERE r.blade_id = b.id
  AND r.done_at IS NULL AND r.skipped_why IS NULL ORDER BY r.position LIMIT 1)
)sql";
constexpr const char* in_order =
    "ORDER BY b.delivered_at IS NOT NULL OR b.scrapped_at IS NOT NULL, b.number DESC";

// Kinds of finding that are a result and no fault, as a JSON list.
std::string result_kinds() {
  std::string list;
  for (const blade::KnownFinding& known : blade::known_findings()) {
    if (!known.fault) list += fmt::format("{}\"{}\"", list.empty() ? "" : ",", known.kind);
  }
  return "[" + list + "]";
}

BladeRow blade_of(const Query& query) {
  BladeRow row;
  row.number = query.integer("number");
  row.title = query.text("title");
  row.construction = query.text("construction");
  row.grade = query.text("grade");
  row.length = query.length("length_nm");
  row.commission = query.maybe_integer("commission");
  row.buyer = query.text("buyer");
  row.due = query.maybe_date("due");
  row.last_operation = query.text("last_operation");
  row.last_at = query.maybe_instant("last_at");
  row.next_operation = query.text("next_operation");
  row.next_temperature = query.maybe_temperature("next_temperature_k1800");
  row.next_soak = query.maybe_duration("next_soak_s");
  row.held_by = query.text("held_by");
  row.held_at = query.maybe_instant("held_at");
  row.held_set = query.maybe_temperature("held_set_k1800");
  row.quenched_at = query.maybe_instant("quenched_at");
  row.tempers_since_quench = static_cast<int>(query.integer("tempers"));
  row.tempers_ahead = static_cast<int>(query.integer("tempers_ahead"));
  row.open_finding = query.yes("open_finding");
  row.finished = !query.is_null("finished_at");
  row.delivered = !query.is_null("delivered_at");
  row.scrapped = !query.is_null("scrapped_at");
  return row;
}

std::vector<BladeRow> blades_where(const ShopFile& shop, const char* condition) {
  std::vector<BladeRow> rows;
  Query query(shop, std::string(blades_statement) + condition + in_order);
  query.bind(result_kinds());
  while (query.next()) rows.push_back(blade_of(query));
  return rows;
}

}  // namespace

std::vector<BladeRow> blade_rows(const ShopFile& shop) {
  return blades_where(shop, "");
}

std::vector<BladeRow> blades_in_shop(const ShopFile& shop) {
  return blades_where(shop, "WHERE b.delivered_at IS NULL AND b.scrapped_at IS NULL ");
}

std::optional<BladeRow> blade_row(const ShopFile& shop, std::int64_t number) {
  Query query(shop, std::string(blades_statement) + "WHERE b.number = ?2");
  query.bind(result_kinds());
  query.bind(number);
  if (!query.next()) return std::nullopt;
  return blade_of(query);
}

std::vector<LogRow> log_rows(const ShopFile& shop, std::int64_t blade_number) {
  std::vector<LogRow> rows;
  Query query(shop, R"sql(
SELECT l.id, l.operation, l.started_at, l.ended_at, l.entered_at, l.how_timed, l.set_k1800, l.read_k1800,
  l.hold_s, coalesce(l.medium, ba.medium) AS medium, l.bath_k1800, l.result, l.note, l.who, l.hands_on_s,
  f.number AS firing, EXISTS (SELECT 1 FROM kiln_record k WHERE k.firing_id = l.firing_id) AS recorded
FROM log_entry l JOIN blade b ON b.id = l.blade_id
LEFT JOIN bath ba ON ba.id = l.bath_id
LEFT JOIN firing f ON f.id = l.firing_id
WHERE b.number = ? AND NOT EXISTS (SELECT 1 FROM log_entry s WHERE s.blade_id = b.id AND s.supersedes_id = l.id)
ORDER BY l.started_at, l.id)sql");
  query.bind(blade_number);
  while (query.next()) {
    LogRow row;
    row.id = query.integer("id");
    row.operation = query.text("operation");
    row.started_at = query.instant("started_at");
    row.ended_at = query.maybe_instant("ended_at");
    row.entered_at = query.instant("entered_at");
    row.how_timed = query.text("how_timed");
    row.set = query.maybe_temperature("set_k1800");
    row.read = query.maybe_temperature("read_k1800");
    row.hold = query.maybe_duration("hold_s");
    row.medium = query.text("medium");
    row.bath_at = query.maybe_temperature("bath_k1800");
    row.result = query.text("result");
    row.note = query.text("note");
    row.who = query.text("who");
    row.hands_on = query.duration("hands_on_s");
    row.firing = query.maybe_integer("firing");
    row.recorded = query.yes("recorded");
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<StepRow> step_rows(const ShopFile& shop, std::int64_t blade_number) {
  std::vector<StepRow> rows;
  Query query(shop, R"sql(
SELECT r.position, r.operation, r.hands_on_s, r.attended_s, r.unattended_s, r.temperature_k1800,
  r.soak_s, r.medium, r.done_at, r.skipped_why, booked.starts_at AS booked_for, k.name AS booked_kiln
FROM route_step r JOIN blade b ON b.id = r.blade_id
LEFT JOIN firing booked ON booked.id = (SELECT fb.firing_id FROM firing_blade fb
  JOIN firing f ON f.id = fb.firing_id WHERE fb.route_step_id = r.id AND f.state IN ('booked', 'running')
  ORDER BY f.starts_at LIMIT 1)
LEFT JOIN kiln k ON k.id = booked.kiln_id
WHERE b.number = ? ORDER BY r.position)sql");
  query.bind(blade_number);
  while (query.next()) {
    StepRow row;
    row.position = query.integer("position");
    row.operation = query.text("operation");
    row.hands_on = query.duration("hands_on_s");
    row.attended = query.duration("attended_s");
    row.unattended = query.duration("unattended_s");
    row.temperature = query.maybe_temperature("temperature_k1800");
    row.soak = query.maybe_duration("soak_s");
    row.medium = query.text("medium");
    row.done = !query.is_null("done_at");
    row.skipped_why = query.text("skipped_why");
    row.booked_for = query.maybe_instant("booked_for");
    row.booked_kiln = query.text("booked_kiln");
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<FindingRow> finding_rows(const ShopFile& shop, std::int64_t blade_number) {
  std::vector<FindingRow> rows;
  Query query(shop, R"sql(
SELECT f.number, f.at, f.kind, f.words, f.place, f.decision, f.affects
FROM finding f JOIN blade b ON b.id = f.blade_id WHERE b.number = ? ORDER BY f.at, f.id)sql");
  query.bind(blade_number);
  while (query.next()) {
    FindingRow row{query.integer("number"), query.instant("at"), query.text("kind"),
                   query.text("words"),     query.text("place"), query.text("decision"),
                   query.yes("affects")};
    row.waits = row.decision == "open" && (row.affects || !blade::is_result(row.kind));
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<HardnessRow> hardness_rows(const ShopFile& shop, std::int64_t blade_number) {
  std::vector<HardnessRow> rows;
  Query query(shop, R"sql(
SELECT h.at, h.place, h.scale, h.tester, h.tenths, h.on_coupon, h.void_why
FROM hardness_reading h JOIN blade b ON b.id = h.blade_id WHERE b.number = ? ORDER BY h.at, h.id)sql");
  query.bind(blade_number);
  while (query.next()) {
    rows.push_back({query.instant("at"), query.text("place"), query.text("scale"),
                    query.text("tester"), query.integer("tenths"), query.yes("on_coupon"),
                    query.text("void_why")});
  }
  return rows;
}

std::vector<PhotoRow> photo_rows(const ShopFile& shop, std::int64_t blade_number) {
  std::vector<PhotoRow> rows;
  Query query(shop, R"sql(
SELECT a.id, a.caption, a.name, a.added_at, a.taken_at FROM attachment a
JOIN blade b ON a.subject = 'blade' AND a.subject_id = b.id
WHERE a.kind = 'photo' AND b.number = ? ORDER BY a.id)sql");
  query.bind(blade_number);
  while (query.next()) {
    rows.push_back({query.integer("id"), query.text("caption"), query.text("name"),
                    query.instant("added_at"), query.maybe_instant("taken_at")});
  }
  return rows;
}

std::optional<std::string> attachment_bytes(const ShopFile& shop, std::int64_t id) {
  Query query(shop, "SELECT bytes FROM attachment WHERE id = ?");
  query.bind(id);
  if (!query.next()) return std::nullopt;
  return query.text("bytes");
}

}  // namespace tangmark::db
