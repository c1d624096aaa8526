// SPDX-License-Identifier: MIT
// Questions about quotes, what came of them, the rack and the record; letters; lines set by hand.
#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/delay_letter_of.h"
#include "db/store/learning_store.h"
#include "db/store/next_steps.h"
#include "db/store/questions.h"
#include "db/store/quote_store.h"
#include "db/store/settings_store.h"
#include "tests/kiln_row.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using namespace tangmark::test;
using Catch::Contains;

namespace {

std::string a_chef(Maker& maker) {
  const auto commission = maker.enquiry();
  maker.did("add_item", {{"commission", commission}, {"model", maker.model()}});
  return commission;
}

db::Answer asked(Maker& maker, int number, const db::Given& given) {
  auto answer = db::ask(maker.shop, number, given, maker.now);
  if (!answer) FAIL(answer.problem().sentence);
  return *answer;
}

const std::vector<std::string>& row_with(const db::Answer& answer, std::size_t column,
                                         const std::string& text) {
  for (const auto& row : answer.rows)
    if (row.at(column) == text) return row;
  FAIL("no row " + text);
  return answer.rows.front();
}

std::string all_of(const db::Answer& answer) {
  std::string text;
  for (const auto& sentence : answer.sentences) text += sentence + " ";
  return text;
}

void fire(Maker& maker, int number, int blades) {
  static int blade_number = 400;
  const auto kiln_row = [&] {
    db::Query known(maker.shop, "SELECT id FROM kiln LIMIT 1");
    if (known.next()) return known.integer("id");
    return insert_kiln_row(maker.shop, "the kiln");
  }();
  const auto firing = db::Row("firing")
                          .set("number", number)
                          .set("kiln_id", kiln_row)
                          .set("kind", "harden")
                          .set("set_k1800", Temperature::celsius(830))
                          .set("soak_s", 600)
                          .set("starts_at", maker.now)
                          .set("ends_at", maker.now)
                          .set("heat_from", maker.now)
                          .set("state", "done")
                          .set("energy_j", 14'400'000)
                          .insert(maker.shop);
  for (int i = 0; i < blades; ++i) {
    const auto blade = db::Row("blade")
                           .set("number", ++blade_number)
                           .set("title", "one")
                           .set("construction", "monosteel")
                           .set("length_nm", Length::millimetres(200))
                           .set("started_at", maker.now)
                           .insert(maker.shop);
    db::Row("firing_blade")
        .set("firing_id", firing)
        .set("blade_id", blade)
        .set("position", i + 1)
        .insert(maker.shop);
  }
}

}  // namespace

TEST_CASE("question 33: versions of a quote stand side by side, and what changed is named") {
  Maker maker;
  const auto commission = a_chef(maker);
  maker.did("make_quote", {{"commission", commission}, {"price", "500.00"}});
  maker.did("make_quote",
            {{"commission", commission}, {"price", "520.00"}, {"lines", "rough grind = 3 h"}});
  const auto answer = asked(maker, 33, {{"commission", commission}});
  REQUIRE(answer.columns.size() == 5);
  // An hour more at 35.00 and its overhead of 12.00, and the loss of 5 in 100 on both.
  const auto& grind = row_with(answer, 1, "rough grind");
  CHECK(grind[2] == "70.00");
  CHECK(grind[3] == "105.00");
  CHECK(grind[4] == "+35.00");
  CHECK(row_with(answer, 1, "Price")[4] == "+20.00");
  CHECK_THAT(all_of(answer), Contains("rough grind rose by 35.00 EUR."));
}

TEST_CASE("lines set by hand are kept with their version and told") {
  Maker maker;
  const auto commission = a_chef(maker);
  const auto done = maker.tries("make_quote", {{"commission", commission},
                                               {"lines",
                                                "walnut block = 2 at 30.00; "
                                                "+ Mosaic pin = 1 at 9.00"}});
  if (!done) FAIL(done.problem().sentence);
  const auto quote = *db::latest_quote(maker.shop, db::find_commission(maker.shop, 1)->id);
  CHECK(quote.changes ==
        std::optional<std::string>("walnut block = 2 at 30.00\n+ Mosaic pin = 1 at 9.00"));
  CHECK_THAT(*quote.assumptions, Contains("Set by hand: walnut block = 2 at 30.00"));
  check_refused(maker, "make_quote", {{"commission", commission}, {"lines", "no such = 1"}},
                "lines");
  check_refused(maker, "make_quote", {{"commission", commission}, {"lines", "nothing set"}},
                "lines");
}

TEST_CASE("question 34: quoted and actual of a finished piece, with why they differ") {
  Maker maker;
  maker.lot();
  const auto order = maker.order();
  const auto blade = maker.did("assign_blade", {{"item", order.item}});
  maker.now += std::chrono::hours(2);
  maker.did("log_step", {{"blade", blade}, {"operation", "rough grind"}, {"hands_on", "5 h"}});
  db::Query id(maker.shop, "SELECT id FROM blade WHERE number = ?");
  id.bind(blade);
  REQUIRE(id.next());
  db::Row("blade").set("finished_at", maker.now).update(maker.shop, id.integer("id"));
  const auto answer = asked(maker, 34, {{"model", "m1"}});
  const auto& grind = row_with(answer, 1, "rough grind");
  CHECK(grind[2] == "70.00");
  CHECK(grind[3] == "175.00");  // 5 h at 35.00
  CHECK(grind[4] == "+105.00");
  CHECK(grind[5] == "105.00");  // all of it by three hours more
  CHECK_THAT(all_of(answer), Contains("rough grind +105.00 (2 h quoted, 5 h worked)"));
}

