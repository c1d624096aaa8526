// SPDX-License-Identifier: MIT
#include <filesystem>
#include <fstream>

#include "db/row.h"
#include "db/store/consumable_store.h"
#include "db/store/lot_store.h"
#include "db/store/piece_store.h"
#include "db/store/reservation_store.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

std::string scratch_file(const std::string& name, const std::string& bytes) {
  const auto path = std::filesystem::temp_directory_path() / ("tangmark_" + name);
  std::ofstream(path, std::ios::binary) << bytes;
  return path.string();
}

}  // namespace

TEST_CASE("a lot of steel becomes tagged bars that weigh what their sizes say") {
  Maker maker;
  CHECK(maker.lot() == "1");
  const auto lot = db::find_lot(maker.shop, 1);
  REQUIRE(lot);
  CHECK(lot->document == stock::SupplyDocument::type_3_1);
  CHECK(lot->mark_matched);
  const auto bars = db::pieces_of_lot(maker.shop, lot->id);
  REQUIRE(bars.size() == 2);
  CHECK(bars[0].tag == "1-1");
  CHECK(bars[1].tag == "1-2");
  // 1000 x 50 x 4 mm at 7850 kg/m3 is 1570 g.
  CHECK(bars[0].mass == Mass::grams(1570));
  CHECK(bars[0].mark == stock::PieceMark::carries_the_mark);
}

TEST_CASE("a weighed lot is shared over its bars to the microgram") {
  Maker maker;
  maker.did("receive_lot", {{"name", "lumps"}, {"mass", "1 kg"}, {"count", "3"}, {"price", "0"}});
  Mass sum;
  for (const auto& piece : db::list_pieces(maker.shop)) sum = sum + piece.mass;
  CHECK(sum == Mass::grams(1000));
}

TEST_CASE("a lot that cannot be is refused at its field and nothing changes") {
  Maker maker;
  const db::Given good{{"name", "bar"},    {"section", "flat"}, {"thickness", "4 mm"},
                       {"width", "50 mm"}, {"length", "1 m"},   {"price", "30.00"}};
  const auto with = [&](const std::string& field, const std::string& value) {
    db::Given given = good;
    given[field] = value;
    return given;
  };
  const auto without = [&](const std::string& field) {
    db::Given given = good;
    given.erase(field);
    return given;
  };
  check_refused(maker, "receive_lot", without("name"), "name");
  check_refused(maker, "receive_lot", without("price"), "price");
  check_refused(maker, "receive_lot", without("section"), "section");
  check_refused(maker, "receive_lot", without("width"), "width");
  check_refused(maker, "receive_lot", with("section", "round"), "diameter");
  check_refused(maker, "receive_lot", with("kind", "cheese"), "kind");
  check_refused(maker, "receive_lot", with("thickness", "-4 mm"), "thickness");
  check_refused(maker, "receive_lot", with("length", "3 kg"), "length");
  check_refused(maker, "receive_lot", with("count", "0"), "count");
  check_refused(maker, "receive_lot", with("mass", "9 kg"), "mass");
  check_refused(maker, "receive_lot", with("mark_matched", "yes"), "melt_number");
  check_refused(maker, "receive_lot", with("analysis", "Xx:1"), "analysis");
  check_refused(maker, "receive_lot", with("stated_layers", "120"), "bought_as");
  check_refused(maker, "receive_lot", with("price", "-3.00"), "price");
  check_refused(maker, "receive_lot", with("owner", "44"), "owner");
  check_refused(maker, "receive_lot", with("photo", "/no/such/file.jpg"), "photo");
  check_refused(maker, "receive_lot", with("at", "2030-01-01"), "at");
  check_refused(maker, "receive_lot", with("colour", "red"), "colour");
}

TEST_CASE("a picture that is not a picture is refused, a real one is kept with the lot") {
  Maker maker;
  db::Given given{{"name", "bar"}, {"mass", "1 kg"}, {"price", "30.00"}};
  given["photo"] = scratch_file("not.jpg", "this is no picture");
  check_refused(maker, "receive_lot", given, "photo");
  given.erase("photo");
  given["document_file"] = scratch_file("not.pdf", "words");
  check_refused(maker, "receive_lot", given, "document_file");
  given["document_file"] = scratch_file("scan.pdf", "%PDF-1.4 scanned");
  maker.did("receive_lot", given);
  db::Query kept(maker.shop, "SELECT kind, media_type, subject FROM attachment");
  REQUIRE(kept.next());
  CHECK(kept.text("kind") == "document");
  CHECK(kept.text("media_type") == "application/pdf");
  CHECK(kept.text("subject") == "lot");
}

