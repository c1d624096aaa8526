// SPDX-License-Identifier: MIT
#include "domain/stock/piece_in_hand.h"

#include <fmt/format.h>

#include <algorithm>

namespace tangmark::stock {
namespace {

std::string_view what_became_of_it(PieceState state) {
  switch (state) {
    case PieceState::on_hand:
      return "is on hand";
    case PieceState::cut_up:
      return "was cut up";
    case PieceState::in_a_billet:
      return "went into a billet";
    case PieceState::blank:
      return "is a blade's blank";
    case PieceState::returned:
      return "was given back to its owner";
    case PieceState::scrap:
      return "was scrapped";
  }
  return "is gone";
}

}  // namespace

Catch used_twice(const Piece& piece) {
  if (piece.state == PieceState::on_hand) return std::nullopt;
  return Caught{3, Weight::stop, "piece",
                fmt::format("Piece {} {}.", piece.tag, what_became_of_it(piece.state)),
                "Take a piece that is on hand."};
}

Catch cut_into_promise(const Piece& piece, const AvailableLength& bar, Length taken,
                       std::optional<commission::ItemId> for_item, LengthUnit shown_in) {
  const Length others = for_item ? bar.reserved_for_others(*for_item) : bar.reserved();
  if (taken + others <= bar.on_hand) return std::nullopt;
  const Length free = std::max(Length(), bar.on_hand - others);
  return Caught{
      3, Weight::stop, "length",
      fmt::format("Cutting {} with the kerf takes steel promised to another item: only {} "
                  "of {} is free.",
                  to_text(taken, shown_in), to_text(free, shown_in), piece.tag),
      "Cut shorter, take another piece, or release the reservation."};
}

}  // namespace tangmark::stock
