// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/foreign_money.h"
#include "db/actions/item_catches.h"
#include "db/store/commission_store.h"
#include "db/store/item_store.h"
#include "db/store/money_store.h"
#include "domain/commission/commission_step.h"
#include "domain/commission/money_rules.h"

namespace tangmark::db {
namespace {

using namespace commission;

// Only the fields that were given change.
void read_changes(Form& form, Item& item) {
  const auto change = [&](std::string_view field, std::optional<std::string>& place) {
    if (auto text = form.maybe_text(field)) place = std::move(text);
  };
  if (const auto title = form.maybe_text("title")) item.title = *title;
  change("description", item.description);
  change("grade", item.grade);
  change("hand", item.hand);
  change("handle", item.handle);
  change("sheath", item.sheath);
  change("hardness_aim", item.hardness_aim);
  if (const auto length = form.maybe_length("blade_length")) {
    item.blade_length = *length;
    if (*length <= Length())
      form.add(
          {"blade_length", "A blade of no length cannot be made.", "Give a length above zero."});
  }
}

// More than the agreed price, or less: money is never typed as a negative.
std::optional<Money> change_of_price(Form& form, Currency currency) {
  const auto more = maybe_money_in(form, "more", currency);
  const auto less = maybe_money_in(form, "less", currency);
  if (more && less)
    form.add({"less", "A change costs either more or less.", "Give only one of the two."});
  for (const auto& [field, amount] : {std::pair{"more", more}, std::pair{"less", less}})
    if (amount && amount->currency() != currency)
      form.add({field, "The commission is reckoned in " + currency.code() + ".",
                "Give the amount in it."});
  if (form.refused()) return std::nullopt;
  if (more) return more;
  if (less) return -*less;
  return std::nullopt;
}

Outcome<ActionResult> run_change_item(Work& work, Form& form) {
  auto item = asked(work, form, "item", item_named);
  const auto handle_lot = asked(work, form, "handle_lot", lot_named);
  const auto words = form.text("words");
  if (item) read_changes(form, *item);
  const auto price = change_of_price(form, item ? item->currency : work.settings().currency);
  std::optional<KeptCommission> commission;
  if (item && item->commission) commission = load_commission(work.shop(), *item->commission);
  if (commission) form.take(after_step(commission->state, CommissionStep::add_items, "item"));
  if (handle_lot && handle_lot->kind != stock::LotKind::handle)
    form.add({"handle_lot", "Lot " + std::to_string(handle_lot->number) + " is no handle material.",
              "Choose a lot of handle material."});
  if (form.refused()) return form.problems();

  if (handle_lot) item->handle_lot = handle_lot->id;
  Catches caught = handle_catches(work, *item);
  if (commission)
    if (const auto invoice = standing_invoice(work.shop(), commission->id))
      if (const auto late = changed_after_invoice(invoice->number)) caught.push_back(*late);
  if (!work.passes(caught)) return work.problems();
  const auto number = static_cast<std::int64_t>(changes_of_item(work.shop(), item->id).size()) + 1;
  insert_item_change(work.shop(), {item->id, number, work.at(), words, price, item->currency});
  store_item(work.shop(), *item);
  return work.done(std::to_string(item->id.row()) + "/" + std::to_string(number));
}

}  // namespace

const Action change_item{
    "change_item",
    "Note a numbered change of an item that was agreed with the buyer.",
    {{"item", "Item", FieldKind::item, true, "7"},
     {"words", "What was agreed", FieldKind::long_text, true, "20 mm longer, agreed by letter"},
     {"more", "Costs more by", FieldKind::money, false, "35.00"},
     {"less", "Costs less by", FieldKind::money, false, "20.00"},
     {"title", "New title", FieldKind::text, false, "Chef's knife, 260 mm"},
     {"description", "New description", FieldKind::long_text},
     {"grade", "New steel", FieldKind::text, false, "52100"},
     {"blade_length", "New blade length", FieldKind::length, false, "260 mm"},
     {"hand", "For the hand", FieldKind::choice, false, "left", {}, {"left", "right", "both"}},
     {"handle", "New handle", FieldKind::text, false, "bog oak"},
     {"handle_lot", "New handle material", FieldKind::lot, false, "9"},
     {"sheath", "New sheath", FieldKind::text, false, "none"},
     {"hardness_aim", "New hardness aim", FieldKind::text, false, "61 HRC"}},
    run_change_item};

}  // namespace tangmark::db
