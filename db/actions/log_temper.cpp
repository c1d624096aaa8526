// SPDX-License-Identifier: MIT
#include "db/actions/bench_fields.h"
#include "db/actions/bench_log.h"
#include "db/actions/blade_action_list.h"
#include "db/store/blade_store.h"
#include "db/store/route_store.h"
#include "domain/blade/tempering_rules.h"

namespace tangmark::db {
namespace {

using namespace blade;

std::vector<Field> temper_fields() {
  return {{"kind",
           "Kind",
           FieldKind::choice,
           false,
           "what was done",
           "temper",
           {"temper", "snap temper", "hold warm"}},
          {"set", "Set point", FieldKind::temperature, true, "200 C"},
          {"hold", "Held", FieldKind::duration, false, "2 h; needed for a temper"},
          {"cooled_to_room", "Cooled to room before", FieldKind::yes_no, false,
           "needed from the second temper on"},
          {"temper_number", "Temper number", FieldKind::number, false, "counted when empty"},
          {"result", "Result", FieldKind::text, false, "colour, or how it straightened"}};
}

std::vector<KeptBlade> asked_blades(Work& work, Form& form) {
  std::vector<KeptBlade> blades;
  for (const std::string& number : form.list("blade")) {
    auto blade = blade_named(work.shop(), number, "blade");
    if (blade)
      blades.push_back(std::move(blade).value());
    else
      form.add(blade.problem());
  }
  if (blades.empty() && !form.refused())
    form.add({"blade", "No blade is named.", "Give its number, or several as 23,24,25."});
  return blades;
}

// What the routes of a batch want of this temper, and what it really had.
Catch batch_differs(Work& work, const std::vector<KeptBlade>& blades, const LogEntry& entry) {
  std::vector<SetPoint> batch;
  for (const KeptBlade& blade : blades) {
    const auto step = open_step(work.shop(), blade.id, entry.operation);
    batch.push_back({blade.number, step && step->temperature ? *step->temperature : *entry.set});
  }
  return set_points_differ(batch, work.settings().temper_tolerance,
                           work.settings().temperature_unit);
}

LogEntry read_temper(Work& work, Form& form) {
  const std::string kind = form.text("kind");
  LogEntry entry = read_entry(work, form, BladeId{0}, kind);
  read_heat(work, form, entry);
  entry.set = form.temperature("set");
  entry.hold = form.maybe_duration("hold");
  entry.cooled_to_room = form.maybe_yes("cooled_to_room");
  entry.temper_number = form.maybe_whole("temper_number", 1, 20);
  entry.result = form.maybe_text("result");
  if (kind != "temper" && kind != "snap temper" && kind != "hold warm")
    form.add(
        {"kind", "\"" + kind + "\" is no way to temper.", "Use temper, snap temper or hold warm."});
  if (kind == "temper" && !entry.hold && !form.has("hold"))
    form.add(
        {"hold", "How long it was held is missing.", "Give the time at temperature, such as 2 h."});
  return entry;
}

Outcome<ActionResult> run_log_temper(Work& work, Form& form) {
  const std::vector<KeptBlade> blades = asked_blades(work, form);
  LogEntry entry = read_temper(work, form);
  if (form.refused()) return form.problems();
  bool goes_on = blades.size() < 2 || work.passes(batch_differs(work, blades, entry));
  std::string numbers;
  for (const KeptBlade& blade : blades) {
    entry.blade = blade.id;
    const auto id = write_log(work, blade, entry);
    goes_on = goes_on && id;
    if (id) numbers += (numbers.empty() ? "" : ",") + std::to_string(id->row());
  }
  if (!goes_on) return work.problems();
  return work.done(numbers);
}

Field blades_field() {
  return {"blade", "Blade", FieldKind::blade, true, "its number, or a batch: 23,24,25"};
}

}  // namespace

const Action log_temper{
    "log_temper", "Log a temper of one blade or of a batch; also a snap temper or holding warm.",
    joined({{blades_field()}, temper_fields(), time_fields(), heat_fields()}), run_log_temper};

}  // namespace tangmark::db
