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

TEST_CASE(
    "a kiln coasts by one time constant to the room plus a part in e of its height above it") {
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
  db::Row("firing_blade")
      .set("firing_id", firing)
      .set("blade_id", shop.blade)
      .set("position", 1)
      .insert(shop.shop);
  KilnMemory memory;
  const std::string text = in_words(board_of(shop.sight(), "5", std::nullopt, memory));
  CHECK_THAT(text, Catch::Contains("Long kiln: 200 °C soak with 61 (selected)"));
}

TEST_CASE("a firing may not go where its kiln would have to be switched on before now") {
  test::SmallShop shop;
  shop.firing(5, shop.now() + hours{2});
  KilnMemory memory;
  const FiringPlace place{5, "Long kiln", shop.now() + minutes{5}};
  const MoveTrial trial = try_firing(shop.sight(), place, memory);
  CHECK_FALSE(trial.may);
  CHECK_THAT(trial.reasons.front(), Catch::Contains("before now"));
  const auto proposal = propose(shop.sight(), place, memory);
  REQUIRE_FALSE(proposal);
  CHECK_THAT(proposal.problems().back().remedy, Catch::Contains("stays where it was"));
}

TEST_CASE("a firing that is gone cannot be moved, and says so") {
  test::SmallShop shop;
  KilnMemory memory;
  CHECK(try_firing(shop.sight(), {99, "Long kiln", shop.now()}, memory).reasons ==
        std::vector<std::string>{"The firing is no longer only booked."});
}

namespace {

/// Blade 61 booked to temper at noon, two hours at 200 C.
struct ToTemper : test::SmallShop {
  KilnMemory memory;
  ToTemper() {
    const auto step_row = step(1, "temper", Temperature::celsius(200));
    db::Row("route_step").set("soak_s", 7200).set("soak_max_s", 10'800).update(shop, step_row);
    db::Row("firing_blade").set("firing_id", firing(5, now() + hours{2})).set("blade_id", blade)
        .set("route_step_id", step_row).set("position", 1).insert(shop);
  }
  MoveTrial held_at(Instant start) { return try_firing(sight(), {5, "Long kiln", start}, memory); }
  KilnBoard board(Instant at) {
    return board_of(desk::Sight{shop, settings, at}, "5", std::nullopt, memory);
  }
};

}  // namespace

TEST_CASE("a firing held outside the hours says why not, and may be put there with a reason") {
  ToTemper shop;
  CHECK(shop.held_at(shop.now() + hours{3}).may);
  const MoveTrial late =
      shop.held_at(shop.now() + hours{7});  // to 19:10; the bench closes at 18:00
  CHECK_FALSE(late.may);
  CHECK(late.may_set_aside);
  CHECK_THAT(late.reasons.front(), Catch::Contains("you are not at the bench all that time"));
  const MoveTrial early = shop.held_at(shop.now() + minutes{5});
  CHECK_FALSE(early.may);
  CHECK_FALSE(early.may_set_aside);  // no reason makes a kiln hot sooner
  CHECK_THAT(early.reasons.front(), Catch::Contains("cannot be at 200"));
  CHECK_FALSE(shop.held_at(shop.now() - hours{1}).may_set_aside);
}

TEST_CASE("a firing whose time has passed unlogged is a conflict on the board, in words") {
  ToTemper shop;
  CHECK(shop.board(shop.now()).lanes.front().conflicts.empty());
  const KilnBoard later = shop.board(shop.now() + hours{3});
  REQUIRE(later.lanes.front().conflicts.size() == 1);
  CHECK(later.lanes.front().conflicts.front().firing == "5");
  CHECK_THAT(in_words(later), Catch::Contains("Firing 5 does not fit: Its time has passed"));
}

TEST_CASE("nothing is drawn as recorded that no logger wrote") {
  ToTemper shop;
  db::Row("firing")
      .set("state", "done")
      .set("actual_start", shop.now() - hours{4})
      .set("actual_end", shop.now() - hours{2})
      .set("starts_at", shop.now() - hours{4})
      .set("ends_at", shop.now() - hours{2})
      .set("heat_from", shop.now() - hours{5})
      .update(shop.shop, 1);
  const KilnBoard board = shop.board(shop.now());
  REQUIRE_FALSE(board.lanes.front().firings.empty());
  CHECK(board.lanes.front().firings.front().recorded.empty());
  CHECK_FALSE(board.lanes.front().firings.front().planned.empty());
}

TEST_CASE("the board goes along time, and back to now") {
  ToTemper shop;
  const Instant usual = shop.board(shop.now()).from;
  shop.memory.shift = hours{24};
  CHECK(shop.board(shop.now()).from == usual + hours{24});
}

TEST_CASE("the kiln place says which kilns are planned by plate values") {
  ToTemper shop;
  const PlaceView view = kiln_view(shop.sight(), "5", std::nullopt, shop.memory);
  CHECK_THAT(as_text(view.sheet),
             Catch::Contains("The Long kiln is planned by the values on its plate"));
}

TEST_CASE("a plan tells how far it has come and stops when it is told") {
  ToTemper shop;
  std::atomic<bool> stop{true};
  const KilnProposal proposal = plan_kilns(shop.sight(), 600, {stop});
  CHECK_THAT(as_text(kiln_view(shop.sight(), "5", proposal, shop.memory).sheet),
             Catch::Contains("plate values"));
  CHECK(proposal.take.action == "accept_plan");
}
