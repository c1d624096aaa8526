// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/row.h"
#include "db/store/model_store.h"
#include "db/store/step_advice_reader.h"
#include "domain/blade/operation.h"

namespace tangmark::db {
namespace {

using namespace commission;

bool is_known_operation(const ShopFile& shop, const std::string& name) {
  if (blade::trade_operation(name)) return true;
  Query query(shop, "SELECT id FROM own_operation WHERE name = ?");
  query.bind(name);
  return query.next();
}

void check_step(Work& work, Form& form, const ModelStep& step) {
  if (!step.operation.empty() && !is_known_operation(work.shop(), step.operation))
    form.add({"operation", "\"" + step.operation + "\" is not an operation known here.",
              "Add it with add_operation first, or check the spelling."});
  if (step.survival <= Share() || step.survival > Share::whole())
    form.add({"survival", "The share that survives lies above 0 and up to 100 %.", "Write 97 %."});
  if (step.low && step.high && *step.high < *step.low)
    form.add({"high", "The window ends below its beginning.", "Give the higher temperature here."});
  if (step.soak && step.soak_max && *step.soak_max < *step.soak)
    form.add({"soak_max", "The longest soak is shorter than the soak.", "Give a longer one."});
  if (step.cool_per_h.has_value() != step.cool_to.has_value())
    form.add({"cool_to", "Controlled cooling needs a rate and where it ends.",
              "Give both, or neither."});
}

// A blade as the model makes it, before there is one.
std::vector<steel::Advice> advice_of(const Work& work, const Model& model, const ModelStep& step) {
  blade::Blade made;
  made.grade = model.grade;
  made.thickness = model.blank_thickness;
  const BladeOnRecord record{{blade::BladeId{0}, std::move(made)}, {}, {}, {}, {}, {}};
  blade::RouteStep planned{.blade = blade::BladeId{0}};
  planned.operation = step.operation;
  planned.temperature = step.temperature;
  planned.soak = step.soak;
  planned.medium = step.medium;
  planned.cool_per_h = step.cool_per_h;
  return advice_on(work.shop(), record, planned, work.settings().temperature_unit);
}

Outcome<ActionResult> run_add_model_step(Work& work, Form& form) {
  const auto model = asked(work, form, "model", model_named);
  // Without a model the form is refused below; any id may stand in until then.
  ModelStep step{.model = model ? model->id : ModelId{1}};
  step.operation = form.text("operation");
  step.hands_on = form.duration("hands_on");
  step.attended = form.duration("attended");
  step.unattended = form.duration("unattended");
  step.survival = form.share("survival");
  step.temperature = form.maybe_temperature("temperature");
  step.low = form.maybe_temperature("low");
  step.high = form.maybe_temperature("high");
  step.soak = form.maybe_duration("soak");
  step.soak_max = form.maybe_duration("soak_max");
  step.medium = form.maybe_text("medium");
  step.gap_max = form.maybe_duration("gap_max");
  step.cool_per_h = form.maybe_temperature_step("cool_per_h");
  step.cool_to = form.maybe_temperature("cool_to");
  step.unattended_allowed = form.yes("unattended_allowed");
  step.note = form.maybe_text("note");
  check_step(work, form, step);
  if (form.refused()) return form.problems();
  work.advise(advice_of(work, *model, step));
  step.position = static_cast<std::int64_t>(steps_of_model(work.shop(), model->id).size()) + 1;
  insert_model_step(work.shop(), step);
  return work.done(std::to_string(step.position));
}

}  // namespace

const Action add_model_step{
    "add_model_step",
    "Add the next operation to a model's usual route.",
    {{"model", "Model", FieldKind::model, true, "chef 240"},
     {"operation", "Operation", FieldKind::operation, true, "rough grind"},
     {"hands_on", "Hands on", FieldKind::duration, false, "1 h 20 min", "0 min"},
     {"attended", "Attended wait", FieldKind::duration, false, "20 min", "0 min"},
     {"unattended", "Unattended", FieldKind::duration, false, "2 h", "0 min"},
     {"survival", "Blades that survive it", FieldKind::share, false, "97 %", "100 %"},
     {"temperature", "Set point", FieldKind::temperature, false, "815 C"},
     {"low", "Window from", FieldKind::temperature, false, "805 C"},
     {"high", "Window to", FieldKind::temperature, false, "825 C"},
     {"soak", "Soak", FieldKind::duration, false, "8 min"},
     {"soak_max", "Soak at most", FieldKind::duration, false, "20 min"},
     {"medium", "Quenched or etched in", FieldKind::text, false, "medium oil"},
     {"gap_max", "At most after the step before", FieldKind::duration, false, "90 min"},
     {"cool_per_h", "Cooled per hour by", FieldKind::temperature_step, false, "28 C"},
     {"cool_to", "Cooled down to", FieldKind::temperature, false, "650 C"},
     {"unattended_allowed", "May run unattended", FieldKind::yes_no, false, "no", "no"},
     {"note", "Note", FieldKind::long_text}},
    run_add_model_step};

}  // namespace tangmark::db
