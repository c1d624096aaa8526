// SPDX-License-Identifier: MIT
// A disk that takes no more leaves the shop as it was, and says so.
#include <catch2/catch.hpp>

#include <fstream>

#include "db/actions/action.h"
#include "db/backup.h"
#include "db/check.h"
#include "db/exchange/export.h"
#include "db/row.h"
#include "db/shop_file.h"
#include "tests/scratch.h"

using namespace tangmark;

namespace {

Instant noon() { return date::sys_days{date::year{2026} / 11 / 25} + std::chrono::hours(12); }

}  // namespace

TEST_CASE("a shop file that may grow no further refuses a change and stays sound") {
  const test::Scratch scratch;
  auto shop = db::ShopFile::create(scratch / "shop.tangmark", noon());
  REQUIRE(shop);
  REQUIRE(db::perform(*shop, "new_customer", {{"name", "Ida Holm"}}, noon()));
  {
    db::Query limit(*shop, "PRAGMA max_page_count = 1");  // never below what is in use
    limit.next();
  }
  // Each change is small; sooner or later one finds no room.
  const std::string address(15'000, 'x');
  const auto fill = [&] {
    for (int i = 0; i < 1000; ++i)
      if (!db::perform(*shop, "new_customer", {{"name", "Jon Ek"}, {"address", address}}, noon()))
        break;
  };
  CHECK_THROWS_WITH(fill(), Catch::Contains("full"));
  db::Query count(*shop, "SELECT count(*) AS n FROM customer");
  REQUIRE(count.next());
  CHECK(count.integer("n") == 1);
  CHECK(db::check_shop(*shop).wrong.empty());
}

TEST_CASE("a backup or an export to a place that takes nothing says so") {
  const test::Scratch scratch;
  auto shop = db::ShopFile::create(scratch / "shop.tangmark", noon());
  REQUIRE(shop);
  const auto backup = db::back_up(*shop, "/dev/full/backup.tangmark");
  REQUIRE_FALSE(backup);
  CHECK(!backup.problem().remedy.empty());
  const auto exported = db::export_shop(*shop, "/proc/shop-export");
  REQUIRE_FALSE(exported);
  CHECK(!exported.problem().remedy.empty());
}
