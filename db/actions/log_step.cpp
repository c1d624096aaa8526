// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "db/actions/bench_fields.h"
#include "db/actions/bench_log.h"
#include "db/actions/blade_action_list.h"
#include "db/store/operation_store.h"
#include "db/store/route_store.h"

namespace tangmark::db {
namespace {

using namespace blade;

std::vector<Field> step_fields() {
  return {{"set", "Set point", FieldKind::temperature, false, "of a heat: 860 C"},
          {"hold", "Held", FieldKind::duration, false, "time at temperature"},
          {"cycles", "Cycles", FieldKind::number, false, "3"},
          {"cooled_to_room", "Cooled to room before", FieldKind::yes_no, false,
           "before a second temper"},
          {"medium", "Medium", FieldKind::text, false, "of a sub-zero: dry ice and alcohol"},
          {"clay", "Clay", FieldKind::yes_no},
          {"grit", "Grit", FieldKind::text, false, "P400"},
          {"belts", "Belts binned", FieldKind::number, false, "0.5"},
          {"edge", "Edge thickness", FieldKind::length, false, "0.8 mm"},
          {"warp", "Warp", FieldKind::length, false, "0.3 mm"},
          {"etchant", "Etchant", FieldKind::text, false, "ferric chloride"},
          {"strength", "Strength", FieldKind::share, false, "10 %"},
          {"passes", "Passes", FieldKind::number, false, "4"},
          {"resist", "Stencil or resist", FieldKind::yes_no},
          {"purpose",
           "Etched for",
           FieldKind::choice,
           false,
           "of an etch",
           "",
           {"pattern", "maker's mark", "image"}},
          {"contrast", "Contrast of the pattern", FieldKind::number, false,
           "after an etch, 0 none to 5 clearest"},
          {"mass_in", "Mass before", FieldKind::mass, false, "412 g"},
          {"mass_out", "Mass after", FieldKind::mass, false, "395 g"},
          {"gas", "Gas used", FieldKind::mass, false, "350 g"},
          {"result", "Result", FieldKind::text, false, "straight within 0.3 mm"}};
}

void read_bench(Form& form, LogEntry& entry) {
  entry.set = form.maybe_temperature("set");
  entry.hold = form.maybe_duration("hold");
  entry.cycles = form.maybe_whole("cycles", 1, 100);
  entry.cooled_to_room = form.maybe_yes("cooled_to_room");
  entry.medium = form.maybe_text("medium");
  entry.clay = form.maybe_yes("clay");
  entry.grit = form.maybe_text("grit");
  entry.belts = form.maybe_quantity("belts");
  entry.edge = form.maybe_length("edge");
  entry.warp = form.maybe_length("warp");
  entry.etchant = form.maybe_text("etchant");
  entry.strength = form.maybe_share("strength");
  entry.passes = form.maybe_whole("passes", 1, 1000);
  entry.resist = form.maybe_yes("resist");
  entry.etch_for = form.maybe_word<EtchFor>("purpose");
  entry.contrast = form.maybe_whole("contrast", 0, 5);
  entry.mass_in = form.maybe_mass("mass_in");
  entry.mass_out = form.maybe_mass("mass_out");
  entry.gas = form.maybe_mass("gas");
  entry.result = form.maybe_text("result");
}

// An etch through a stencil is an image unless it is said to be the maker's mark; any other brings
// out what the steel holds.
void say_what_the_etch_is_for(Form& form, LogEntry& entry) {
  if (entry.operation != "etch") {
    if (entry.etch_for || entry.contrast)
      form.add({entry.etch_for ? "purpose" : "contrast",
                "Only an etch has a purpose and a contrast.", "Leave it out, or log an etch."});
    return;
  }
  const bool resist = entry.resist.value_or(false);
  if (!entry.etch_for) entry.etch_for = resist ? EtchFor::image : EtchFor::pattern;
  if (entry.contrast && *entry.etch_for != EtchFor::pattern)
    form.add({"contrast", "A contrast is judged of a pattern.",
              "Leave it out, or say purpose=pattern."});
}

// A step named by its place on the route; without one, the first open step of the operation is
// taken.
void read_step(Work& work, Form& form, LogEntry& entry) {
  const auto position = form.maybe_whole("step", 1, 1000);
  if (!position) return;
  const auto step = route_step_at(work.shop(), entry.blade, *position);
  if (!step || step->operation != entry.operation)
    form.add({"step",
              fmt::format("Step {} of its route is not \"{}\".", *position, entry.operation),
              "Leave step out, or give the place of that operation."});
  else if (!step->open())
    form.add({"step", fmt::format("Step {} of its route is done or skipped.", *position),
              "Choose an open step."});
  else
    entry.step = step->id;
}

Outcome<ActionResult> run_log_step(Work& work, Form& form) {
  const auto blade = asked_blade(work, form);
  const std::string words = form.text("operation");
  std::string operation = words;
  if (!words.empty()) {
    const auto known = operation_named(work.shop(), words, "operation");
    if (known)
      operation = known->name;
    else
      form.add(known.problem());
  }
  LogEntry entry = read_entry(work, form, blade ? blade->id : BladeId{0}, operation);
  read_bench(form, entry);
  say_what_the_etch_is_for(form, entry);
  read_heat(work, form, entry);
  if (blade) read_step(work, form, entry);
  if (form.refused()) return form.problems();
  const auto id = write_log(work, *blade, std::move(entry));
  if (!id) return work.problems();
  return work.done(std::to_string(id->row()));
}

}  // namespace

const Action log_step{
    "log_step", "Log one operation on a blade; its step on the route is ticked.",
    joined({{blade_field(),
             {"operation", "Operation", FieldKind::operation, true, "rough grind"},
             {"step", "Step", FieldKind::number, false,
              "its place on the route, when it is there twice"}},
            time_fields(),
            step_fields(),
            heat_fields()}),
    run_log_step};

}  // namespace tangmark::db
