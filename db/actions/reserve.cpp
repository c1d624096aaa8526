// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/actions/asked.h"
#include "db/actions/item_catches.h"
#include "db/actions/stock_action_list.h"
#include "db/store/item_store.h"
#include "db/store/lot_store.h"
#include "db/store/reservation_store.h"

namespace tangmark::db {
namespace {

using namespace stock;

Outcome<KeptReservation> reservation_named(const ShopFile& shop, std::string_view text,
                                           std::string_view field) {
  const auto number = number_named(text, field);
  if (!number) return number.problem();
  if (auto reservation = load_reservation(shop, ReservationId{*number}))
    return std::move(*reservation);
  return Problem{std::string(field), "There is no reservation " + std::string(text) + ".",
                 "Give the number that reserve gave."};
}

// Length of a bar, mass of a billet or lump, the whole of it when neither is given.
Catch wanted_twice(Work& work, const KeptPiece& piece, const Reservation& wish) {
  const auto& settings = work.settings();
  if (wish.mass)
    return promised_twice(piece.tag, available_mass(work.shop(), piece), *wish.mass,
                          settings.mass_unit);
  if (piece.length)
    return promised_twice(piece.tag, available_length(work.shop(), piece, settings.keep_at_least),
                          wish.length.value_or(*piece.length), settings.length_unit);
  return promised_twice(piece.tag, available_mass(work.shop(), piece), piece.mass,
                        settings.mass_unit);
}

Outcome<ActionResult> reserve_piece(Work& work, const commission::KeptItem& item,
                                    const KeptPiece& piece, Reservation wish) {
  wish.piece = piece.id;
  if (wish.length && !piece.length)
    return Problem{"length", "Piece " + piece.tag + " has no length on record.",
                   "Reserve a mass of it, or all."};
  Catches caught = piece_catches(work, item, piece);
  if (auto twice = wanted_twice(work, piece, wish)) caught.push_back(std::move(*twice));
  if (!work.passes(caught)) return work.problems();
  return work.done(std::to_string(insert_reservation(work.shop(), wish).row()));
}

Outcome<ActionResult> reserve_lot(Work& work, const KeptLot& lot, Reservation wish) {
  if (lot.kind == LotKind::steel)
    return Problem{"lot", "Steel is reserved by the piece.",
                   "Give a piece of lot " + std::to_string(lot.number) + "."};
  wish.lot = lot.id;
  if (!wish.quantity) wish.quantity = Share::whole();
  const Share left = quantity_left(work.shop(), lot);
  if (*wish.quantity > left)
    return Problem{"quantity",
                   "Of lot " + std::to_string(lot.number) + " only " +
                       quantity_text(std::max(left, Share())) + " is neither used nor promised.",
                   "Take another lot, or release a reservation."};
  return work.done(std::to_string(insert_reservation(work.shop(), wish).row()));
}

Outcome<ActionResult> run_reserve(Work& work, Form& form) {
  const auto item = asked(work, form, "item", item_named);
  const auto piece = asked(work, form, "piece", piece_named);
  const auto lot = asked(work, form, "lot", lot_named);
  // Without an item the form is refused below; any id may stand in until then.
  Reservation wish{.item = item ? item->id : commission::ItemId{1},
                   .piece = {},
                   .lot = {},
                   .length = form.maybe_length("length"),
                   .mass = form.maybe_mass("mass"),
                   .quantity = form.maybe_quantity("quantity"),
                   .at = work.at(),
                   .released_at = {}};
  if (form.has("piece") == form.has("lot"))
    form.add(
        {"piece", "Steel is reserved by piece, other material by lot.", "Give one of the two."});
  if (wish.length && wish.mass)
    form.add({"mass", "A piece is reserved by length or by mass.", "Give one of the two."});
  for (const auto& [field, nothing] :
       {std::pair{"length", wish.length && *wish.length <= Length()},
        std::pair{"mass", wish.mass && *wish.mass <= Mass()},
        std::pair{"quantity", wish.quantity && *wish.quantity <= Share()}})
    if (nothing) form.add({field, "Nothing cannot be reserved.", "Give more than zero."});
  if (item && item->cancelled_on) form.add({"item", "That item was cancelled.", "Choose another."});
  if (form.refused()) return form.problems();
  if (piece) return reserve_piece(work, *item, *piece, wish);
  return reserve_lot(work, *lot, wish);
}

Outcome<ActionResult> release(Work& work, Form& form) {
  const auto reservation = asked(work, form, "reservation", reservation_named);
  if (reservation && reservation->released_at)
    form.add({"reservation", "This one is released already.", "Choose another."});
  if (form.refused()) return form.problems();
  store_release(work.shop(), reservation->id, work.at());
  return work.done(std::to_string(reservation->id.row()));
}

}  // namespace

const Action reserve{
    "reserve",
    "Promise a piece of steel, or some handle material, to an item.",
    {{"item", "For item", FieldKind::item, true, "7"},
     {"piece", "Piece of steel", FieldKind::piece, false, "17-2"},
     {"length", "Length of it", FieldKind::length, false, "320 mm; all when not given"},
     {"mass", "Or mass of it", FieldKind::mass, false, "600 g of a billet"},
     {"lot", "Or other material", FieldKind::lot, false, "9"},
     {"quantity", "How much", FieldKind::number, false, "1"}},
    run_reserve};

const Action release_reservation{"release_reservation",
                                 "Free what was reserved.",
                                 {{"reservation", "Reservation", FieldKind::number, true, "4"}},
                                 release};

}  // namespace tangmark::db
