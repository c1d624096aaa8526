// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/desk/start.h"

using namespace tangmark;
using namespace tangmark::desk;

namespace {

Outcome<Start> read(std::vector<std::string> words) {
  return read_start(words);
}

}  // namespace

TEST_CASE("the window starts on a shop, at a place, on a thing, at a time") {
  const auto start = read({"my.tangmark", "--place", "kiln", "--select", "12", "--now",
                           "2026-11-25T09:00:00+01:00", "--quiet-dialogs"});
  REQUIRE(start);
  CHECK(start->shop == "my.tangmark");
  CHECK(start->place == Place::kiln);
  CHECK(start->select == "12");
  CHECK(to_stored(start->now.value()) == "2026-11-25T08:00:00Z");
  CHECK(start->quiet_dialogs);
}

TEST_CASE("without words the window starts on the choice of a shop") {
  const auto start = read({});
  REQUIRE(start);
  CHECK_FALSE(start->shop);
  CHECK(start->place == Place::today);
}

TEST_CASE("a word that the window does not know is refused by name") {
  CHECK(read({"--colour"}).problem().field == "--colour");
  CHECK(read({"--place", "garden"}).problem().sentence == "There is no place garden.");
  CHECK(read({"--place"}).problem().field == "--place");
  CHECK_FALSE(read({"--now", "yesterday"}));
  CHECK_FALSE(read({"a.tangmark", "b.tangmark"}));
}

TEST_CASE("places are called by their names in any case") {
  CHECK(place_called("Certificates") == Place::certificates);
  CHECK(place_called("STEEL") == Place::steel);
  CHECK_FALSE(place_called("stee"));
}
