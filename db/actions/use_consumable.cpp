// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/actions/asked.h"
#include "db/actions/stock_action_list.h"
#include "db/store/consumable_store.h"
#include "db/store/lot_store.h"
#include "db/store/reservation_store.h"

namespace tangmark::db {
namespace {

using namespace stock;

void remark_on_level(Work& work, const KeptLot& lot) {
  for (const ConsumableLevel& level : consumable_levels(work.shop()))
    if (level.kind == lot.kind && level.name == lot.name && level.below_floor())
      work.warn("Only " + quantity_text(level.left) + " " + level.unit + " of " + level.name +
                " left, below the floor of " + quantity_text(*level.floor) + ".");
  if (lot.expires_on && *lot.expires_on < work.today())
    work.warn("Lot " + std::to_string(lot.number) + " was good until " + to_text(*lot.expires_on) +
              ".");
}

Outcome<ActionResult> run_use_consumable(Work& work, Form& form) {
  const auto lot = asked(work, form, "lot", lot_named);
  const auto quantity = form.maybe_quantity("quantity").value_or(Share());
  const auto blade = asked(work, form, "blade", blade_id_named);
  const auto billet = asked(work, form, "billet", billet_named);
  const auto note = form.maybe_text("note");
  if (blade && billet)
    form.add({"billet", "It was used for the blade or for the billet, not for both.",
              "Note each part on its own."});
  if (lot && lot->kind == LotKind::steel)
    form.add({"lot", "Steel is cut, not used up.", "Use cut_piece."});
  if (form.has("quantity") && quantity <= Share())
    form.add({"quantity", "Nothing was used.", "Give more than zero."});
  if (form.refused()) return form.problems();
  const Share left = quantity_left(work.shop(), *lot);
  if (quantity > left)
    return Problem{"quantity",
                   "Of lot " + std::to_string(lot->number) + " only " +
                       quantity_text(std::max(left, Share())) + " is left on record.",
                   "Give less, or receive what came with receive_lot first."};
  std::optional<BilletId> of_billet;
  if (billet) of_billet = billet->id;
  insert_consumable_use(work.shop(), {lot->id, work.at(), quantity, blade, of_billet, note});
  remark_on_level(work, *lot);
  return work.done(std::to_string(lot->number));
}

}  // namespace

const Action use_consumable{
    "use_consumable",
    "Note what was used up: a belt binned, gas weighed, etchant poured, flux of a weld.",
    {{"lot", "Lot", FieldKind::lot, true, "11"},
     {"quantity", "How much", FieldKind::number, true, "1", "1"},
     {"blade", "For blade", FieldKind::blade, false, "41"},
     {"billet", "For billet", FieldKind::billet, false, "4"},
     {"note", "Note", FieldKind::text}},
    run_use_consumable};

}  // namespace tangmark::db
