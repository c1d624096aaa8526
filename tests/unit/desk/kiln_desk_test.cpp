// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/desk/firing_curve.h"
#include "gui/desk/kiln_board_of.h"
#include "gui/desk/kiln_desk.h"
#include "tests/unit/desk/small_shop.h"

using namespace tangmark;
using namespace tangmark::desk;
using std::chrono::hours;
using std::chrono::minutes;

TEST_CASE("a kiln coasts by one time constant to the room plus a part in e of its height above it") {
  test::SmallShop shop;
  const db::KilnRow kiln = db::kiln_rows(shop.shop).front();
  // Source: Newton's law of cooling; exp(-1) = 0.36788 (NIST DLMF 4.2).
  const SwitchedOff off{shop.now(), 820};
  CHECK(coasted(kiln, off, shop.now() + hours{3}) == Approx(20 + 800 * 0.36788).epsilon(1e-4));
  CHECK(coasted(kiln, off, shop.now() - hours{1}) == 820);
}

TEST_CASE("a curve heats, soaks and cools, never jumping backwards in time") {
  test::SmallShop shop;
  shop.firing(5, shop.now() + hours{2});
  const db::FiringRow firing = db::firing_row(shop.shop, 5).value();
  const BoardCurve curve =
      curve_of(db::kiln_rows(shop.shop).front(), firing, std::nullopt, firing.ends_at + hours{10});
  REQUIRE(curve.size() > 10);
  CHECK(curve.front().celsius == Approx(20));
  CHECK(curve[1].celsius == Approx(200));
  CHECK(curve.back().celsius < 40);
  for (std::size_t i = 1; i < curve.size(); ++i) CHECK(curve[i - 1].at <= curve[i].at);
}

TEST_CASE("the board says in words what it draws") {
  test::SmallShop shop;
  const auto firing = shop.firing(5, shop.now() + hours{2});
  db::Row("firing_blade").set("firing_id", firing).set("blade_id", shop.blade).set("position", 1).insert(shop.shop);
  const std::string text = in_words(board_of(shop.sight(), "5", std::nullopt));
  CHECK_THAT(text, Catch::Contains("Long kiln: 200 °C soak with 61 (selected)"));
}

TEST_CASE("a firing may not go where its kiln would have to be switched on before now") {
  test::SmallShop shop;
  shop.firing(5, shop.now() + hours{2});
  const MoveTrial trial = try_firing(shop.sight(), 5, "Long kiln", shop.now() + minutes{5});
  CHECK_FALSE(trial.may);
  CHECK_THAT(trial.reasons.front(), Catch::Contains("before now"));
  const auto proposal = propose(shop.sight(), 5, "Long kiln", shop.now() + minutes{5});
  REQUIRE_FALSE(proposal);
  CHECK_THAT(proposal.problems().back().remedy, Catch::Contains("stays where it was"));
}

TEST_CASE("a firing that is gone cannot be moved, and says so") {
  test::SmallShop shop;
  CHECK(try_firing(shop.sight(), 99, "Long kiln", shop.now()).reasons ==
        std::vector<std::string>{"The firing is no longer only booked."});
}
