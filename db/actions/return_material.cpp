// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/stock_action_list.h"
#include "db/store/lot_store.h"
#include "db/store/piece_store.h"

namespace tangmark::db {
namespace {

using namespace stock;

Outcome<ActionResult> run_return_material(Work& work, Form& form) {
  const auto lot = asked(work, form, "lot", lot_named);
  const auto note = form.text("note");
  if (lot && !lot->owner)
    form.add({"lot", "This lot is the shop's own.", "Choose a customer's material."});
  if (lot && lot->returned_at)
    form.add({"lot", "This lot was returned already.", "Choose another."});
  if (lot && work.at() < lot->received_at)
    form.add({"at", "It had not come by then.", "Give a later time."});
  if (form.refused()) return form.problems();
  for (const KeptPiece& piece : pieces_of_lot(work.shop(), lot->id))
    if (piece.state == PieceState::on_hand)
      store_piece_state(work.shop(), piece.id, PieceState::returned);
  store_return_of_lot(work.shop(), lot->id, work.at(), note);
  return work.done(std::to_string(lot->number));
}

}  // namespace

const Action return_material{
    "return_material",
    "Give what is left of a customer's own material back, or account for it.",
    {{"lot", "Lot", FieldKind::lot, true, "9"},
     {"note", "What went back", FieldKind::long_text, true, "340 g in two ends, with the knife"}},
    run_return_material};

}  // namespace tangmark::db
