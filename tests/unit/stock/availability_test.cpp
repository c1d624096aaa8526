// SPDX-License-Identifier: MIT
#include "domain/stock/availability.h"

#include <catch2/catch.hpp>

#include "domain/stock/piece_in_hand.h"

using namespace tangmark;
using namespace tangmark::stock;

namespace {

constexpr commission::ItemId item_one{1}, item_two{2};

AvailableLength a_bar_of_900_mm_with(std::vector<Promised> promised) {
  return {Length::millimetres(900), std::move(promised), Length::millimetres(100)};
}

Piece a_piece(PieceState state = PieceState::on_hand) {
  Piece piece;
  piece.tag = "17-2";
  piece.state = state;
  return piece;
}

}  // namespace

TEST_CASE("available is on hand less reserved less the shortest remainder worth keeping") {
  CHECK(a_bar_of_900_mm_with({}).available() == Length::millimetres(800));
  const auto bar = a_bar_of_900_mm_with({{item_one, Length::millimetres(300), {}}});
  CHECK(bar.available() == Length::millimetres(500));
  CHECK(a_bar_of_900_mm_with({{item_one, Length::millimetres(850), {}}}).available() == Length());
}

TEST_CASE("catch 3: the same bar is not promised twice") {
  const auto bar = a_bar_of_900_mm_with({{item_one, Length::millimetres(600), {}}});
  CHECK_FALSE(promised_twice("17-2", bar, Length::millimetres(200), LengthUnit::millimetre));
  const auto caught = promised_twice("17-2", bar, Length::millimetres(301), LengthUnit::millimetre);
  REQUIRE(caught);
  CHECK(caught->number == 3);
  CHECK(caught->weight == Weight::stop);
  CHECK(caught->sentence.find("promised to item 1") != std::string::npos);
}

TEST_CASE("dipping into the remainder is a remark, taking all of it is not short stock") {
  const auto bar = a_bar_of_900_mm_with({});
  const auto caught = promised_twice("17-2", bar, Length::millimetres(850), LengthUnit::millimetre);
  REQUIRE(caught);
  CHECK(caught->weight == Weight::remark);
  CHECK_FALSE(promised_twice("17-2", bar, Length::millimetres(900), LengthUnit::millimetre));
}

TEST_CASE("catch 3: the mass of a billet is not promised twice") {
  const AvailableMass billet{Mass::grams(800), {{item_one, {}, Mass::grams(500)}}};
  CHECK(billet.available() == Mass::grams(300));
  CHECK_FALSE(promised_twice("B4", billet, Mass::grams(300), MassUnit::gram));
  CHECK(promised_twice("B4", billet, Mass::grams(301), MassUnit::gram));
}

TEST_CASE("catch 3: a piece that is gone is not used again") {
  CHECK_FALSE(used_twice(a_piece()));
  for (const auto& [state, word] : trade_words<PieceState>) {
    if (state == PieceState::on_hand) continue;
    const auto caught = used_twice(a_piece(state));
    REQUIRE(caught);
    CHECK(caught->weight == Weight::stop);
  }
}

TEST_CASE("catch 3: a cut does not take what is promised to another item") {
  const auto bar = a_bar_of_900_mm_with({{item_one, Length::millimetres(600), {}}});
  const auto taken = Length::millimetres(302);
  CHECK(cut_into_promise(a_piece(), bar, taken, item_two, LengthUnit::millimetre));
  CHECK(cut_into_promise(a_piece(), bar, taken, std::nullopt, LengthUnit::millimetre));
  CHECK_FALSE(cut_into_promise(a_piece(), bar, taken, item_one, LengthUnit::millimetre));
  CHECK_FALSE(
      cut_into_promise(a_piece(), bar, Length::millimetres(300), item_two, LengthUnit::millimetre));
}
