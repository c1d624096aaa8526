// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/desk/blades_desk.h"
#include "tests/unit/desk/small_shop.h"

using namespace tangmark;
using namespace tangmark::desk;
using std::chrono::minutes;

TEST_CASE("a quenched blade stands as not tempered, with the clock running") {
  test::SmallShop shop;
  shop.logged("harden", shop.now() - minutes{55});
  shop.step(1, "temper", Temperature::celsius(200));
  const PlaceView view = blade_view(shop.sight(), "61");
  CHECK(view.next.sentence == "Next: temper at 200 °C 61");
  CHECK_THAT(view.next.why, Catch::Contains("Quenched, not tempered, since 55 min"));
  REQUIRE(!view.next.offers.empty());
  const auto& form = std::get<OpenForm>(view.next.offers.front().deed);
  CHECK(form.action == "log_temper");
  CHECK(form.filled.at("blade") == "61");
  CHECK(form.filled.at("set") == "200 °C");
}

TEST_CASE("a blade tempered once of two says so") {
  test::SmallShop shop;
  shop.logged("harden", shop.now() - minutes{400});
  shop.logged("temper", shop.now() - minutes{200});
  shop.step(1, "temper", Temperature::celsius(205));
  CHECK(blades_list(shop.sight()).list.row(0).under == "Tempered 1 of 2");
}

TEST_CASE("an entry that a correction superseded is no longer shown") {
  test::SmallShop shop;
  const auto wrong = shop.logged("forge", shop.now() - minutes{30});
  db::Row("log_entry").set("blade_id", shop.blade).set("operation", "anneal").set("started_at", shop.now())
      .set("entered_at", shop.now()).set("how_timed", "live").set("supersedes_id", wrong).insert(shop.shop);
  const LifeLine life = std::get<LifeLine>(blade_view(shop.sight(), "61").picture);
  REQUIRE(life.events.size() == 1);
  CHECK(life.events.front().title == "Anneal");
}

TEST_CASE("what was done comes before what is planned, and only the done is marked done") {
  test::SmallShop shop;
  shop.logged("profile", shop.now() - minutes{30});
  shop.step(1, "rough grind");
  const LifeLine life = std::get<LifeLine>(blade_view(shop.sight(), "61").picture);
  REQUIRE(life.events.size() == 2);
  CHECK(life.events[0].done);
  CHECK_FALSE(life.events[1].done);
  CHECK(life.events[1].when == "planned");
}

TEST_CASE("an open finding comes before the next step") {
  test::SmallShop shop;
  shop.step(1, "handle");
  db::Row("finding").set("number", 4).set("blade_id", shop.blade).set("at", shop.now()).set("kind", "crack")
      .set("words", "at the heel").set("affects", 1).set("decision", "open").insert(shop.shop);
  const PlaceView view = blade_view(shop.sight(), "61");
  CHECK(view.next.sentence == "Next: decide what was found on 61");
  CHECK(std::get<OpenForm>(view.next.offers.front().deed).filled.at("finding") == "4");
}

TEST_CASE("a shop without blades says how one begins") {
  const db::ShopFile empty = db::ShopFile::in_memory(test::SmallShop::now());
  const commission::ShopSettings settings;
  CHECK(blade_view({empty, settings, test::SmallShop::now()}, "").next.sentence == "No blade yet");
}
