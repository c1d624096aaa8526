// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "gui/desk/bench.h"
#include "tests/unit/desk/small_shop.h"

using namespace tangmark;
using namespace tangmark::desk;
using std::chrono::minutes;

namespace {

// A hardening of blade 61 that was loaded so many minutes ago.
void hardening(test::SmallShop& shop, minutes loaded_ago) {
  const auto step = shop.step(1, "harden", Temperature::celsius(815));
  const Instant start = shop.now() - loaded_ago;
  const auto firing = db::Row("firing")
                          .set("number", 7)
                          .set("kiln_id", shop.kiln)
                          .set("kind", "harden")
                          .set("set_k1800", Temperature::celsius(815))
                          .set("soak_s", 600)
                          .set("starts_at", start)
                          .set("ends_at", start + minutes{30})
                          .set("heat_from", start - minutes{50})
                          .set("state", "booked")
                          .set("energy_j", 0)
                          .insert(shop.shop);
  db::Row("firing_blade")
      .set("firing_id", firing)
      .set("blade_id", shop.blade)
      .set("route_step_id", step)
      .set("position", 1)
      .insert(shop.shop);
}

// Blade 62 in the same firing.
void second_blade(test::SmallShop& shop) {
  db::Query firing(shop.shop, "SELECT max(id) AS id FROM firing");
  REQUIRE(firing.next());
  const auto blade = db::Row("blade")
                         .set("number", 62)
                         .set("title", "Hunter")
                         .set("construction", "monosteel")
                         .set("grade", "1084")
                         .set("length_nm", Length::millimetres(110))
                         .set("started_at", shop.now())
                         .insert(shop.shop);
  db::Row("firing_blade")
      .set("firing_id", firing.integer("id"))
      .set("blade_id", blade)
      .set("position", 2)
      .insert(shop.shop);
}

}  // namespace

TEST_CASE("the bench names the blade to take out and what its target records") {
  test::SmallShop shop;
  hardening(shop, minutes{11});
  const BenchView bench = bench_view(shop.sight());
  CHECK(bench.number == "61");
  CHECK(bench.progress == "0 of 1 quenched");
  REQUIRE(bench.record);
  CHECK(bench.record->action == "log_quench");
  CHECK(bench.record->fields.at("blade") == "61");
  CHECK(bench.record->fields.at("set") == "815 °C");
  CHECK(bench.tiles.front().value == "11:00");
}

TEST_CASE("nothing can be recorded before the kiln is loaded") {
  test::SmallShop shop;
  hardening(shop, minutes{-20});
  CHECK_FALSE(bench_view(shop.sight()).record);
}

TEST_CASE("when all are quenched the clock to the temper is what counts") {
  test::SmallShop shop;
  hardening(shop, minutes{20});
  shop.logged("harden", shop.now() - minutes{5});
  const BenchView bench = bench_view(shop.sight());
  CHECK(bench.sentence == "All are quenched");
  CHECK_FALSE(bench.record);
  CHECK(bench.wait == "1:25:00");  // 90 minutes allowed, 5 of them gone
}

TEST_CASE("the quench logged last can be taken back, and stays readable") {
  test::SmallShop shop;
  hardening(shop, minutes{20});
  CHECK_FALSE(bench_view(shop.sight()).undo);
  const auto entry = shop.logged("harden", shop.now() - minutes{5});
  const BenchView bench = bench_view(shop.sight());
  REQUIRE(bench.undo);
  CHECK(bench.undo->action == "correct");
  CHECK(bench.undo->fields.at("id") == std::to_string(entry));
  CHECK(bench.undo->fields.at("field") == "all");
}

TEST_CASE("a blade put off comes last, and says who goes first") {
  test::SmallShop shop;
  hardening(shop, minutes{11});
  CHECK(bench_view(shop.sight()).put_off.empty());  // nobody else waits
  second_blade(shop);
  CHECK(bench_view(shop.sight()).put_off == "Not yet, 62 first");
  const BenchView bench = bench_view(shop.sight(), {"61"});
  CHECK(bench.number == "62");
  CHECK(bench.order.back().number == "61");
}

TEST_CASE("with no hardening at hand the bench says so") {
  test::SmallShop shop;
  CHECK(bench_view(shop.sight()).sentence == "No hardening is at hand");
}
