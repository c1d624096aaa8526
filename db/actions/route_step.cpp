// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "db/actions/bench_fields.h"
#include "db/actions/blade_action_list.h"
#include "db/store/operation_store.h"
#include "db/store/route_store.h"
#include "db/store/step_advice_reader.h"

namespace tangmark::db {
namespace {

using namespace blade;

void read_times(Form& form, RouteStep& step) {
  step.hands_on = form.maybe_duration("hands_on").value_or(Duration());
  step.attended = form.maybe_duration("attended").value_or(Duration());
  step.unattended = form.maybe_duration("unattended").value_or(Duration());
  step.survival = form.maybe_share("survival").value_or(Share::whole());
  step.gap_max = form.maybe_duration("gap_max");
  step.unattended_allowed = form.yes("unattended_allowed");
  step.note = form.maybe_text("note");
  if (step.survival > Share::whole() || step.survival == Share())
    form.add({"survival", "Of the blades some survive, and not more than all.",
              "Give a share such as 95 %."});
}

void read_heat_wanted(Form& form, RouteStep& step) {
  step.temperature = form.maybe_temperature("set");
  step.low = form.maybe_temperature("low");
  step.high = form.maybe_temperature("high");
  step.soak = form.maybe_duration("soak");
  step.soak_max = form.maybe_duration("soak_max");
  step.medium = form.maybe_text("medium");
  step.cool_per_h = form.maybe_temperature_step("cool_per_h");
  step.cool_to = form.maybe_temperature("cool_to");
  if (step.low && step.high && *step.high < *step.low)
    form.add({"high", "The window ends below where it begins.", "Give low, then a higher high."});
  if (step.temperature && ((step.low && *step.temperature < *step.low) ||
                           (step.high && *step.temperature > *step.high)))
    form.add({"set", "The set point lies outside its own window.",
              "Give a set point between low and high."});
  if (step.soak && step.soak_max && *step.soak_max < *step.soak)
    form.add({"soak_max", "The longest soak is shorter than the soak.", "Give a longer soak_max."});
}

Outcome<ActionResult> run_add_route_step(Work& work, Form& form) {
  const auto blade = asked_blade(work, form);
  RouteStep step{.blade = blade ? blade->id : BladeId{0}};
  const auto operation = operation_named(work.shop(), form.text("operation"), "operation");
  if (operation)
    step.operation = operation->name;
  else if (form.has("operation"))
    form.add(operation.problem());
  read_times(form, step);
  read_heat_wanted(form, step);
  const auto position = form.maybe_whole("position", 1, 1000);
  if (form.refused()) return form.problems();
  if (!blade->in_work())
    return Problem{"blade", fmt::format("Blade {} is not in work any more.", blade->number),
                   "Choose a blade in work."};
  const auto route = route_of(work.shop(), blade->id);
  const std::int64_t end = route.empty() ? 1 : route.back().position + 1;
  step.position = std::min(position.value_or(end), end);
  work.advise(advice_on(work.shop(), load_record(work.shop(), *blade), step,
                        work.settings().temperature_unit));
  make_room_on_route(work.shop(), blade->id, step.position);
  insert_route_step(work.shop(), step);
  return work.done(std::to_string(step.position));
}

Outcome<ActionResult> skip(Work& work, Form& form) {
  const auto blade = asked_blade(work, form);
  const std::int64_t position = form.whole("step", 1, 1000);
  const std::string why = form.text("why");
  if (form.refused()) return form.problems();
  const auto step = route_step_at(work.shop(), blade->id, position);
  if (!step)
    return Problem{"step",
                   fmt::format("The route of blade {} has no step {}.", blade->number, position),
                   "Give its place on the route."};
  if (!step->open())
    return Problem{"step",
                   fmt::format("Step {} ({}) is {}.", position, step->operation,
                               step->done_at ? "done" : "skipped already"),
                   "Choose an open step."};
  store_step_skipped(work.shop(), step->id, why);
  return work.done(std::to_string(position));
}

}  // namespace

const Action add_route_step{
    "add_route_step",
    "Add an operation to the route of a blade.",
    {blade_field(),
     {"operation", "Operation", FieldKind::operation, true, "sub-zero"},
     {"position", "Position", FieldKind::number, false, "at the end when empty"},
     {"hands_on", "Hands-on time", FieldKind::duration, false, "40 min"},
     {"attended", "Attended wait", FieldKind::duration, false, "20 min"},
     {"unattended", "Unattended", FieldKind::duration, false, "2 h"},
     {"survival", "Blades that survive it", FieldKind::share, false, "95 %", "100 %"},
     {"set", "Set point", FieldKind::temperature, false, "802 C"},
     {"low", "Window from", FieldKind::temperature, false, "790 C"},
     {"high", "Window to", FieldKind::temperature, false, "815 C"},
     {"soak", "Soak", FieldKind::duration, false, "10 min"},
     {"soak_max", "Longest soak", FieldKind::duration, false, "25 min"},
     {"medium", "Medium", FieldKind::text, false, "medium oil"},
     {"gap_max", "Longest wait before", FieldKind::duration, false, "90 min"},
     {"cool_per_h", "Cooling per hour", FieldKind::temperature_step, false, "28 C"},
     {"cool_to", "Slow cooling down to", FieldKind::temperature, false, "650 C"},
     {"unattended_allowed", "May run alone", FieldKind::yes_no, false, "no"},
     {"note", "Note", FieldKind::long_text}},
    run_add_route_step};

const Action skip_step{"skip_step",
                       "Leave a step of a blade's route out, and say why.",
                       {blade_field(),
                        {"step", "Step", FieldKind::number, true, "its place on the route"},
                        {"why", "Why", FieldKind::text, true, "stamped after the handle instead"}},
                       skip};

}  // namespace tangmark::db
