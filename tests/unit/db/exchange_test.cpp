// SPDX-License-Identifier: MIT
#include <SQLiteCpp/SQLiteCpp.h>

#include <catch2/catch.hpp>

#include "db/backup.h"
#include "db/exchange/day_book.h"
#include "db/exchange/export.h"
#include "db/history.h"
#include "db/row.h"
#include "tests/scratch.h"
#include "tests/shop_fixture.h"

using namespace tangmark;
using namespace tangmark::test;
namespace fs = std::filesystem;

namespace {

db::ShopFile shop_with_a_bit_of_everything(const fs::path& path) {
  auto made = db::ShopFile::create(path, bench_day);
  REQUIRE(made);
  db::ShopFile shop = std::move(made).value();
  REQUIRE(db::perform(shop, "change_setting",
                      {{"name", "shop_name"}, {"value", "Reed, \"bank\"\nForge"}}, bench_day));
  REQUIRE(db::perform(shop, "add_day_off", {{"day", "2026-12-24"}}, bench_day));
  db::Row("customer")
      .set("name", "Ilse Varn")
      .set("contact", "")
      .set("note", "\\ odd")
      .set_bytes("salt", "0123456789abcde\x01")
      .set("added_at", bench_day)
      .insert(shop);
  db::Row("attachment")
      .set("kind", "photo")
      .set("name", "a.jpg")
      .set("media_type", "image/jpeg")
      .set_bytes("bytes", std::string("\xff\xd8\xff\x00\x01", 5))
      .set("added_at", bench_day)
      .set("subject", "lot")
      .set("subject_id", 1)
      .insert(shop);
  return shop;
}

std::string whole_folder(const fs::path& folder) {
  std::vector<fs::path> names;
  for (const auto& entry : fs::recursive_directory_iterator(folder))
    if (entry.is_regular_file()) names.push_back(entry.path());
  std::sort(names.begin(), names.end());
  std::string all;
  for (const auto& name : names)
    all += fs::relative(name, folder).string() + "\n" + bytes_of(name) + "\n";
  return all;
}

}  // namespace

TEST_CASE("an exported shop imports as the same shop, byte for byte in a second export") {
  Scratch scratch;
  auto shop = shop_with_a_bit_of_everything(scratch / "shop.tangmark");
  REQUIRE(db::export_shop(shop, scratch / "one"));
  auto breaks = db::import_shop(scratch / "one", scratch / "again.tangmark", bench_day);
  REQUIRE(breaks);
  CHECK(breaks->empty());
  auto again = db::ShopFile::open(scratch / "again.tangmark", bench_day);
  REQUIRE(again);
  CHECK(content_of(*again) == content_of(shop));
  REQUIRE(db::export_shop(*again, scratch / "two"));
  CHECK(whole_folder(scratch / "one") == whole_folder(scratch / "two"));
}

TEST_CASE("what an earlier program exported comes in, and is brought up to date") {
  Scratch scratch;
  {
    auto made = db::ShopFile::create_at_step(scratch / "old.tangmark", bench_day, 1);
    REQUIRE(made);
    db::Row("customer")
        .set("name", "Ilse Varn")
        .set_bytes("salt", "0123456789abcdef")
        .set("added_at", bench_day)
        .insert(*made);
    REQUIRE(db::export_shop(*made, scratch / "old"));
  }
  fs::remove(scratch / "old" / "schema.csv");  // the first exports had none
  const auto breaks = db::import_shop(scratch / "old", scratch / "new.tangmark", bench_day);
  REQUIRE(breaks);
  CHECK(breaks->empty());
  auto shop = db::ShopFile::open(scratch / "new.tangmark", bench_day);
  REQUIRE(shop);
  CHECK(shop->step() == db::ShopFile::in_memory(bench_day).step());
  db::Query customer(*shop, "SELECT name FROM customer");
  REQUIRE(customer.next());
  CHECK(customer.text("name") == "Ilse Varn");
}

TEST_CASE("a folder of a newer program is refused and no file is made") {
  Scratch scratch;
  auto shop = shop_with_a_bit_of_everything(scratch / "shop.tangmark");
  REQUIRE(db::export_shop(shop, scratch / "one"));
  write_file(scratch / "one" / "schema.csv", "step\r\n99\r\n");
  const auto read = db::import_shop(scratch / "one", scratch / "new.tangmark", bench_day);
  REQUIRE_FALSE(read);
  CHECK(read.problem().field == "schema.csv");
  CHECK_FALSE(fs::exists(scratch / "new.tangmark"));
}

TEST_CASE("an import of a spoilt folder names file and line and leaves no file") {
  Scratch scratch;
  auto shop = shop_with_a_bit_of_everything(scratch / "shop.tangmark");
  REQUIRE(db::export_shop(shop, scratch / "one"));
  std::string names;
  SECTION("a wrong column") {
    write_file(scratch / "one" / "day_off.csv", "id,tag,why\r\n1,2026-12-24,\r\n");
    names = "day_off.csv";
  }
  SECTION("words for a number") {
    write_file(scratch / "one" / "day_off.csv", "id,day,why\r\nfirst,2026-12-24,\r\n");
    names = "line 2";
  }
  SECTION("a missing table") {
    fs::remove(scratch / "one" / "customer.csv");
    names = "customer.csv";
  }
  SECTION("broken bytes") {
    write_file(scratch / "one" / "day_off.csv", "id,day,why\r\n1,2026-12-24,\xff\xfe\r\n");
    names = "day_off.csv";
  }
  SECTION("a missing photo") {
    fs::remove_all(scratch / "one" / "files");
    names = "attachment.csv";
  }
  auto refused = db::import_shop(scratch / "one", scratch / "again.tangmark", bench_day);
  REQUIRE_FALSE(refused);
  CHECK(refused.problem().field.find(names) != std::string::npos);
  CHECK_FALSE(fs::exists(scratch / "again.tangmark"));
}

