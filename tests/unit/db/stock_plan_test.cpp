// SPDX-License-Identifier: MIT
// A cutting plan taken with one action, what to buy, and the recall of a lot.
#include "db/row.h"
#include "db/store/cutting_case.h"
#include "db/store/questions.h"
#include "db/store/reservation_store.h"
#include "db/store/settings_store.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

// Three accepted chef's knives of 390 mm blanks, and two bars of 1000 mm that hold two each.
void three_on_order(Maker& maker) {
  maker.lot();
  maker.model();
  for (int i = 0; i < 3; ++i) {
    const auto commission = maker.enquiry();
    maker.did("add_item", {{"commission", commission}, {"model", "chef 240"}});
    maker.did("make_quote", {{"commission", commission}});
    maker.did("accept_quote", {{"commission", commission}});
    maker.did("take_deposit", {{"commission", commission}});
  }
}

}  // namespace

TEST_CASE("a lot is cut for the queue with one action: tags, kerfs and items kept") {
  Maker maker;
  three_on_order(maker);
  const auto done = maker.tries("take_cuts", {{"lot", "1"}});
  if (!done) FAIL(done.problem().sentence);
  CHECK(done->number == "3");
  db::Query cuts(maker.shop, "SELECT count(*) AS n, sum(gap_ug) AS gap FROM cut");
  cuts.next();
  CHECK(cuts.integer("n") == 3);
  CHECK(cuts.integer("gap") == 0);
  for (const std::int64_t item : {1, 2, 3})
    CHECK(db::reservations_of_item(maker.shop, commission::ItemId{item}).size() == 1);
  // Two blanks from one bar: 1000 - 2 x (390 + 2) = 216 mm lie there, and the other bar gave one.
  db::Query rest(maker.shop,
                 "SELECT length_nm FROM piece WHERE state = 'on hand' AND mark = 'carries the "
                 "mark' ORDER BY length_nm");
  REQUIRE(rest.next());
  CHECK(rest.length("length_nm") == Length::millimetres(216));
  REQUIRE(rest.next());
  CHECK(rest.length("length_nm") == Length::millimetres(608));
  CHECK_FALSE(maker.tries("take_cuts", {{"lot", "1"}}));
}

TEST_CASE("a plan that no longer fits the shop changes nothing") {
  Maker maker;
  three_on_order(maker);
  const auto before = content_of(maker.shop);
  for (const char* cuts : {"9-9:1", "1-1:7", "1-1:1+1", "1-1", "1-1:1+2+3"}) {
    INFO(cuts);
    CHECK_FALSE(maker.tries("take_cuts", {{"lot", "1"}, {"cuts", cuts}}));
    CHECK(content_of(maker.shop) == before);
  }
  CHECK(maker.did("take_cuts", {{"lot", "1"}, {"cuts", "1-1:2,1-2:1+3"}}) == "3");
}

TEST_CASE("what the rack cannot give is to be bought, by section and length") {
  Maker maker;
  three_on_order(maker);
  const auto none = db::ask(maker.shop, 36, {}, maker.now);
  REQUIRE(none);
  for (const auto& row : none->rows) CHECK(row[0] != "80CrV2");
  db::Row("piece").set("state", "scrap").update(maker.shop, 2);
  const auto short_of = db::ask(maker.shop, 36, {}, maker.now);
  REQUIRE(short_of);
  bool found = false;
  for (const auto& row : short_of->rows)
    if (row[0] == "80CrV2") {
      found = true;
      CHECK(row[2] == "392 mm");  // one blank of 390 mm and its kerf
    }
  CHECK(found);
}

TEST_CASE("a recall of a lot names every blade cut from it and where it is") {
  Maker maker;
  three_on_order(maker);
  maker.did("take_cuts", {{"lot", "1"}, {"cuts", "1-1:1"}});
  const auto blade = maker.did("assign_blade", {{"item", "1"}, {"piece", "1-1A"}});
  const auto answer = db::ask(maker.shop, 38, {{"lot", "1"}}, maker.now);
  REQUIRE(answer);
  REQUIRE(answer->rows.size() == 1);
  CHECK(answer->rows[0][0] == blade);
  CHECK(answer->rows[0][4].find("Ida Holm") != std::string::npos);
  CHECK_FALSE(db::ask(maker.shop, 38, {}, maker.now));
  CHECK_FALSE(db::ask(maker.shop, 38, {{"lot", "77"}}, maker.now));
}
