// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/cut_parts.h"
#include "db/actions/item_catches.h"
#include "db/actions/stock_action_list.h"
#include "db/store/item_store.h"
#include "db/store/piece_store.h"
#include "db/store/reservation_store.h"
#include "domain/stock/mark_at_cut.h"
#include "domain/stock/mass_balance.h"
#include "domain/stock/piece_in_hand.h"

namespace tangmark::db {
namespace {

using namespace stock;

// A cut made for an item takes up what was reserved of this piece for it; what is reserved for
// others goes along with the rest.
void settle_reservations(Work& work, const CutWish& wish, PieceId rest) {
  for (const KeptReservation& reservation : reservations_of_piece(work.shop(), wish.piece.id)) {
    store_release(work.shop(), reservation.id, work.at());
    if (wish.item && reservation.item == wish.item->id) continue;
    Reservation moved = reservation;
    moved.piece = rest;
    moved.at = work.at();
    insert_reservation(work.shop(), moved);
  }
}

Catches caught_at_cut(Work& work, const CutWish& wish, const CutMasses& masses) {
  const auto& settings = work.settings();
  Catches all;
  const auto add = [&](Catch caught) {
    if (caught) all.push_back(std::move(*caught));
  };
  if (wish.item) {
    for (Caught& caught : piece_catches(work, *wish.item, wish.piece))
      all.push_back(std::move(caught));
    for (Caught& caught : catches_before_work(work, *wish.item)) all.push_back(std::move(caught));
  } else {
    add(used_twice(wish.piece));
  }
  add(cut_without_mark(wish.piece.mark, wish.mark));
  if (wish.piece.length) {
    std::optional<commission::ItemId> for_item;
    if (wish.item) for_item = wish.item->id;
    add(cut_into_promise(wish.piece,
                         available_length(work.shop(), wish.piece, settings.keep_at_least),
                         wish.taken(), for_item, settings.length_unit));
  }
  for (Caught& caught : mass_at_cut(masses.balance, settings.mass_gap_allowed, settings.mass_unit))
    all.push_back(std::move(caught));
  return all;
}

Outcome<ActionResult> run_cut_piece(Work& work, Form& form) {
  const auto piece = asked(work, form, "piece", piece_named);
  const auto item = asked(work, form, "item", item_named);
  const auto length = form.maybe_length("length");
  const auto kerf = form.maybe_length("kerf").value_or(work.settings().kerf);
  const auto mark = form.maybe_word<MarkWentTo>("mark");
  const auto mass = form.maybe_mass("mass");
  const auto rest_mass = form.maybe_mass("rest_mass");
  if (piece && work.at() < piece->made_at)
    form.add({"at", "Piece " + piece->tag + " was not there yet.", "Give a later time."});
  if (form.refused()) return form.problems();

  CutWish wish{*piece, item, length.value_or(Length()), kerf, mark, mass, rest_mass};
  if (wish.takes_all()) wish.mark = MarkWentTo::blank;  // nothing is cut off, so nothing is lost
  if (Problems problems = problems_of(wish, work.settings().length_unit); !problems.empty())
    return problems;
  const CutMasses masses = masses_of(wish);
  if (!work.passes(caught_at_cut(work, wish, masses))) return work.problems();
  if (item)
    if (auto begun = begin_work(work, *item, "item"); !begun) return begun.problems();

  const CutParts parts = store_cut(work.shop(), wish, masses, work.at());
  if (parts.rest) settle_reservations(work, wish, *parts.rest);
  if (wish.rest_length() < work.settings().keep_at_least && parts.rest)
    work.warn("The rest is short stock: " +
              to_text(wish.rest_length(), work.settings().length_unit) + ".");
  if (!parts.rest_tag.empty()) work.warn("Write " + parts.rest_tag + " on the rest now.");
  return work.done(parts.blank_tag);
}

}  // namespace

const Action cut_piece{
    "cut_piece",
    "Cut a blank from a bar or piece. Both parts get new tags at once.",
    {{"piece", "Piece", FieldKind::piece, true, "17-2"},
     {"item", "For item", FieldKind::item, false, "7"},
     {"length", "Length of the blank", FieldKind::length, true, "300 mm"},
     {"kerf", "Kerf", FieldKind::length, false, "2 mm; the shop's when not given"},
     {"mark",
      "Which part kept the mark",
      FieldKind::choice,
      false,
      "rest",
      {},
      choices_of<MarkWentTo>()},
     {"mass", "Mass of the blank, weighed", FieldKind::mass, false, "471 g"},
     {"rest_mass", "Mass of the rest, weighed", FieldKind::mass, false, "1.09 kg"}},
    run_cut_piece};

}  // namespace tangmark::db
