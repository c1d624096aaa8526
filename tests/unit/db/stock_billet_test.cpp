// SPDX-License-Identifier: MIT
#include "db/history.h"
#include "db/row.h"
#include "db/store/billet_store.h"
#include "db/store/family_tree.h"
#include "db/store/lot_store.h"
#include "db/store/piece_costs.h"
#include "db/store/piece_store.h"
#include "db/store/settings_store.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

// Nine layers from two bars of 1570 g each.
std::string stacked(Maker& maker) {
  maker.lot("1095");
  maker.lot("15N20");
  return maker.did("start_billet", {{"pieces", "1-1:5,2-1:4"}});
}

void weld(Maker& maker, const std::string& billet) {
  maker.did("weld_stage", {{"billet", billet},
                           {"mass_out", "2900 g"},
                           {"scale", "120 g"},
                           {"swarf", "120 g"},
                           {"temperature", "1150 C"},
                           {"flux", "borax"},
                           {"hands_on", "1h"}});
}

}  // namespace

TEST_CASE("layers are counted by the stack, its folds and its cuts") {
  Maker maker;
  const auto billet = stacked(maker);
  weld(maker, billet);
  maker.did("weld_stage", {{"billet", billet},
                           {"operation", "cut"},
                           {"pieces", "3"},
                           {"mass_out", "2800 g"},
                           {"swarf", "100 g"}});
  const auto folded = maker.tries(
      "weld_stage",
      {{"billet", billet}, {"operation", "fold"}, {"mass_out", "2600 g"}, {"scale", "200 g"}});
  CHECK(warns(folded, "54 layers"));
  CHECK(db::find_billet(maker.shop, 1)->layers == 54);  // 9 x 3 x 2
  CHECK(db::stages_of_billet(maker.shop, db::find_billet(maker.shop, 1)->id).size() == 3);
}

TEST_CASE("a billet costs its bars, its hours, and the gas and flux weighed for it") {
  Maker maker;
  const auto billet = stacked(maker);
  weld(maker, billet);
  const auto cost = [&] {
    return db::cost_of_billet(maker.shop, db::find_billet(maker.shop, 1)->id,
                              db::load_settings(maker.shop))
        ->cost;
  };
  const Money before = cost();
  const auto bought = [&](const char* kind, const char* name, const char* quantity,
                          const char* price) {
    return maker.did("receive_lot", {{"kind", kind},
                                     {"name", name},
                                     {"quantity", quantity},
                                     {"unit", "kg"},
                                     {"price", price}});
  };
  const auto gas = bought("gas", "propane", "11", "33.00");
  const auto flux = bought("other", "borax", "2", "9.00");
  maker.did("use_consumable", {{"lot", gas}, {"quantity", "2.5"}, {"billet", billet}});
  maker.did("use_consumable", {{"lot", flux}, {"quantity", "0.1"}, {"billet", billet}});
  // 2.5 kg at 3.00 and 0.1 kg at 4.50.
  CHECK(cost() - before == Money(750 + 45, before.currency()));
  const auto blade =
      maker.did("assign_blade", {{"title", "petty"}, {"grade", "O1"}, {"length", "150"}});
  check_refused(maker, "use_consumable",
                {{"lot", gas}, {"quantity", "1"}, {"billet", billet}, {"blade", blade}}, "billet");
}

TEST_CASE("a piece that went into a billet is not there any more") {
  Maker maker;
  stacked(maker);
  check_refused(maker, "start_billet", {{"pieces", "1-1,1-2"}}, "piece");
  check_refused(maker, "cut_piece", {{"piece", "1-1"}, {"length", "100 mm"}, {"mark", "rest"}},
                "piece");
}

TEST_CASE("a stack that cannot be is refused at its field") {
  Maker maker;
  maker.lot("1095");
  check_refused(maker, "start_billet", {{"pieces", "1-1"}}, "pieces");
  check_refused(maker, "start_billet", {{"pieces", "1-1:2,1-1:3"}}, "pieces");
  check_refused(maker, "start_billet", {{"pieces", "9-9:2"}}, "pieces");
  check_refused(maker, "start_billet", {{"pieces", "1-1:many"}}, "pieces");
  check_refused(maker, "start_billet", {{"kind", "laminated"}, {"pieces", "1-1:5,1-2:4"}},
                "pieces");
  check_refused(maker, "start_billet", {}, "pieces");
}

