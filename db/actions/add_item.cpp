// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/foreign_money.h"
#include "db/actions/item_catches.h"
#include "db/store/commission_store.h"
#include "db/store/item_store.h"
#include "domain/commission/commission_step.h"

namespace tangmark::db {
namespace {

using namespace commission;

// What the form leaves open comes from the model.
void read_item(Form& form, const std::optional<KeptModel>& model, Item& item) {
  item.title = form.maybe_text("title").value_or(model ? model->name : "");
  item.description = form.maybe_text("description");
  item.construction = form.word<Construction>(
      "construction", model ? model->construction : Construction::monosteel);
  item.grade = form.maybe_text("grade");
  if (!item.grade && model) item.grade = model->grade;
  item.blade_length =
      form.maybe_length("blade_length").value_or(model ? model->blade_length : Length());
  item.hand = form.maybe_text("hand");
  item.handle = form.maybe_text("handle");
  item.sheath = form.maybe_text("sheath");
  item.hardness_aim = form.maybe_text("hardness_aim");
  if (!item.hardness_aim && model) item.hardness_aim = model->hardness_aim;
  item.dishwasher = form.yes("dishwasher");
  item.asking = maybe_money_in(form, "asking", item.currency);
  item.made_to_specification = form.yes("made_to_specification");
}

Outcome<ActionResult> run_add_item(Work& work, Form& form) {
  const auto commission = asked(work, form, "commission", commission_named);
  const auto model = asked(work, form, "model", model_named);
  const auto handle_lot = asked(work, form, "handle_lot", lot_named);
  Item item;
  item.currency = commission ? commission->currency : work.settings().currency;
  read_item(form, model, item);
  if (item.title.empty())
    form.add({"title", "The item has neither a title nor a model.", "Give one of them."});
  if (item.blade_length <= Length())
    form.add(
        {"blade_length", "The item has neither a blade length nor a model.", "Give one of them."});
  if (item.asking && item.asking->currency() != item.currency)
    form.add({"asking", "The commission is reckoned in " + item.currency.code() + ".",
              "Give the amount in " + item.currency.code() + "."});
  if (handle_lot && handle_lot->kind != stock::LotKind::handle)
    form.add({"handle_lot", "Lot " + std::to_string(handle_lot->number) + " is no handle material.",
              "Choose a lot of handle material."});
  if (commission) form.take(after_step(commission->state, CommissionStep::add_items, "commission"));
  if (form.refused()) return form.problems();

  if (model) item.model = model->id;
  if (handle_lot) item.handle_lot = handle_lot->id;
  if (commission) item.commission = commission->id;
  if (!work.passes(handle_catches(work, item))) return work.problems();
  item.position = next_item_position(work.shop(), item.commission);
  return work.done(std::to_string(insert_item(work.shop(), item).row()));
}

}  // namespace

const Action add_item{
    "add_item",
    "Add a knife to a commission, or begin a stock knife without one.",
    {{"commission", "Commission", FieldKind::commission, false, "12; none for a stock knife"},
     {"model", "Model", FieldKind::model, false, "chef 240; what is left open comes from it"},
     {"title", "Title", FieldKind::text, false, "Chef's knife, 240 mm"},
     {"description", "Description", FieldKind::long_text},
     {"construction",
      "Construction",
      FieldKind::choice,
      false,
      "monosteel",
      {},
      choices_of<Construction>()},
     {"grade", "Steel", FieldKind::text, false, "80CrV2, or 1095/15N20"},
     {"blade_length", "Blade length", FieldKind::length, false, "240 mm"},
     {"hand", "For the hand", FieldKind::choice, false, "left", {}, {"left", "right", "both"}},
     {"handle", "Handle", FieldKind::text, false, "walnut with a brass spacer"},
     {"handle_lot", "Handle material", FieldKind::lot, false, "9"},
     {"sheath", "Sheath", FieldKind::text, false, "leather, left hand"},
     {"hardness_aim", "Hardness aimed at", FieldKind::text, false, "60-61 HRC"},
     {"dishwasher", "Buyer wants to wash it in one", FieldKind::yes_no, false, "no", "no"},
     {"asking", "Price fixed by hand", FieldKind::money, false, "480.00"},
     {"made_to_specification", "Made to the buyer's own specification", FieldKind::yes_no, false,
      "yes when the buyer specified it, no when chosen from the shop's options", "no"}},
    run_add_item};

}  // namespace tangmark::db
