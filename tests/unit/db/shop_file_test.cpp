// SPDX-License-Identifier: MIT
#include "db/shop_file.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <catch2/catch.hpp>

#include "db/history.h"
#include "db/schema/steps.h"
#include "db/store/blade_store.h"
#include "db/store/dossier_reader.h"
#include "db/store/log_store.h"
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
  SECTION("text") {
    test::write_file(path, "not a database, far from it");
  }
  SECTION("an empty file") {
    test::write_file(path, "");
  }
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
  auto change =
      db::perform(*shop, "change_setting", {{"name", "shop_name"}, {"value", "X"}}, bench_day);
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
  REQUIRE(db::perform(first, "change_setting", {{"name", "shop_name"}, {"value", "Reedbank Forge"}},
                      bench_day));
  CHECK(two->changes_by_others() != before);
  CHECK(
      two->database().execAndGet("SELECT value FROM setting WHERE name='shop_name'").getString() ==
      "Reedbank Forge");
}

TEST_CASE(
    "a name that history kept in clear is hashed when the file is taken forward, its chain whole") {
  constexpr int step_before = 9;
  Scratch scratch;
  const auto path = scratch / "old.tangmark";
  {
    auto old = ShopFile::create_at_step(path, bench_day, step_before);
    REQUIRE(old);
    old->database().exec(R"(
INSERT INTO blade(number, title, construction, length_nm, started_at)
  VALUES(11, 'petty', 'monosteel', 150000000, '2026-11-25T09:00:00Z');
INSERT INTO certificate_words(blade_id, made_for) VALUES(last_insert_rowid(), 'M. Tidewell');
UPDATE certificate_words SET made_for = 'Ann "Reed" Tidewell', notes = 'one of a pair';
INSERT INTO setting(name, value) VALUES('something_later', 'x'))");
    REQUIRE(db::check_history(*old).empty());
    REQUIRE(test::content_of(*old).find("Tidewell") != std::string::npos);
  }
  auto shop = ShopFile::open(path, bench_day);
  REQUIRE(shop);
  CHECK(db::check_history(*shop).empty());
  CHECK(shop->database().execAndGet("SELECT made_for FROM certificate_words").getString() ==
        "Ann \"Reed\" Tidewell");
  CHECK(shop->database()
            .execAndGet("SELECT count(*) FROM history WHERE instr(coalesce(old, '') || "
                        "coalesce(new, ''), 'Tidewell') > 0")
            .getInt() == 0);
}

TEST_CASE(
    "a file of schema step 1 is taken forward, with all that was in it and its history whole") {
  Scratch scratch;
  const auto path = scratch / "old.tangmark";
  {
    SQLite::Database old(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    old.exec(bytes_of(TANGMARK_TESTS_DIR "/unit/db/old_files/step_001.sql"));
  }
  auto shop = ShopFile::open(path, bench_day);
  REQUIRE(shop);
  CHECK_FALSE(shop->read_only());
  CHECK(std::filesystem::exists(scratch / "old.before-step-2.tangmark"));
  CHECK(db::check_history(*shop).empty());
  const auto log = db::log_of(*shop, db::find_blade(*shop, 11)->id);
  REQUIRE(log.size() == 1);
  CHECK(log.front().resist == true);
  CHECK_FALSE(log.front().etch_for);
  // The purpose of an etch of before is read off its note, as it was then.
  const auto dossier = db::read_dossier(*shop, "11");
  REQUIRE(dossier);
  CHECK(dossier->log.front().etch->purpose == certificate::EtchPurpose::makers_mark);
}
