// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/item_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<KeptHold> hold_named(const ShopFile& shop, std::string_view text, std::string_view field) {
  const auto number = number_named(text, field);
  if (!number) return number.problem();
  if (auto hold = load_hold(shop, HoldId{*number})) return std::move(*hold);
  return Problem{std::string(field), "There is no hold " + std::string(text) + ".",
                 "Give the number of one."};
}

Outcome<ActionResult> begin(Work& work, Form& form) {
  const auto item = asked(work, form, "item", item_named);
  const auto what = form.text("what");
  const auto until = form.maybe_date("until");
  if (form.refused()) return form.problems();
  const HoldId id = insert_hold(work.shop(), {item->id, what, work.at(), until, std::nullopt});
  return work.done(std::to_string(id.row()));
}

Outcome<ActionResult> end(Work& work, Form& form) {
  const auto hold = asked(work, form, "hold", hold_named);
  if (hold && hold->ended_at) form.add({"hold", "This wait is over already.", "Choose another."});
  if (hold && work.at() < hold->since)
    form.add({"at", "It had not begun by then.", "Give a later time."});
  if (form.refused()) return form.problems();
  store_end_of_hold(work.shop(), hold->id, work.at());
  return work.done(std::to_string(hold->id.row()));
}

}  // namespace

const Action hold{
    "hold",
    "Note what an item waits for: glue, post, wood, the engraver, the buyer's answer.",
    {{"item", "Item", FieldKind::item, true, "7"},
     {"what", "Waits for", FieldKind::text, true, "epoxy to cure"},
     {"until", "Expected until", FieldKind::date, false, "2026-11-27"}},
    begin};

const Action release_hold{"release_hold",
                          "Note that a wait is over.",
                          {{"hold", "Hold", FieldKind::number, true, "3"}},
                          end};

}  // namespace tangmark::db
