// SPDX-License-Identifier: MIT
#include "db/shop_file.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <catch2/catch.hpp>

#include "db/schema/steps.h"
#include "tests/scratch.h"
#include "tests/shop_fixture.h"

using namespace tangmark;
using tangmark::db::ShopFile;
using tangmark::test::bench_day;
using tangmark::test::bytes_of;
using tangmark::test::Scratch;

TEST_CASE("a new shop file opens again and carries its mark") {
  Scratch scratch;
  const auto path = scratch / "shop.tangmark";
  { REQUIRE(ShopFile::create(path, bench_day)); }
  auto shop = ShopFile::open(path, bench_day);
  REQUIRE(shop);
  CHECK_FALSE(shop->read_only());
  CHECK(shop->database().execAndGet("PRAGMA application_id").getInt() == db::shop_application_id);
}

TEST_CASE("a shop file is never made over something that is there") {
  Scratch scratch;
  test::write_file(scratch / "notes.txt", "wood from the saw mill");
  auto shop = ShopFile::create(scratch / "notes.txt", bench_day);
  REQUIRE_FALSE(shop);
  CHECK(bytes_of(scratch / "notes.txt") == "wood from the saw mill");
}

TEST_CASE("a foreign file is refused with a sentence and untouched") {
  Scratch scratch;
  const auto path = scratch / "other.db";
  SECTION("text") { test::write_file(path, "not a database, far from it"); }
  SECTION("an empty file") { test::write_file(path, ""); }
  SECTION("another program's database") {
    SQLite::Database other(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    other.exec("CREATE TABLE cat(name)");
  }
  const std::string before = bytes_of(path);
  auto shop = ShopFile::open(path, bench_day);
  REQUIRE_FALSE(shop);
  CHECK_FALSE(shop.problem().sentence.empty());
  CHECK_FALSE(shop.problem().remedy.empty());
  CHECK(bytes_of(path) == before);
}

TEST_CASE("a damaged shop file is refused and untouched") {
  Scratch scratch;
  const auto path = scratch / "shop.tangmark";
  {
    auto shop = ShopFile::create(path, bench_day);
    REQUIRE(shop);
    shop->database().exec("PRAGMA wal_checkpoint(TRUNCATE)");
  }
  std::string bytes = bytes_of(path);
  for (std::size_t i = 4096; i < 20'000; ++i) bytes[i] = 'x';
  test::write_file(path, bytes);
  auto shop = ShopFile::open(path, bench_day);
  REQUIRE_FALSE(shop);
  CHECK(shop.problem().sentence.find("damaged") != std::string::npos);
  CHECK(bytes_of(path) == bytes);
}

TEST_CASE("a file from a newer program is open for reading only and says so") {
  Scratch scratch;
  const auto path = scratch / "shop.tangmark";
  {
    auto shop = ShopFile::create(path, bench_day);
    REQUIRE(shop);
    shop->database().exec("PRAGMA user_version = 4711");
  }
  auto shop = ShopFile::open(path, bench_day);
  REQUIRE(shop);
  CHECK(shop->read_only());
  CHECK(shop->notice().find("newer program") != std::string::npos);
  auto change = db::perform(*shop, "change_setting", {{"name", "shop_name"}, {"value", "X"}}, bench_day);
  CHECK_FALSE(change);
}

TEST_CASE("a missing file and a folder that cannot hold one are refused") {
  Scratch scratch;
  CHECK_FALSE(ShopFile::open(scratch / "nothing.tangmark", bench_day));
  CHECK_FALSE(ShopFile::create(scratch / "no-such-folder" / "shop.tangmark", bench_day));
}

TEST_CASE("two windows on one file see each other's changes") {
  Scratch scratch;
  const auto path = scratch / "shop.tangmark";
  REQUIRE(ShopFile::create(path, bench_day));
  auto one = ShopFile::open(path, bench_day);
  auto two = ShopFile::open(path, bench_day);
  REQUIRE(one);
  REQUIRE(two);
  ShopFile first = std::move(one).value();
  const auto before = two->changes_by_others();
  REQUIRE(db::perform(first, "change_setting", {{"name", "shop_name"}, {"value", "Reedbank Forge"}}, bench_day));
  CHECK(two->changes_by_others() != before);
  CHECK(two->database().execAndGet("SELECT value FROM setting WHERE name='shop_name'").getString() ==
        "Reedbank Forge");
}