TEST_CASE("what was binned and weighed at the bench is in the actual cost of a blade") {
  Maker maker;
  maker.did("receive_lot", {{"name", "belt 36"},
                            {"kind", "belt"},
                            {"quantity", "10"},
                            {"unit", "belt"},
                            {"price", "80.00"}});
  const auto blade = maker.did(
      "assign_blade",
      {{"title", "one"}, {"model", maker.model()}, {"grade", "80CrV2"}, {"length", "240 mm"}});
  maker.now += std::chrono::hours(1);
  maker.did(
      "log_step",
      {{"blade", blade}, {"operation", "rough grind"}, {"hands_on", "1 h"}, {"belts", "1.5"}});
  db::Query id(maker.shop, "SELECT id FROM blade WHERE number = ?");
  id.bind(blade);
  REQUIRE(id.next());
  db::Row("blade").set("finished_at", maker.now).update(maker.shop, id.integer("id"));
  const auto answer = asked(maker, 2, {{"model", "chef 240"}});
  REQUIRE(answer.rows.size() == 1);
  CHECK(answer.rows[0][4] == "12.00");  // 1.5 belts at 8.00
  CHECK(answer.rows[0][7] == "12.00");  // overhead of one hour
}

TEST_CASE("question 35: firings on record propose the load a quote shares one by") {
  Maker maker;
  for (int firing = 1; firing <= 6; ++firing) fire(maker, firing, 6);
  const auto settings = db::load_settings(maker.shop);
  const auto proposals = db::load_proposals(maker.shop, settings);
  REQUIRE(proposals.size() == 1);
  CHECK(proposals[0].kind == "harden");
  CHECK(proposals[0].now == 3);
  CHECK(proposals[0].proposed == 5);  // (3 x 3 + 6 x 6) / 9
  const auto next = db::next_steps(maker.shop, 35, {}, maker.now);
  REQUIRE(next.size() == 1);
  CHECK(next[0].action == "expect_load");
  maker.did(next[0].action, next[0].fields);
  CHECK(db::load_proposals(maker.shop, db::load_settings(maker.shop)).empty());
}

TEST_CASE("question 37: what lies on the rack by age, at what it cost") {
  Maker maker;
  maker.lot();
  maker.now += std::chrono::hours(24 * 400);
  maker.lot("1084");
  const auto answer = asked(maker, 37, {});
  std::string young, old;
  for (const auto& row : answer.rows) {
    std::string text;
    for (const auto& cell : row) text += cell + "|";
    if (text.find("1084") != std::string::npos) young = text;
    if (text.find("80CrV2") != std::string::npos) old = text;
  }
  CHECK_THAT(young, Contains("under 3 months"));
  CHECK_THAT(young, Contains("62.80"));
  CHECK_THAT(old, Contains("1 to 3 years"));
  CHECK_THAT(old, Contains("62.80"));
}

TEST_CASE(
    "question 40: a line that takes more moves cost, margin and earnings, and nothing is kept") {
  Maker maker;
  const auto commission = a_chef(maker);
  const auto before = content_of(maker.shop);
  const auto answer =
      asked(maker, 40,
            {{"commission", commission}, {"line", "handle"}, {"times", "2"}, {"price", "900.00"}});
  // 3.5 h more at 35.00 and 12.00 overhead, after the quench, so that no loss is on them.
  CHECK(row_with(answer, 0, "Cost")[3] == "+164.50");
  CHECK(row_with(answer, 0, "Price")[3] == "0.00");
  CHECK(row_with(answer, 0, "Margin")[3] == "-164.50");
  CHECK(content_of(maker.shop) == before);
  CHECK_FALSE(db::ask(maker.shop, 40, {{"commission", commission}, {"line", "polish"}}, maker.now));
}

TEST_CASE("a letter of delay is drafted from the promise, the forecast and the frozen terms") {
  Maker maker;
  maker.lot();
  const auto order = maker.order();
  maker.did("add_bench_hours", {{"weekday", "monday"}, {"from", "9:00"}, {"to", "11:00"}});
  const auto commission = *db::find_commission(maker.shop, 1);
  CHECK_FALSE(db::delay_letter_of(maker.shop, commission, maker.now));
  db::Row("promise")
      .set("commission_id", commission.id)
      .set("day", "2026-11-26")
      .set("made_at", maker.now)
      .insert(maker.shop);
  const auto letter = db::delay_letter_of(maker.shop, commission, maker.now);
  if (!letter) FAIL(letter.problem().sentence);
  CHECK(letter->new_day > letter->promised);
  const std::string text = commission::delay_letter(*letter);
  CHECK_THAT(text, Contains("Dear Ida Holm"));
  CHECK_THAT(text, Contains("26 Nov 2026"));
  CHECK_THAT(text, Contains(to_text(letter->new_day)));
  CHECK_THAT(text, Contains("I do not take silence for a yes"));
}
