// SPDX-License-Identifier: MIT
#include "db/store/questions.h"

#include "db/row.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

db::Answer asked(Maker& maker, int number, const db::Given& given = {}) {
  const std::string before = content_of(maker.shop);
  const auto answer = db::ask(maker.shop, number, given, maker.now);
  if (!answer) FAIL(number << ": " << answer.problem().field << ": " << answer.problem().sentence);
  CHECK(content_of(maker.shop) == before);
  for (const auto& row : answer->rows) CHECK(row.size() == answer->columns.size());
  return *answer;
}

bool says(const db::Answer& answer, std::string_view words) {
  for (const std::string& sentence : answer.sentences)
    if (sentence.find(words) != std::string::npos) return true;
  return false;
}

std::string row_with(const db::Answer& answer, std::string_view cell) {
  for (const auto& row : answer.rows)
    for (const std::string& one : row)
      if (one.find(cell) != std::string::npos) {
        std::string all;
        for (const std::string& text : row) all += text + "|";
        return all;
      }
  return "";
}

// A blade ground from the first cut of lot 1, for item 1.
void blade_from_bar(Maker& maker, std::int64_t number, const std::string& tag) {
  db::Query piece(maker.shop, "SELECT id FROM piece WHERE tag = ?");
  piece.bind(tag);
  REQUIRE(piece.next());
  db::Row blade("blade");
  blade.set("number", number)
      .set("item_id", 1)
      .set("model_id", 1)
      .set("piece_id", piece.integer("id"));
  blade.set("title", "chef").set("construction", "monosteel").set("length_nm", 240'000'000);
  blade.set("started_at", maker.now).set("finished_at", maker.now).insert(maker.shop);
}

void weekday_mornings(Maker& maker) {
  for (const char* weekday : {"monday", "tuesday", "wednesday", "thursday", "friday"})
    maker.did("add_bench_hours", {{"weekday", weekday}, {"from", "9:00"}, {"to", "11:00"}});
}

}  // namespace

TEST_CASE("a number that is no question and a key it does not know are refused") {
  Maker maker;
  const auto none = db::ask(maker.shop, 99, {}, maker.now);
  REQUIRE_FALSE(none);
  CHECK(none.problem().field == "question");
  const auto key = db::ask(maker.shop, 13, {{"blade", "3"}}, maker.now);
  REQUIRE_FALSE(key);
  CHECK(key.problem().field == "blade");
}

TEST_CASE("question 1: what can be met, and who is made to wait") {
  Maker maker;
  weekday_mornings(maker);
  const auto first = maker.order();
  maker.did("promise_date", {{"commission", first.commission}, {"day", "2027-02-01"}});
  const auto second = maker.enquiry();
  maker.did("add_item", {{"commission", second}, {"model", "m" + first.commission}});
  CHECK(says(asked(maker, 1, {{"commission", second}, {"day", "2026-11-26"}}), "No:"));
  const auto late = asked(maker, 1, {{"commission", second}, {"day", "2027-11-26"}});
  CHECK(says(late, "Yes:"));
  CHECK(says(late, "Nobody else"));
  CHECK_FALSE(db::ask(maker.shop, 1, {{"commission", "99"}}, maker.now));
  CHECK_FALSE(db::ask(maker.shop, 1, {{"commission", second}, {"day", "soon"}}, maker.now));
}

TEST_CASE("question 2: what the last of a model cost and earned") {
  Maker maker;
  maker.lot();
  const auto order = maker.order();
  maker.did("cut_piece",
            {{"piece", "1-1"}, {"item", order.item}, {"length", "390 mm"}, {"mark", "rest"}});
  blade_from_bar(maker, 11, "1-1A");
  db::Row entry("log_entry");
  entry.set("blade_id", 1)
      .set("operation", "rough grind")
      .set("started_at", maker.now)
      .set("entered_at", maker.now);
  entry.set("how_timed", "live").set("hands_on_s", 5 * 3600).insert(maker.shop);
  const auto answer = asked(maker, 2, {{"model", "m" + order.commission}});
  REQUIRE(answer.rows.size() == 1);
  CHECK(answer.rows[0][0] == "11");
  CHECK(answer.rows[0][1] == "5.0");
  CHECK(answer.rows[0][3] == "12.25");  // 390 mm of a 50 x 4 bar: 612.3 g at 20.00 a kg
  CHECK(says(answer, "an hour"));
}

TEST_CASE("question 3: what to quote, without storing a quote") {
  Maker maker;
  maker.lot();
  const auto commission = maker.enquiry();
  maker.did("add_item", {{"commission", commission}, {"model", maker.model()}});
  const auto answer = asked(maker, 3, {{"commission", commission}});
  CHECK(says(answer, "margin 20 %"));
  CHECK(says(answer, "moves the price most"));
  CHECK_FALSE(row_with(answer, "loss").empty());
}

