// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"
#include "domain/stock/stock_id.h"

namespace tangmark::stock {

/// What ties a piece to what it is: the supplier's paint on it, a tag given at the cut, or nothing.
enum class PieceMark { carries_the_mark, tagged, identity_gap };
enum class PieceState { on_hand, cut_up, in_a_billet, blank, returned, scrap };

/// Any part of a bar or billet. A bar has no parent; an offcut is a piece whose parent is a piece;
/// a piece of a billet names the billet.
struct Piece {
  std::string tag{};  ///< what is written on it: "17-2", "17-2B"; never repeats
  std::optional<LotId> lot{};
  std::optional<BilletId> billet{};
  std::optional<PieceId> parent{};
  std::optional<CutId> cut{};  ///< the cut that made it
  std::optional<Length> length{}, width{}, thickness{}, diameter{};
  Mass mass{};
  PieceMark mark = PieceMark::tagged;
  PieceState state = PieceState::on_hand;
  std::optional<std::string> place{};  ///< "rack 2"
  Instant made_at{};
  std::optional<std::string> note{};
  friend bool operator==(const Piece&, const Piece&) = default;
};
using KeptPiece = Kept<Piece, PieceId>;

/// Which of the parts kept the supplier's paint or marker.
enum class MarkWentTo { blank, rest, neither };

/// One cut of one piece. before = after + swarf + gap.
struct Cut {
  PieceId piece;
  Instant at{};
  Length kerf{};
  Mass mass_before{};
  Mass mass_after{};  ///< of all parts together
  Mass swarf{};       ///< what the kerf took, by its volume
  Mass gap{};         ///< unexplained; negative when more came out than went in
  MarkWentTo mark_went_to = MarkWentTo::neither;
  friend bool operator==(const Cut&, const Cut&) = default;
};
using KeptCut = Kept<Cut, CutId>;

}  // namespace tangmark::stock

namespace tangmark {
template <>
inline constexpr auto trade_words<stock::PieceMark> =
    std::array{std::pair{stock::PieceMark::carries_the_mark, std::string_view{"carries the mark"}},
               std::pair{stock::PieceMark::tagged, std::string_view{"tagged"}},
               std::pair{stock::PieceMark::identity_gap, std::string_view{"identity gap"}}};
template <>
inline constexpr auto trade_words<stock::PieceState> =
    std::array{std::pair{stock::PieceState::on_hand, std::string_view{"on hand"}},
               std::pair{stock::PieceState::cut_up, std::string_view{"cut up"}},
               std::pair{stock::PieceState::in_a_billet, std::string_view{"in a billet"}},
               std::pair{stock::PieceState::blank, std::string_view{"blank"}},
               std::pair{stock::PieceState::returned, std::string_view{"returned"}},
               std::pair{stock::PieceState::scrap, std::string_view{"scrap"}}};
template <>
inline constexpr auto trade_words<stock::MarkWentTo> =
    std::array{std::pair{stock::MarkWentTo::blank, std::string_view{"blank"}},
               std::pair{stock::MarkWentTo::rest, std::string_view{"rest"}},
               std::pair{stock::MarkWentTo::neither, std::string_view{"neither"}}};
}  // namespace tangmark
