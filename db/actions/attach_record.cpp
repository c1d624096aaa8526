// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/row.h"
#include "db/store/kiln_store.h"
#include "domain/kiln/record.h"
#include "domain/kiln/record_judgement.h"

namespace tangmark::db {
namespace {

Instant instant_of(std::int64_t ms) {
  return Instant(std::chrono::duration_cast<std::chrono::seconds>(std::chrono::milliseconds(ms)));
}

// A record that counts from its own start began when the kiln was switched on.
std::int64_t zero_of(const kiln::KilnRecord& record, const kiln::Firing& firing) {
  using enum kiln::RecordClock;
  const bool dated = record.shape.clock == local_time || record.shape.clock == instant;
  if (dated) return 0;
  return std::chrono::duration_cast<std::chrono::milliseconds>(firing.heat_from.time_since_epoch()).count();
}

std::string sensor_names(const kiln::KilnRecord& record) {
  std::string names;
  for (const auto& sensor : record.shape.sensors) names += (names.empty() ? "" : ", ") + sensor.name;
  return names;
}

Outcome<ActionResult> run(Work& work, Form& form) {
  const auto firing = find_firing(work.shop(), form.text("firing"), "firing");
  const auto file = form.maybe_file("file");
  const bool independent = form.yes("independent");
  if (!firing) form.add(firing.problem());
  if (form.refused()) return form.problems();
  const auto record = kiln::read_kiln_record(file->bytes, work.settings().zone);
  if (!record) {
    Problems problems = record.problems();
    for (Problem& problem : problems) problem.field = "file, " + problem.field;
    return problems;
  }
  const auto judged = kiln::judge(*record, std::nullopt);
  if (!judged) return judged.problems();
  const std::int64_t zero = zero_of(*record, *firing);
  const Instant from = instant_of(zero + judged->start_ms), to = instant_of(zero + judged->end_ms);
  const Instant begun = firing->actual_start.value_or(firing->starts_at), ended = firing->actual_end.value_or(firing->ends_at);
  if (to < begun || from > ended)
    return Problem{"file", "This record covers no minute of firing " + std::to_string(firing->number) + ".",
                   "Choose the record of that day, or check the clock of the logger."};
  if (!record->remarks.clock_jumps.empty())
    work.warn("The logger's clock went backwards at line " + std::to_string(record->remarks.clock_jumps.front().line) + ".");
  const std::int64_t attachment = Row("attachment").set("kind", "kiln record").set("name", file->name)
      .set("media_type", "text/csv").set_bytes("bytes", file->bytes).set("taken_at", from).set("added_at", work.now())
      .set("subject", "firing").set("subject_id", firing->id).insert(work.shop());
  Row("kiln_record").set("firing_id", firing->id).set("kiln_id", firing->kiln).set("attachment_id", attachment)
      .set("starts_at", from).set("ends_at", to).set("samples", judged->samples).set("peak_k1800", judged->peak)
      .set("sensors", sensor_names(*record)).set("independent", independent)
      .set("settings", kiln::shape_to_stored(record->shape)).insert(work.shop());
  return work.done(std::to_string(firing->number));
}

}  // namespace

const Action attach_record{"attach_record", "Attach the record of a kiln's logger to a firing.",
                           {{"firing", "Firing", FieldKind::firing, true, "12"},
                            {"file", "Record", FieldKind::file, true, "record.csv"},
                            {"independent", "From a thermocouple of its own, not the controller's", FieldKind::yes_no, false, "no", "no"}},
                           run};

}  // namespace tangmark::db