TEST_CASE("an edited table shows when it is imported") {
  Scratch scratch;
  auto shop = shop_with_a_bit_of_everything(scratch / "shop.tangmark");
  REQUIRE(db::export_shop(shop, scratch / "one"));
  write_file(scratch / "one" / "day_off.csv", "id,day,why\r\n1,2026-12-25,\r\n");
  auto breaks = db::import_shop(scratch / "one", scratch / "again.tangmark", bench_day);
  REQUIRE(breaks);
  CHECK(breaks->size() == 1);
}

TEST_CASE("a backup stands alone and comes back as the same shop") {
  Scratch scratch;
  auto shop = shop_with_a_bit_of_everything(scratch / "shop.tangmark");
  REQUIRE(db::back_up(shop, scratch / "copy.tangmark"));
  CHECK_FALSE(db::back_up(shop, scratch / "copy.tangmark"));
  REQUIRE(db::restore(scratch / "copy.tangmark", scratch / "back.tangmark", bench_day));
  auto back = db::ShopFile::open(scratch / "back.tangmark", bench_day);
  REQUIRE(back);
  CHECK(content_of(*back) == content_of(shop));
  CHECK_FALSE(db::restore(scratch / "none.tangmark", scratch / "x.tangmark", bench_day));
}

TEST_CASE("a damaged file gives up what can still be read") {
  Scratch scratch;
  {
    auto shop = shop_with_a_bit_of_everything(scratch / "shop.tangmark");
    shop.database().exec("PRAGMA wal_checkpoint(TRUNCATE)");
  }
  std::string bytes = bytes_of(scratch / "shop.tangmark");
  for (std::size_t i = bytes.size() - 8000; i < bytes.size(); ++i) bytes[i] = 'x';
  write_file(scratch / "shop.tangmark", bytes);
  auto sentences = db::rescue(scratch / "shop.tangmark", scratch / "saved");
  REQUIRE(sentences);
  CHECK(bytes_of(scratch / "saved" / "setting.csv").find("shop_name") != std::string::npos);
  CHECK(bytes_of(scratch / "shop.tangmark") == bytes);
}

TEST_CASE("a day book is done line by line in the order of time") {
  ShopOnTheBench bench;
  const std::vector<db::DayBook> books{
      {"one.daybook",
       "# the sign\nday -3\n09:30 change_setting name=shop_name\n      value=\"Reed bank\"\n"
       "day 0\n07:00 add_day_off day=+7d why=market\n"},
      {"two.daybook",
       "day -5\n08:00 change_setting name=shop_name value=\"Old name\" as=first\n"
       "day -2\n08:00 change_setting name=maker_name value=$first\n"}};
  auto done = db::perform_day_books(bench.shop, books, bench_day);
  REQUIRE(done);
  CHECK(*done == 4);
  CHECK(content_of(bench.shop).find("|shop_name|Reed bank") != std::string::npos);
  CHECK(content_of(bench.shop).find("|maker_name|shop_name") != std::string::npos);
  CHECK(content_of(bench.shop).find("|2026-12-02|market") != std::string::npos);
}

TEST_CASE("a day book reckons minutes before now and times on later days") {
  ShopOnTheBench bench;
  auto done = db::perform_day_books(bench.shop,
                                    {{"now.daybook",
                                      "-53m change_setting name=shop_name value=+1d@9:10\n-52m "
                                      "change_setting name=maker_name value=@7:00\n"}},
                                    bench_day);
  REQUIRE(done);
  CHECK(content_of(bench.shop).find("|shop_name|2026-11-26 9:10") != std::string::npos);
  CHECK(content_of(bench.shop).find("|maker_name|2026-11-25 7:00") != std::string::npos);
  CHECK(db::latest_history(bench.shop, 1).at(0).at == bench_day - std::chrono::minutes(52));
}

TEST_CASE("a day book with one bad line changes nothing and names the line") {
  ShopOnTheBench bench;
  const std::string before = content_of(bench.shop);
  auto line =
      GENERATE(as<std::string>{}, "09:00 no_such_action a=b",
               "09:00 change_setting name=none value=1", "add_day_off day=+1d",
               "09:00 add_day_off day=$unknown", "09:00 add_day_off \"day=+1d", "day someday");
  auto refused = db::perform_day_books(
      bench.shop, {{"bad.daybook", "day -3\n08:00 add_day_off day=2026-12-24\n" + line + "\n"}},
      bench_day);
  REQUIRE_FALSE(refused);
  CHECK(refused.problem().field.find("bad.daybook, line 3") != std::string::npos);
  CHECK(content_of(bench.shop) == before);
}

TEST_CASE("a table adds its rows all or none") {
  ShopOnTheBench bench;
  const auto* action = db::find_action("add_day_off");
  REQUIRE(action);
  auto done = db::perform_table(bench.shop, *action, "days.csv",
                                "day,why\r\n2026-12-24,market\r\n2026-12-27,\r\n", bench_day);
  REQUIRE(done);
  CHECK(*done == 2);
  const std::string before = content_of(bench.shop);
  auto bad = GENERATE(as<std::string>{}, "day,why\r\n2026-12-28,x\r\n2026-13-01,y\r\n", "",
                      "day,weather\r\n2026-12-28,dry\r\n", "day,why\r\n2026-12-28\r\n",
                      "day,why\r\n\"2026-12-28,x\r\n", "day,why\r\n2026-12-28,\xff\r\n");
  auto refused = db::perform_table(bench.shop, *action, "days.csv", bad, bench_day);
  CHECK_FALSE(refused);
  CHECK(content_of(bench.shop) == before);
}
