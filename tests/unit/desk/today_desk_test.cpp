// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/desk/today_desk.h"
#include "gui/desk/today_task.h"
#include "tests/unit/desk/small_shop.h"

using namespace tangmark;
using namespace tangmark::desk;
using std::chrono::minutes;

TEST_CASE("steel that may crack comes before everything else") {
  test::SmallShop shop;
  shop.logged("harden", shop.now() - minutes{120});  // past the limit of 90 minutes
  shop.step(1, "temper", Temperature::celsius(200));
  shop.firing(5, shop.now() + minutes{60});
  db::Row("promise")
      .set("commission_id", shop.commission)
      .set("day", "2026-11-20")
      .set("made_at", shop.now())
      .insert(shop.shop);
  const std::vector<Task> tasks = tasks_of(shop.sight());
  REQUIRE(tasks.size() == 3);
  CHECK(tasks[0].id == "temper 61");
  CHECK_THAT(tasks[0].why, Catch::Contains("past your limit of 1 h 30 min"));
  CHECK(tasks[1].id == "firing 5");
  CHECK(tasks[2].id == "promise 3");
  CHECK_THAT(tasks[2].why, Catch::Contains("5 days ago"));
}

TEST_CASE("a day on which nothing waits says so and still offers a start") {
  test::SmallShop shop;
  const PlaceView view = today_view(shop.sight(), "");
  CHECK(view.next.sentence == "Nothing waits for your hands");
  CHECK(view.next.offers.size() == 2);
}

TEST_CASE("a belt below its floor is to be bought") {
  test::SmallShop shop;
  db::Row("lot")
      .set("number", 20)
      .set("kind", "belt")
      .set("name", "ceramic 36")
      .set("received_at", shop.now())
      .set("quantity_ppm", 10'000'000)
      .set("floor_ppm", 12'000'000)
      .set("unit", "belt")
      .set("price_minor", 100)
      .set("currency", "EUR")
      .insert(shop.shop);
  const std::vector<Task> tasks = tasks_of(shop.sight());
  REQUIRE(tasks.size() == 1);
  CHECK(tasks[0].sentence == "Buy ceramic 36");
}
