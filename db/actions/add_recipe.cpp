// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/store/kiln_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run_add_recipe(Work& work, Form& form) {
  kiln::Recipe r;
  r.name = form.text("name");
  r.kind = form.word("kind", kiln::FiringKind::soak);
  r.temperature = form.temperature("temperature");
  r.low =
      form.maybe_temperature("low").value_or(r.temperature + TemperatureDifference::celsius(-5));
  r.high =
      form.maybe_temperature("high").value_or(r.temperature + TemperatureDifference::celsius(5));
  r.soak = form.duration("soak");
  r.soak_max = form.maybe_duration("soak_max").value_or(2 * r.soak);
  r.cool_per_h = form.maybe_temperature_step("cool_per_hour");
  r.cool_to = form.maybe_temperature("cool_to");
  r.preheat = form.maybe_text("preheat");
  r.note = form.maybe_text("note");
  if (r.low > r.temperature || r.high < r.temperature)
    form.add(
        {"temperature", "The temperature lies outside its own window.", "Correct low or high."});
  if (r.soak_max < r.soak)
    form.add({"soak_max", "The longest soak is shorter than the soak.", "Correct one of them."});
  if (form.refused()) return form.problems();
  for (const kiln::KeptRecipe& known : all_recipes(work.shop()))
    if (known.name == r.name)
      return Problem{"name", "There is a recipe of this name.", "Choose another name."};
  add(work.shop(), r);
  return work.done(r.name);
}

}  // namespace

const Action add_recipe{
    "add_recipe",
    "Add a usual firing: temperature, window, soak and cooling.",
    {{"name", "Name", FieldKind::text, true, "1084 harden"},
     {"kind", "Kind", FieldKind::choice, true, "soak", {}, {"soak", "harden", "anneal"}},
     {"temperature", "Temperature", FieldKind::temperature, true, "805 C"},
     {"low", "Lowest", FieldKind::temperature, false, "795 C"},
     {"high", "Highest", FieldKind::temperature, false, "815 C"},
     {"soak", "Soak", FieldKind::duration, true, "10 min"},
     {"soak_max", "Longest soak", FieldKind::duration, false, "20 min"},
     {"cool_per_hour", "Cool by, in an hour", FieldKind::temperature_step, false, "25 C"},
     {"cool_to", "Cool down to", FieldKind::temperature, false, "650 C"},
     {"preheat", "Stops on the way up", FieldKind::text, false, "650 C 10 min"},
     {"note", "Note", FieldKind::long_text}},
    run_add_recipe};

}  // namespace tangmark::db
