// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/desk/commissions_desk.h"
#include "tests/unit/desk/small_shop.h"

using namespace tangmark;
using namespace tangmark::desk;

namespace {

void pay(test::SmallShop& shop, const char* kind, std::int64_t minor, int number) {
  db::Row("payment")
      .set("number", number)
      .set("commission_id", shop.commission)
      .set("kind", kind)
      .set("amount_minor", minor)
      .set("currency", "EUR")
      .set("at", shop.now())
      .insert(shop.shop);
}

}  // namespace

TEST_CASE("money held for unfinished work is shown with every commission") {
  test::SmallShop shop;
  pay(shop, "deposit", 20'000, 1);
  const PlaceView view = commission_view(shop.sight(), "3");
  CHECK_THAT(as_text(view.sheet), Catch::Contains("Held for unfinished work"));
  CHECK_THAT(held_words(shop.sight()), Catch::Contains("200.00"));
}

TEST_CASE("money given back is held no longer") {
  test::SmallShop shop;
  pay(shop, "deposit", 20'000, 1);
  pay(shop, "refund", -20'000, 2);
  CHECK(held_words(shop.sight()) == "No money is held for unfinished work.");
}

TEST_CASE("a promise whose day is past is called late in the list") {
  test::SmallShop shop;
  db::Row("promise")
      .set("commission_id", shop.commission)
      .set("day", "2026-11-20")
      .set("made_at", shop.now())
      .insert(shop.shop);
  CHECK_THAT(commissions_list(shop.sight()).list.row(0).under, Catch::Contains("late: promised"));
}

TEST_CASE("every promise stays on record beside the newest") {
  test::SmallShop shop;
  for (const char* day : {"2026-12-01", "2026-12-20"}) {
    db::Row("promise")
        .set("commission_id", shop.commission)
        .set("day", day)
        .set("made_at", shop.now())
        .insert(shop.shop);
  }
  const std::string text = as_text(commission_view(shop.sight(), "3").sheet);
  CHECK_THAT(text, Catch::Contains("1 Dec"));
  CHECK_THAT(text, Catch::Contains("20 Dec"));
}
