// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include <chrono>

#include "gui/desk/list.h"

using namespace tangmark::desk;

namespace {

List three_blades() {
  return List({{"61", "61", "Hunter, 1084", "Quenched, not tempered", "Østerby"},
               {"161", "161", "Chef's knife 240 mm", "After forge", "Müller"},
               {"7", "7", "Paring knife", "Every step done", ""}});
}

}  // namespace

TEST_CASE("every typed word must occur, in any order and any case") {
  const List list = three_blades();
  CHECK(list.matching("1084 hunter") == std::vector<std::size_t>{0});
  CHECK(list.matching("HUNTER") == std::vector<std::size_t>{0});
  CHECK(list.matching("hunter forge").empty());
}

TEST_CASE("nothing typed shows every row in its order") {
  CHECK(three_blades().matching("  ") == std::vector<std::size_t>{0, 1, 2});
}

TEST_CASE("a buyer is found with or without the accents of the name") {
  const List list = three_blades();
  CHECK(list.matching("osterby") == std::vector<std::size_t>{0});
  CHECK(list.matching("MÜLLER") == std::vector<std::size_t>{1});
  CHECK(list.matching("muller") == std::vector<std::size_t>{1});
}

TEST_CASE("the blade whose number was typed comes before those that only contain it") {
  const List list(
      {{"161", "161", "", "", ""}, {"61", "61", "", "", ""}, {"610", "610", "", "", ""}});
  CHECK(list.matching("61") == std::vector<std::size_t>{1, 0, 2});
}

TEST_CASE("letters that have no plain form stay as they are") {
  CHECK(folded("Δέλτα") == "Δέλτα");
  CHECK(folded("Straße Ærø Čapek Łódź") == "strase aro capek lodz");
  CHECK(folded("\xC3") == "\xC3");  // a letter cut in half does not run past the end
}

TEST_CASE("a row is found by its id, and an unknown id is nowhere") {
  const List list = three_blades();
  CHECK(list.index_of("161") == 1);
  CHECK(list.index_of("999") == list.size());
}

TEST_CASE("a list of 100,000 rows is narrowed within the time of a few frames") {
  std::vector<Row> rows;
  for (int i = 0; i < 100'000; ++i) {
    const std::string number = std::to_string(i);
    rows.push_back({number, number, "Chef's knife 240 mm, 1084", "Planned Friday 16:00, long kiln",
                    "Renwick"});
  }
  const List list(std::move(rows));
  const auto begun = std::chrono::steady_clock::now();
  const auto found = list.matching("kiln 99999");
  const auto took = std::chrono::steady_clock::now() - begun;
  CHECK(found == std::vector<std::size_t>{99'999});
  // Generous: tests are compiled plainly and the machine may be busy. The aim in use is 16 ms.
  CHECK(took < std::chrono::milliseconds{1500});
}
