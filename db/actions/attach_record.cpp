// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/row.h"
#include "db/store/kiln_store.h"
#include "db/store/record_store.h"
#include "domain/kiln/record.h"
#include "domain/kiln/record_judgement.h"

namespace tangmark::db {
namespace {

using std::chrono::milliseconds;

constexpr std::int64_t day_ms = 86'400'000;

std::int64_t ms_of(Instant at) {
  return std::chrono::duration_cast<milliseconds>(at.time_since_epoch()).count();
}
Instant instant_of(std::int64_t ms) {
  return Instant(std::chrono::floor<std::chrono::seconds>(milliseconds(ms)));
}

// What the maker says of the logger, the first time or when guessing failed.
struct Mapping {
  kiln::ShapeHints hints;
  std::optional<std::string> judged;  ///< head of the column that is judged
  bool anew = false;
  /// Something is said of the columns, so what was settled before no longer holds.
  bool maps() const { return anew || judged || hints != kiln::ShapeHints{}; }
};

Mapping read_mapping(Form& form) {
  Mapping mapping;
  kiln::TypedMapping typed;
  const std::pair<const char*, std::string kiln::TypedMapping::*> parts[] = {
      {"unit", &kiln::TypedMapping::unit},
      {"dates", &kiln::TypedMapping::dates},
      {"separator", &kiln::TypedMapping::separator},
      {"decimals", &kiln::TypedMapping::decimals},
      {"counts", &kiln::TypedMapping::counts},
      {"time", &kiln::TypedMapping::time},
      {"date", &kiln::TypedMapping::date},
      {"sensors", &kiln::TypedMapping::sensors},
      {"zone", &kiln::TypedMapping::zone}};
  for (const auto& [field, part] : parts) typed.*part = form.maybe_text(field).value_or("");
  mapping.hints = form.take(kiln::read_hints(typed));
  mapping.judged = form.maybe_text("judged");
  mapping.anew = form.yes("anew");
  return mapping;
}

std::string sensor_names(const kiln::RecordShape& shape) {
  std::string names;
  for (const auto& sensor : shape.sensors) names += (names.empty() ? "" : ", ") + sensor.name;
  return names;
}

Problems at_file(const Problems& found) {
  Problems problems = found;
  for (Problem& problem : problems) {
    const bool names_a_column = problem.field == "time" || problem.field == "sensors";
    if (!names_a_column) problem.field = "file, " + problem.field;
  }
  return problems;
}

// The sensor that is to be judged stands first in a shape.
Outcome<kiln::RecordShape> with_judged(kiln::RecordShape shape, const std::string& name) {
  const auto at = std::find_if(shape.sensors.begin(), shape.sensors.end(),
                               [&](const auto& sensor) { return sensor.name == name; });
  if (at == shape.sensors.end())
    return Problem{"judged", "The record has no sensor \"" + name + "\".",
                   "It has: " + sensor_names(shape) + "."};
  std::rotate(shape.sensors.begin(), at, at + 1);
  return shape;
}

// By the mapping settled for this logger; without one, recognised now and kept for the next time.
Outcome<kiln::KilnRecord> read_mapped(Work& work, kiln::KilnId kiln, Logger logger,
                                      const std::string& bytes, const Mapping& mapping) {
  const Zone& zone = work.settings().zone;
  const auto known = mapping.maps() ? std::nullopt : record_shape_of(work.shop(), kiln, logger);
  if (known) {
    auto record = kiln::read_kiln_record(bytes, zone, *known);
    if (record) return record;
    Problems problems = at_file(record.problems());
    problems.front().remedy +=
        " If the logger now writes in another way, say so at \"anew\", or name its columns.";
    return problems;
  }
  auto record = kiln::read_kiln_record(bytes, zone, mapping.hints);
  if (!record) return at_file(record.problems());
  const std::vector<std::string> assumptions = record->assumptions;
  if (mapping.judged) {
    const auto shape = with_judged(record->shape, *mapping.judged);
    if (!shape) return shape.problems();
    record = kiln::read_kiln_record(bytes, zone, *shape);
    if (!record) return at_file(record.problems());
  }
  for (const std::string& assumption : assumptions) work.warn(assumption);
  work.warn("From now on records of this logger are read so: " + sensor_names(record->shape) +
            ", judged by " + record->shape.sensors.front().name + ".");
  store_record_shape(work.shop(), kiln, logger, record->shape);
  return record;
}

// Where a record without dates lies on the calendar: counted from when the kiln was switched on, or
// from when the maker says it began; a time of day on the day that lets it cover the firing.
std::int64_t zero_of(const kiln::KilnRecord& record, const kiln::Firing& firing, const Zone& zone,
                     const std::optional<Instant>& began) {
  using enum kiln::RecordClock;
  const kiln::RecordClock clock = record.shape.clock;
  if (clock == local_time || clock == instant) return 0;
  if (clock == elapsed) return ms_of(began.value_or(firing.heat_from));
  const Instant from = firing.actual_start.value_or(firing.starts_at);
  std::int64_t zero = ms_of(zone.at(zone.date_of(from), std::chrono::seconds{0}));
  if (zero + record.ms.front() > ms_of(from)) zero -= day_ms;
  if (zero + record.ms.back() < ms_of(from)) zero += day_ms;
  return zero;
}

struct Span {
  Instant from, to;
};

// The file as it came, and what was read out of it.
void keep_record(Work& work, const kiln::KeptFiring& firing, const Form::File& file,
                 const kiln::KilnRecord& record, const kiln::RecordJudgement& judged,
                 const Span& span, bool independent) {
  const std::int64_t attachment = Row("attachment")
                                      .set("kind", "kiln record")
                                      .set("name", file.name)
                                      .set("media_type", "text/csv")
                                      .set_bytes("bytes", file.bytes)
                                      .set("taken_at", span.from)
                                      .set("added_at", work.now())
                                      .set("subject", "firing")
                                      .set("subject_id", firing.id)
                                      .insert(work.shop());
  Row("kiln_record")
      .set("firing_id", firing.id)
      .set("kiln_id", firing.kiln)
      .set("attachment_id", attachment)
      .set("starts_at", span.from)
      .set("ends_at", span.to)
      .set("samples", judged.samples)
      .set("peak_k1800", judged.peak)
      .set("sensors", sensor_names(record.shape))
      .set("independent", independent)
      .set("settings", kiln::shape_to_stored(record.shape))
      .insert(work.shop());
}

Outcome<ActionResult> run_attach_record(Work& work, Form& form) {
  const auto firing = find_firing(work.shop(), form.text("firing"), "firing");
  const auto file = form.maybe_file("file");
  const bool independent = form.yes("independent");
  const Mapping mapping = read_mapping(form);
  const auto began = form.maybe_instant("began");
  if (!firing) form.add(firing.problem());
  if (form.refused()) return form.problems();
  const Logger logger = independent ? Logger::check : Logger::controller;
  const auto record = read_mapped(work, firing->kiln, logger, file->bytes, mapping);
  if (!record) return record.problems();
  const auto judged = kiln::judge(*record, std::nullopt);
  if (!judged) return judged.problems();
  const std::int64_t zero =
      zero_of(*record, *firing, kiln::zone_of(record->shape, work.settings().zone), began);
  const Instant from = instant_of(zero + record->ms.front()),
                to = instant_of(zero + judged->end_ms);
  const Instant begun = firing->actual_start.value_or(firing->starts_at);
  const Instant ended = firing->actual_end.value_or(firing->ends_at);
  if (to < begun || from > ended)
    return Problem{"file",
                   "This record covers no minute of firing " + std::to_string(firing->number) + ".",
                   "Choose the record of that day, or check the clock of the logger."};
  if (!record->remarks.clock_jumps.empty())
    work.warn("The logger's clock went backwards at line " +
              std::to_string(record->remarks.clock_jumps.front().line) + ".");
  keep_record(work, *firing, *file, *record, *judged, {from, to}, independent);
  return work.done(std::to_string(firing->number));
}

}  // namespace

const Action attach_record{
    "attach_record",
    "Attach the record of a kiln's logger to a firing.",
    {{"firing", "Firing", FieldKind::firing, true, "12"},
     {"file", "Record", FieldKind::file, true, "record.csv"},
     {"independent", "From a thermocouple of its own, not the controller's", FieldKind::yes_no,
      false, "no", "no"},
     {"began", "Its count began at", FieldKind::instant, false,
      "of a record without times of day; when the kiln was switched on when empty"},
     {"time", "Column of times", FieldKind::text, false, "its head or its number, when not found"},
     {"sensors", "Columns of temperatures", FieldKind::text, false,
      "heads or numbers, the judged one first: 3,4"},
     {"unit",
      "Its degrees",
      FieldKind::choice,
      false,
      "when the record does not say",
      "",
      {"C", "F", "K"}},
     {"dates",
      "Its dates",
      FieldKind::choice,
      false,
      "when 03/04 may mean two days",
      "",
      {"year first", "day first", "month first"}},
     {"date", "Column of dates", FieldKind::text, false, "when they stand apart from the times"},
     {"counts",
      "Its times count",
      FieldKind::choice,
      false,
      "when a bare number or clock may be either",
      "",
      {"seconds", "minutes", "hours", "milliseconds", "time of day"}},
     {"decimals", "Decimals after a", FieldKind::choice, false, "", "", {"point", "comma"}},
     {"separator",
      "Columns parted by",
      FieldKind::choice,
      false,
      "",
      "",
      {"comma", "semicolon", "tab", "bar", "blanks"}},
     {"zone", "Time zone of its clock", FieldKind::text, false,
      "when it is not the shop's: Europe/London"},
     {"judged", "Sensor that is judged", FieldKind::text, false,
      "head of its column; the first when empty"},
     {"anew", "The logger writes in another way now", FieldKind::yes_no, false, "no", "no"}},
    run_attach_record};

}  // namespace tangmark::db
