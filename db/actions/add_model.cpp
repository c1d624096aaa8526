// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/model_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

// What cannot be made: no length, a blank shorter than its blade, nothing left of the bar.
void check_blank(Form& form, const Model& model) {
  for (const auto& [field, length] :
       {std::pair{"blade_length", model.blade_length},
        std::pair{"blank_length", model.blank_length}, std::pair{"blank_width", model.blank_width},
        std::pair{"blank_thickness", model.blank_thickness}})
    if (form.has(field) && length <= Length())
      form.add({field, "A size of nothing cannot be made.", "Give a size above zero."});
  if (model.yield <= Share() || model.yield > Share::whole())
    form.add({"yield", "The part of the mass that is left lies above 0 and up to 100 %.",
              "Write 60 %."});
}

Outcome<ActionResult> run_add_model(Work& work, Form& form) {
  Model model;
  model.name = form.text("name");
  model.description = form.maybe_text("description");
  model.construction = form.word<Construction>("construction", Construction::monosteel);
  model.grade = form.maybe_text("grade");
  model.blade_length = form.length("blade_length");
  model.blank_length = form.length("blank_length");
  model.blank_width = form.length("blank_width");
  model.blank_thickness = form.length("blank_thickness");
  model.yield = form.share("yield");
  model.price = form.maybe_money("price");
  model.price_per_mm = form.maybe_money("price_per_mm");
  model.currency = work.settings().currency;
  model.hardness_aim = form.maybe_text("hardness_aim");
  check_blank(form, model);
  for (const auto& [field, money] :
       {std::pair{"price", model.price}, std::pair{"price_per_mm", model.price_per_mm}})
    if (money && money->currency() != model.currency)
      form.add({field, "The shop's list is in " + model.currency.code() + ".",
                "Give the amount in " + model.currency.code() + "."});
  if (form.refused()) return form.problems();
  if (find_model(work.shop(), model.name))
    return Problem{"name", "There is a model of this name already.", "Choose another name."};
  insert_model(work.shop(), model);
  return work.done(model.name);
}

}  // namespace

const Action add_model{
    "add_model",
    "Add a knife pattern that the shop makes again.",
    {{"name", "Model", FieldKind::text, true, "chef 240"},
     {"description", "Description", FieldKind::long_text},
     {"construction", "Construction", FieldKind::choice, true, "monosteel", "monosteel",
      choices_of<Construction>()},
     {"grade", "Usual steel", FieldKind::text, false, "80CrV2, or 1095/15N20"},
     {"blade_length", "Blade length", FieldKind::length, true, "240 mm"},
     {"blank_length", "Blank length", FieldKind::length, true, "390 mm"},
     {"blank_width", "Blank width", FieldKind::length, true, "52 mm"},
     {"blank_thickness", "Blank thickness", FieldKind::length, true, "3 mm"},
     {"yield", "Of the mass taken, left in the blank", FieldKind::share, false,
      "95 % forged; 100 % cut", "100 %"},
     {"price", "List price", FieldKind::money, false, "420.00"},
     {"price_per_mm", "More for each mm of blade", FieldKind::money, false, "1.00"},
     {"hardness_aim", "Hardness aimed at", FieldKind::text, false, "60-61 HRC"}},
    run_add_model};

}  // namespace tangmark::db
