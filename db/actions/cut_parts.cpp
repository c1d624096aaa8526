// SPDX-License-Identifier: MIT
#include "db/actions/cut_parts.h"

#include "db/store/piece_store.h"
#include "domain/stock/mark_at_cut.h"

namespace tangmark::db {
namespace {

using namespace stock;

// Part of a mass by length, in 128 bits because micrograms times nanometres exceed 64.
Mass part_by_length(Mass whole, Length part, Length all) {
  if (all <= Length()) return Mass();
  __extension__ typedef __int128 Wide;
  const Wide product = static_cast<Wide>(whole.micrograms()) * part.nanometres();
  return Mass::micrograms(static_cast<std::int64_t>(product / all.nanometres()));
}

Piece part_of(const KeptPiece& parent, Length length, Mass mass, CutId cut, Instant at) {
  Piece part = parent;
  part.parent = parent.id;
  part.cut = cut;
  part.length = length;
  part.mass = mass;
  part.state = PieceState::on_hand;
  part.made_at = at;
  part.note.reset();
  return part;
}

}  // namespace

Problems problems_of(const CutWish& wish, LengthUnit shown_in) {
  Problems problems;
  const std::string all = wish.piece.length ? to_text(*wish.piece.length, shown_in) : "";
  if (!wish.piece.length)
    return {{"piece", "Piece " + wish.piece.tag + " has no length on record.",
             "Weld or use it whole."}};
  if (wish.length <= Length())
    problems.push_back(
        {"length", "A blank of no length cannot be cut.", "Give a length above zero."});
  if (wish.length > *wish.piece.length)
    problems.push_back({"length", "Piece " + wish.piece.tag + " is only " + all + " long.",
                        "Cut shorter, or take a longer piece."});
  else if (!wish.takes_all() && wish.taken() > *wish.piece.length)
    problems.push_back({"kerf",
                        "The blank and the kerf together are longer than the piece of " + all + ".",
                        "Cut shorter, or take all " + all + " without a cut."});
  return problems;
}

CutMasses masses_of(const CutWish& wish) {
  const Length all = wish.piece.length.value_or(Length());
  CutMasses masses;
  masses.balance.in = wish.piece.mass;
  const Mass blank_by_length = part_by_length(wish.piece.mass, wish.length, all);
  const Mass rest_by_length = part_by_length(wish.piece.mass, wish.rest_length(), all);
  // The kerf is what the lengths leave over, so that unweighed parts always balance.
  masses.balance.swarf =
      wish.takes_all() ? Mass() : wish.piece.mass - blank_by_length - rest_by_length;
  masses.blank = wish.blank_mass.value_or(wish.takes_all() ? wish.piece.mass : blank_by_length);
  masses.rest = wish.rest_mass.value_or(rest_by_length);
  masses.balance.out = masses.blank + masses.rest;
  return masses;
}

CutParts store_cut(const ShopFile& shop, const CutWish& wish, const CutMasses& masses, Instant at) {
  const MarkWentTo mark = wish.mark.value_or(MarkWentTo::neither);
  const CutId cut = insert_cut(
      shop, {wish.piece.id, at, wish.takes_all() ? Length() : wish.kerf, masses.balance.in,
             masses.balance.out, masses.balance.swarf, masses.balance.gap(), mark});
  Piece blank = part_of(wish.piece, wish.length, masses.blank, cut, at);
  blank.tag = next_part_tag(shop, wish.piece);
  blank.mark = mark_of_blank(wish.piece.mark, mark);
  CutParts parts{blank.tag, "", insert_piece(shop, blank), std::nullopt};
  if (wish.rest_length() > Length()) {
    Piece rest = part_of(wish.piece, wish.rest_length(), masses.rest, cut, at);
    rest.tag = next_part_tag(shop, wish.piece);
    rest.mark = mark_of_rest(wish.piece.mark, mark);
    parts.rest_tag = rest.tag;
    parts.rest = insert_piece(shop, rest);
  }
  store_piece_state(shop, wish.piece.id, PieceState::cut_up);
  return parts;
}

}  // namespace tangmark::db