TEST_CASE("an analysis outside the grade's limits is remarked on and kept as printed") {
  Maker maker;
  const auto result = maker.tries("receive_lot", {{"name", "bar"},
                                                  {"grade", "1095"},
                                                  {"mass", "1 kg"},
                                                  {"price", "9.00"},
                                                  {"document", "3.1"},
                                                  {"analysis", "C:1.30,Mn:0.40"}});
  CHECK(warns(result, "C 1.3"));
  CHECK(db::find_lot(maker.shop, 1)->analysis == "C:1.3,Mn:0.4");
}

TEST_CASE("the newest lot of a grade is what the grade costs today") {
  Maker maker;
  maker.lot();
  maker.now += std::chrono::hours(24);
  maker.did("receive_lot",
            {{"name", "bar"}, {"grade", "80crv2"}, {"mass", "2 kg"}, {"price", "50.00"}});
  const auto lot = db::latest_lot_of_grade(maker.shop, "80CrV2");
  REQUIRE(lot);
  CHECK(lot->number == 2);
  CHECK_FALSE(db::latest_lot_of_grade(maker.shop, "O1"));
}

TEST_CASE("consumables are counted down against their floor") {
  Maker maker;
  const auto lot = maker.did("receive_lot", {{"kind", "belt"},
                                             {"name", "belt 36"},
                                             {"quantity", "4"},
                                             {"unit", "belt"},
                                             {"floor", "3"},
                                             {"price", "32.00"}});
  maker.did("use_consumable", {{"lot", lot}, {"quantity", "0.5"}});
  const auto second = maker.tries("use_consumable", {{"lot", lot}, {"quantity", "1"}});
  CHECK(warns(second, "below the floor of 3"));
  const auto levels = db::consumable_levels(maker.shop);
  REQUIRE(levels.size() == 1);
  CHECK(quantity_text(levels[0].left) == "2.5");
  CHECK(levels[0].below_floor());
  check_refused(maker, "use_consumable", {{"lot", lot}, {"quantity", "2.6"}}, "quantity");
  check_refused(maker, "use_consumable", {{"lot", lot}, {"quantity", "0"}}, "quantity");
  check_refused(maker, "use_consumable", {{"lot", "9"}}, "lot");
  check_refused(maker, "use_consumable", {{"lot", maker.lot()}}, "lot");
}

TEST_CASE("a customer's material is kept apart and given back") {
  Maker maker;
  const auto owner = maker.buyer();
  const auto lot = maker.did(
      "receive_lot", {{"name", "grandfather's spring"}, {"owner", owner}, {"mass", "1.2 kg"}});
  check_refused(maker, "return_material", {{"lot", lot}}, "note");
  check_refused(maker, "return_material", {{"lot", maker.lot()}, {"note", "all"}}, "lot");
  maker.did("return_material", {{"lot", lot}, {"note", "1.2 kg, unused"}});
  CHECK(db::find_piece(maker.shop, lot + "-1")->state == stock::PieceState::returned);
  check_refused(maker, "return_material", {{"lot", lot}, {"note", "again"}}, "lot");
}

TEST_CASE("a bath is added once and checked in order") {
  Maker maker;
  maker.did("add_bath",
            {{"name", "oil tank"}, {"medium", "medium oil"}, {"low", "40 C"}, {"high", "70 C"}});
  check_refused(maker, "add_bath", {{"name", "oil tank"}, {"medium", "brine"}}, "name");
  check_refused(maker, "add_bath",
                {{"name", "x"}, {"medium", "oil"}, {"low", "70 C"}, {"high", "40 C"}}, "high");
  maker.now += std::chrono::hours(24);
  maker.did("check_bath", {{"bath", "oil tank"}, {"strength", "20 %"}});
  check_refused(maker, "check_bath", {{"bath", "oil tank"}, {"at", "2026-11-25 08:00"}}, "at");
  maker.did("check_bath", {{"bath", "oil tank"}, {"retired", "yes"}});
  check_refused(maker, "check_bath", {{"bath", "oil tank"}}, "bath");
}