TEST_CASE("question 7: which bar a blade came from and what else came from it") {
  Maker maker;
  maker.lot();
  const auto order = maker.order();
  maker.did("cut_piece",
            {{"piece", "1-1"}, {"item", order.item}, {"length", "390 mm"}, {"mark", "rest"}});
  maker.did("cut_piece",
            {{"piece", "1-1B"}, {"item", order.item}, {"length", "300 mm"}, {"mark", "rest"}});
  blade_from_bar(maker, 11, "1-1A");
  blade_from_bar(maker, 12, "1-1C");
  const auto answer = asked(maker, 7, {{"blade", "11"}});
  CHECK(says(answer, "from 1-1"));
  CHECK(says(answer, "melt number 4711"));
  CHECK(row_with(answer, "12").starts_with("blade|12"));
  CHECK_FALSE(row_with(answer, "1-2").empty());
}

TEST_CASE("question 8: candidates for an unmarked piece, none of them proved") {
  Maker maker;
  maker.lot();
  maker.did("cut_piece", {{"piece", "1-1"}, {"length", "390 mm"}, {"mark", "rest"}});
  const auto answer = asked(maker, 8, {{"length", "600 mm"}, {"thickness", "4.1 mm"}});
  REQUIRE(answer.rows.size() == 1);
  CHECK(answer.rows[0][0] == "1-1B");
  CHECK(says(answer, "cannot prove"));
  CHECK_FALSE(db::ask(maker.shop, 8, {}, maker.now));
  CHECK_FALSE(db::ask(maker.shop, 8, {{"length", "long"}}, maker.now));
}

TEST_CASE("question 9: enough steel, and whether it is one melt") {
  Maker maker;
  maker.lot();
  maker.order();
  const auto answer = asked(maker, 9, {{"grade", "80crv2"}});
  CHECK(says(answer, "1 open items still need 392 mm"));
  CHECK(says(answer, "enough by length"));
  CHECK(says(answer, "melt number 4711"));
  maker.did("receive_lot",
            {{"name", "bar"}, {"grade", "80CrV2"}, {"mass", "1 kg"}, {"price", "20.00"}});
  CHECK(says(asked(maker, 9, {{"grade", "80CrV2"}}), "more than one melt"));
  CHECK(says(asked(maker, 9, {{"grade", "O1"}}), "0 open items"));
}

TEST_CASE("question 10: what the offcuts are large enough for") {
  Maker maker;
  maker.lot();
  maker.model();
  maker.did("cut_piece", {{"piece", "1-1"}, {"length", "300 mm"}, {"mark", "rest"}});
  const auto answer = asked(maker, 10);
  CHECK(row_with(answer, "1-1A").ends_with("||"));
  CHECK(row_with(answer, "1-1B").ends_with("|chef 240|"));
  CHECK(says(answer, "1 of 2 offcuts"));
}

TEST_CASE("question 13: money held and balances owed") {
  Maker maker;
  CHECK(says(asked(maker, 13), "No money is held"));
  maker.order();
  const auto answer = asked(maker, 13);
  CHECK_FALSE(row_with(answer, "held for unfinished work").empty());
}

TEST_CASE("question 14: who is to be told") {
  Maker maker;
  weekday_mornings(maker);
  const auto order = maker.order();
  maker.did(
      "promise_date",
      {{"commission", order.commission}, {"day", "2026-11-26"}, {"override", "the buyer insists"}});
  CHECK(row_with(asked(maker, 14), "late by").starts_with("1|"));
  maker.now += std::chrono::hours(24 * 100);
  CHECK_FALSE(row_with(asked(maker, 14), "has heard nothing").empty());
}

TEST_CASE("question 15: what waits, and what is overdue") {
  Maker maker;
  CHECK(says(asked(maker, 15), "Nothing waits."));
  const auto order = maker.order();
  maker.did("hold", {{"item", order.item}, {"what", "epoxy"}, {"until", "2026-11-26"}});
  maker.did("send_outside",
            {{"item", order.item}, {"operation", "sheath"}, {"who", "the saddler"}});
  maker.now += std::chrono::hours(72);
  const auto answer = asked(maker, 15);
  CHECK(answer.rows.size() == 2);
  CHECK(says(answer, "1 of them are past"));
}

TEST_CASE("question 18: what a month used up") {
  Maker maker;
  const auto belts = maker.did("receive_lot", {{"kind", "belt"},
                                               {"name", "belt 36"},
                                               {"quantity", "10"},
                                               {"unit", "belt"},
                                               {"price", "80.00"}});
  maker.did("use_consumable", {{"lot", belts}, {"quantity", "3"}});
  CHECK(row_with(asked(maker, 18), "belt 36").starts_with("belt|belt 36|3|belt|"));
  CHECK(asked(maker, 18, {{"month", "2026-10"}}).rows.empty());
  CHECK_FALSE(db::ask(maker.shop, 18, {{"month", "autumn"}}, maker.now));
}

TEST_CASE("question 19: a handle and a border, a prompt and no verdict") {
  Maker maker;
  CHECK(says(asked(maker, 19, {{"species", "cocobolo"}, {"country", "Canada"}}), "Verify"));
  CHECK(says(asked(maker, 19, {{"species", "walnut"}, {"country", "Austria"}}),
             "stays in the country"));
  CHECK(says(asked(maker, 19, {{"species", "walnut"}, {"country", "Canada"}}),
             "not on the watch list"));
  CHECK_FALSE(db::ask(maker.shop, 19, {{"country", "Canada"}}, maker.now));
  CHECK_FALSE(db::ask(maker.shop, 19, {{"species", "walnut"}}, maker.now));
}
