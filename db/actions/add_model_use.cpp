// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/model_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_add_model_use(Work& work, Form& form) {
  const auto model = asked(work, form, "model", model_named);
  // Without a model the form is refused below; any id may stand in until then.
  ModelUse use{.model = model ? model->id : ModelId{1}};
  use.kind = form.word<UseKind>("kind", UseKind::used_up);
  use.text = form.text("text");
  use.quantity = form.maybe_quantity("quantity").value_or(Share());
  use.unit = form.text("unit");
  use.each = form.money("each");
  use.low = form.maybe_quantity("low");
  use.high = form.maybe_quantity("high");
  if (form.has("quantity") && use.quantity <= Share())
    form.add({"quantity", "A use of nothing is none.", "Give a quantity above zero."});
  if (model && use.each.currency() != model->currency)
    form.add({"each", "The model is reckoned in " + model->currency.code() + ".",
              "Give the amount in " + model->currency.code() + "."});
  if (use.low && *use.low > use.quantity)
    form.add({"low", "The low end is above the quantity.", "Give a smaller one."});
  if (use.high && *use.high < use.quantity)
    form.add({"high", "The high end is below the quantity.", "Give a larger one."});
  if (form.refused()) return form.problems();
  use.position = static_cast<std::int64_t>(uses_of_model(work.shop(), model->id).size()) + 1;
  insert_model_use(work.shop(), use);
  return work.done(std::to_string(use.position));
}

}  // namespace

const Action add_model_use{
    "add_model_use",
    "Add something that a piece of this model uses beside its steel.",
    {{"model", "Model", FieldKind::model, true, "chef 240"},
     {"kind", "Kind", FieldKind::choice, true, "used up", "used up", choices_of<UseKind>()},
     {"text", "What", FieldKind::text, true, "ceramic belt 36 grit"},
     {"quantity", "How much", FieldKind::number, true, "0.5"},
     {"unit", "Unit", FieldKind::text, false, "belt", "piece"},
     {"each", "Price of one today", FieldKind::money, true, "8.50"},
     {"low", "At the least", FieldKind::number, false, "0.3"},
     {"high", "At the most", FieldKind::number, false, "0.9"}},
    run_add_model_use};

}  // namespace tangmark::db
