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
  CHECK(view.next.sentence == "Next: temper 61 at 200 °C");
  CHECK_THAT(view.next.why, Catch::Contains("Quenched, not tempered, since 55 min"));
  REQUIRE(!view.next.offers.empty());
  const auto& in = std::get<DoNow>(view.next.offers.front().deed);
  CHECK(in.action == "log_temper");
  CHECK(in.fields.at("blade") == "61");
  CHECK(in.fields.at("kind") == "hold warm");
  CHECK(in.fields.at("set") == "200 °C");
}

TEST_CASE("a blade in the oven stands as that, and its temper is logged from when it went in") {
  test::SmallShop shop;
  shop.logged("harden", shop.now() - minutes{155});
  shop.step(1, "temper", Temperature::celsius(200));
  shop.logged("hold warm", shop.now() - minutes{120});
  const PlaceView view = blade_view(shop.sight(), "61");
  CHECK_THAT(view.next.why, Catch::Contains("In the oven, since 2 h"));
  REQUIRE(!view.next.offers.empty());
  const auto& form = std::get<OpenForm>(view.next.offers.front().deed);
  CHECK(form.action == "log_temper");
  CHECK(form.filled.at("set") == "200 °C");
  CHECK(form.filled.at("hold") == "2 h");
  CHECK(form.filled.count("started") == 1);
}

TEST_CASE("once its temper is logged a blade is out of the oven") {
  test::SmallShop shop;
  shop.logged("harden", shop.now() - minutes{155});
  shop.logged("hold warm", shop.now() - minutes{120});
  shop.logged("temper", shop.now() - minutes{120});
  shop.step(1, "temper", Temperature::celsius(205));
  CHECK(blades_list(shop.sight()).list.row(0).under == "Tempered 1 of 2");
}

TEST_CASE("a snap temper is said beside the clock") {
  test::SmallShop shop;
  shop.logged("harden", shop.now() - minutes{60});
  shop.logged("snap temper", shop.now() - minutes{50});
  CHECK(blades_list(shop.sight()).list.row(0).under == "Snap temper, not tempered, since 1 h");
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
  db::Row("log_entry")
      .set("blade_id", shop.blade)
      .set("operation", "anneal")
      .set("started_at", shop.now())
      .set("entered_at", shop.now())
      .set("how_timed", "live")
      .set("supersedes_id", wrong)
      .insert(shop.shop);
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
  db::Row("finding")
      .set("number", 4)
      .set("blade_id", shop.blade)
      .set("at", shop.now())
      .set("kind", "crack")
      .set("words", "at the heel")
      .set("affects", 1)
      .set("decision", "open")
      .insert(shop.shop);
  const PlaceView view = blade_view(shop.sight(), "61");
  CHECK(view.next.sentence == "Next: decide what was found on 61");
  CHECK(std::get<OpenForm>(view.next.offers.front().deed).filled.at("finding") == "4");
}

TEST_CASE("a shop without blades says how one begins") {
  const db::ShopFile empty = db::ShopFile::in_memory(test::SmallShop::now());
  const commission::ShopSettings settings;
  CHECK(blade_view({empty, settings, test::SmallShop::now()}, "").next.sentence == "No blade yet");
}
