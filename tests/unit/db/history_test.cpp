// SPDX-License-Identifier: MIT
#include "db/history.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <catch2/catch.hpp>

#include "db/row.h"
#include "tests/shop_fixture.h"

using namespace tangmark;
using tangmark::test::content_of;
using tangmark::test::ShopOnTheBench;

namespace {

void set_name(ShopOnTheBench& bench, const std::string& name) {
  bench.did("change_setting", {{"name", "shop_name"}, {"value", name}, {"note_why", "new sign"}});
}

}  // namespace

TEST_CASE("every change is appended with old, new, action and reason") {
  ShopOnTheBench bench;
  set_name(bench, "Reedbank");
  bench.now += std::chrono::hours(1);
  set_name(bench, "Reedbank Forge");
  const auto latest = db::latest_history(bench.shop, 1);
  REQUIRE(latest.size() == 1);
  CHECK(latest[0].action == "change_setting");
  CHECK(latest[0].reason == "new sign");
  CHECK(latest[0].at == bench.now);
  CHECK(latest[0].before.find("\"Reedbank\"") != std::string::npos);
  CHECK(latest[0].after.find("\"Reedbank Forge\"") != std::string::npos);
  CHECK(db::check_history(bench.shop).empty());
}

TEST_CASE("a refused action leaves the shop as it was") {
  ShopOnTheBench bench;
  set_name(bench, "Reedbank");
  const std::string before = content_of(bench.shop);
  CHECK_FALSE(bench.tries("change_setting", {{"name", "hourly_rate"}, {"value", "a lot"}}));
  CHECK_FALSE(bench.tries("change_setting", {{"name", "no_such"}, {"value", "1"}}));
  CHECK_FALSE(bench.tries("change_setting", {{"nmae", "shop_name"}}));
  CHECK_FALSE(bench.tries("add_day_off", {{"day", "2026-02-30"}}));
  CHECK(content_of(bench.shop) == before);
}

TEST_CASE("a silent edit shows") {
  ShopOnTheBench bench;
  set_name(bench, "Reedbank");
  bench.did("add_day_off", {{"day", "2026-12-24"}, {"why", "market"}});
  SECTION("of a row, with the trigger taken out and put back") {
    db::drop_history_triggers(bench.shop.database());
    bench.shop.database().exec("UPDATE setting SET value = 'Elsewhere' WHERE name = 'shop_name'");
    db::lay_history_triggers(bench.shop.database());
    const auto breaks = db::check_history(bench.shop);
    REQUIRE(breaks.size() == 1);
    CHECK(breaks[0].find("setting") != std::string::npos);
  }
  SECTION("of history itself") {
    db::drop_history_triggers(bench.shop.database());
    bench.shop.database().exec("UPDATE history SET reason = 'nothing' WHERE id = 2");
    db::lay_history_triggers(bench.shop.database());
    CHECK_FALSE(db::check_history(bench.shop).empty());
  }
  SECTION("of a row that was dropped") {
    db::drop_history_triggers(bench.shop.database());
    bench.shop.database().exec("DELETE FROM day_off");
    db::lay_history_triggers(bench.shop.database());
    CHECK_FALSE(db::check_history(bench.shop).empty());
  }
  SECTION("of the triggers") {
    db::drop_history_triggers(bench.shop.database());
    CHECK_FALSE(db::check_history(bench.shop).empty());
  }
}

TEST_CASE("history itself cannot be changed or shortened") {
  ShopOnTheBench bench;
  set_name(bench, "Reedbank");
  CHECK_THROWS(bench.shop.database().exec("DELETE FROM history"));
  CHECK_THROWS(bench.shop.database().exec("UPDATE history SET reason = 'x'"));
}

TEST_CASE("a person's fields enter history as salted hashes only") {
  ShopOnTheBench bench;
  db::Row row("customer");
  row.set("name", "Ilse Varn")
      .set("contact", "ilse@varn.example")
      .set_bytes("salt", "0123456789abcdef")
      .set("added_at", bench.now);
  const auto id = row.insert(bench.shop);
  CHECK(content_of(bench.shop).find("history|1|") != std::string::npos);
  const auto history = db::history_of(bench.shop, "customer", id);
  REQUIRE(history.size() == 1);
  CHECK(history[0].after.find("Ilse") == std::string::npos);
  db::Row("customer").set_null("name").set_null("contact").set_null("salt").update(bench.shop, id);
  CHECK(db::check_history(bench.shop).empty());
}