TEST_CASE("masses of a stage that do not balance ask") {
  Maker maker;
  const auto billet = stacked(maker);
  check_refused(maker, "weld_stage", {{"billet", billet}, {"mass_out", "3200 g"}}, "mass");
  check_refused(maker, "weld_stage", {{"billet", billet}, {"mass_out", "2000 g"}}, "mass");
  check_refused(maker, "weld_stage", {{"billet", billet}}, "mass_out");
  check_refused(maker, "weld_stage", {{"billet", billet}, {"mass_out", "0 g"}}, "mass_out");
  check_refused(maker, "weld_stage",
                {{"billet", billet}, {"operation", "cut"}, {"mass_out", "3000 g"}}, "pieces");
  check_refused(maker, "crop", {{"billet", billet}, {"crop", "4 kg"}}, "crop");
}

TEST_CASE("a billet finishes into pieces whose ancestors are both lots") {
  Maker maker;
  const auto billet = stacked(maker);
  check_refused(maker, "finish_billet", {{"billet", billet}}, "billet");  // no weld logged
  weld(maker, billet);
  maker.did("crop", {{"billet", billet}, {"crop", "100 g"}});
  CHECK(maker.did(
            "finish_billet",
            {{"billet", billet}, {"count", "2"}, {"length", "300 mm"}, {"pattern", "random"}}) ==
        "B1-1");
  const auto piece = db::find_piece(maker.shop, "B1-2");
  REQUIRE(piece);
  CHECK(piece->mass == Mass::grams(1400));
  const auto ancestors = db::ancestors_of(maker.shop, piece->id);
  CHECK(ancestors.lots.size() == 2);
  CHECK(ancestors.billets.size() == 1);
  CHECK(db::grades_of(maker.shop, piece->id).size() == 2);
  const auto descendants = db::descendants_of(maker.shop, db::find_lot(maker.shop, 1)->id);
  CHECK(descendants.billets.size() == 1);
  CHECK(descendants.pieces.size() == 4);  // both bars and both pieces of the billet
  check_refused(maker, "weld_stage", {{"billet", billet}, {"mass_out", "2700 g"}}, "billet");
}

TEST_CASE("stages are logged in the order they were done") {
  Maker maker;
  const auto billet = stacked(maker);
  maker.now += std::chrono::hours(2);
  weld(maker, billet);
  check_refused(maker, "weld_stage",
                {{"billet", billet},
                 {"operation", "draw"},
                 {"mass_out", "2890 g"},
                 {"at", "2026-11-25 08:30"}},
                "at");
  check_refused(
      maker, "weld_stage",
      {{"billet", billet}, {"operation", "draw"}, {"mass_out", "2890 g"}, {"at", "2026-11-24"}},
      "at");
}

TEST_CASE("a melt makes an ingot with its own piece") {
  Maker maker;
  const db::Given melt{{"charge", "pure iron 1.5 kg, graphite 24 g"},
                       {"charge_mass", "1.6 kg"},
                       {"lining", "clay graphite"},
                       {"peak", "1520 C"},
                       {"at_peak", "40 min"},
                       {"ingot_mass", "1.5 kg"},
                       {"carbon", "1.5 %"},
                       {"carbon_how", "from the charge"}};
  const auto with = [&](const std::string& field, const std::string& value) {
    db::Given given = melt;
    given[field] = value;
    return given;
  };
  check_refused(maker, "melt_ingot", with("ingot_mass", "1.7 kg"), "ingot_mass");
  check_refused(maker, "melt_ingot", with("peak", "2400 C"), "peak");
  check_refused(maker, "melt_ingot", with("carbon", "30 %"), "carbon");
  check_refused(maker, "melt_ingot", with("carbon_how", ""), "carbon_how");
  check_refused(maker, "melt_ingot", with("charge_mass", ""), "charge_mass");
  CHECK(maker.did("melt_ingot", melt) == "1");
  const auto ingot = db::find_piece(maker.shop, "B1-1");
  REQUIRE(ingot);
  CHECK(ingot->mass == Mass::grams(1500));
  const auto kept = db::melt_of_billet(maker.shop, *ingot->billet);
  REQUIRE(kept);
  CHECK(kept->carbon == Share::millionths(15'000));
  CHECK_FALSE(db::layers_by_stages(maker.shop, *db::find_billet(maker.shop, 1)));
}

TEST_CASE("history of stock follows unbroken") {
  Maker maker;
  weld(maker, stacked(maker));
  CHECK(db::check_history(maker.shop).empty());
}
