// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/item_store.h"
#include "db/store/named.h"
#include "db/store/price_extra_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> add_extra(Work& work, Form& form) {
  const auto model = asked(work, form, "model", model_named);
  PriceExtra extra;
  extra.kind = form.word<ExtraKind>("kind", ExtraKind::option);
  extra.name = form.text("name");
  extra.price = form.money("price");
  if (model) extra.model = model->id;
  if (form.has("price") && extra.price.currency() != work.settings().currency)
    form.add({"price", "The list is in " + work.settings().currency.code() + ".",
              "Give the amount in it."});
  if (form.refused()) return form.problems();
  insert_price_extra(work.shop(), extra, work.today());
  return work.done(extra.name);
}

Outcome<ActionResult> choose(Work& work, Form& form) {
  const auto item = asked(work, form, "item", item_named);
  const std::string name = form.text("name");
  const auto given = form.maybe_money("price");
  const bool off = form.yes("off");
  if (form.refused()) return form.problems();
  for (const ItemOption& has : options_of_item(work.shop(), item->id)) {
    if (has.name != name) continue;
    if (!off) return Problem{"name", "The item has this option.", "Take it off with off=yes."};
    take_option_off(work.shop(), has.id, work.at());
    return work.done(name);
  }
  if (off) return Problem{"name", "The item has no option \"" + name + "\".", "Check its name."};
  const auto listed = price_extra(work.shop(), ExtraKind::option, name, item->model);
  if (!given && !listed)
    return Problem{"name", "No option \"" + name + "\" is on the price list.",
                   "Add it with add_price_extra, or give its price."};
  const Money price = given.value_or(listed ? listed->price : Money());
  if (price.currency() != work.settings().currency)
    return Problem{"price", "Options are priced in " + work.settings().currency.code() + ".",
                   "Give the amount in it."};
  insert_item_option(work.shop(), item->id, name, price);
  work.warn("A quote made before does not hold it: make a new version.");
  return work.done(name);
}

}  // namespace

const Action add_price_extra{
    "add_price_extra",
    "Put a steel or an option on the price list; it adds to the list price of a model.",
    {{"kind", "Kind", FieldKind::choice, true, "option", "option", choices_of<ExtraKind>()},
     {"name", "Name", FieldKind::text, true, "leather sheath, or the grade of a steel"},
     {"price", "Adds", FieldKind::money, true, "45.00"},
     {"model", "Of this model only", FieldKind::model, false, "chef 240"}},
    add_extra};

const Action choose_option{
    "choose_option",
    "Give an item an option from the price list, or take it off.",
    {{"item", "Item", FieldKind::item, true, "7"},
     {"name", "Option", FieldKind::text, true, "leather sheath"},
     {"price", "At this price", FieldKind::money, false, "45.00; the list's when not given"},
     {"off", "Take it off", FieldKind::yes_no}},
    choose};

}  // namespace tangmark::db
