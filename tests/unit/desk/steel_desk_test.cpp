// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/desk/family.h"
#include "gui/desk/steel_desk.h"
#include "tests/unit/desk/small_shop.h"

using namespace tangmark;
using namespace tangmark::desk;

TEST_CASE("what is available is what is on hand less what is promised") {
  test::SmallShop shop;
  db::Row("reservation")
      .set("item_id", shop.item)
      .set("piece_id", shop.bar)
      .set("length_nm", Length::millimetres(260))
      .set("at", shop.now())
      .insert(shop.shop);
  const std::string text = as_text(steel_view(shop.sight(), "lot 17").sheet);
  CHECK_THAT(text, Catch::Contains("On hand  700 mm"));
  CHECK_THAT(text, Catch::Contains("Promised  260 mm"));
  CHECK_THAT(text, Catch::Contains("Available  440 mm"));
}

TEST_CASE("a family tree reaches from the lot to the blade, in both directions") {
  test::SmallShop shop;
  for (const StockName& from :
       {StockName{"lot", "17"}, StockName{"blade", "61"}, StockName{"piece", "17-1A"}}) {
    const FamilyTree tree = family_of(shop.sight(), from);
    REQUIRE(tree.members.size() == 4);
    CHECK(tree.links.size() == 3);
    for (const FamilyLink& link : tree.links) {
      CHECK(tree.members[link.from].column < tree.members[link.to].column);
    }
  }
}

TEST_CASE("a piece is found by its tag and its grade, and the grade beside it") {
  test::SmallShop shop;
  const PlaceList list = steel_list(shop.sight());
  CHECK(list.list.matching("17-1A").size() == 1);
  CHECK(list.list.matching("1084").size() == 4);
}
