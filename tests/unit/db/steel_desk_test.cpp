// SPDX-License-Identifier: MIT
// The steel desk over a shop: its own grades, analyses against limits, advice on steps.
#include <catch2/catch.hpp>

#include "db/store/grade_store.h"
#include "db/store/questions.h"
#include "db/store/step_advice_reader.h"
#include "tests/unit/db/blade_bench.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using Catch::Matchers::Contains;

namespace {

bool says(const std::vector<steel::Advice>& advice, const std::string& words, bool heed) {
  return std::any_of(advice.begin(), advice.end(), [&](const steel::Advice& one) {
    return one.heed == heed && one.sentence.find(words) != std::string::npos && !one.source.empty();
  });
}

}  // namespace

TEST_CASE("a grade that the shop adds stands before a published one of the same name") {
  test::Maker maker;
  maker.did("add_grade", {{"name", "O1"},
                          {"limits", "C:0.90-1.00,W:>=0.3"},
                          {"source", "our mill's sheet"},
                          {"harden_from", "780 C"},
                          {"harden_to", "800 C"},
                          {"temper_from", "150 C"},
                          {"temper_to", "230 C"}});
  const steel::GradeBook book = db::grade_book(maker.shop);
  const steel::Grade* grade = book.find("o1");
  REQUIRE(grade);
  CHECK(grade->origin == steel::GradeOrigin::entered_by_shop);
  CHECK(grade->source == "our mill's sheet (entered by the shop)");
  CHECK(*grade->limit_of(steel::Element::W)->least_percent == 0.3);
  CHECK(grade->window_for("harden")->high == Temperature::celsius(800));
  CHECK(grade->window_for("temper")->low == Temperature::celsius(150));
}

TEST_CASE(
    "limits that cannot be read are refused with the element at fault, and no grade is kept") {
  test::Maker maker;
  for (const char* limits :
       {"C:1.2-1.1", "Q:1", "C", "C:0.9,C:1.0", "C:-1", "C:nan", "", "C:0.9-1.0,"}) {
    INFO(limits);
    test::check_refused(maker, "add_grade", {{"name", "X"}, {"limits", limits}, {"source", "s"}},
                        "limits");
  }
  CHECK_FALSE(db::grade_book(maker.shop).find("X"));
}

TEST_CASE("an analysis is compared with its grade element by element, by question 21") {
  test::Maker maker;
  const auto lot = maker.did("receive_lot", {{"name", "1095 flat"},
                                             {"grade", "1095"},
                                             {"section", "flat"},
                                             {"thickness", "4 mm"},
                                             {"width", "40 mm"},
                                             {"length", "500 mm"},
                                             {"analysis", "C:1.05,Mn:0.4"},
                                             {"price", "30"}});
  const auto answer = db::ask(maker.shop, 21, {{"lot", lot}}, maker.now);
  REQUIRE(answer.ok());
  CHECK_THAT(answer->sentences.front(), Contains("not shown to lie inside"));
  REQUIRE(answer->rows.size() >= 3);
  CHECK(answer->rows[0] ==
        std::vector<std::string>{lot, "1095", "C", "1.05", "0.9-1.03 %", "above the limit"});
  CHECK(answer->rows[1][5] == "inside");
}

TEST_CASE("logging a cycle below the line where cementite dissolves says what grows") {
  test::Bench bench;
  const auto number = bench.did("assign_blade", {{"title", "chef"},
                                                 {"length", "200 mm"},
                                                 {"grade", "W1"},
                                                 {"route", "thermal cycle,harden,temper"}});
  const auto done = bench.tries("log_step", {{"blade", number},
                                             {"operation", "thermal cycle"},
                                             {"set", "750 C"},
                                             {"hold", "5 min"},
                                             {"hands_on", "20 min"}});
  REQUIRE(done.ok());
  CHECK(says(done->advice, "cycling here grows what is there", false));
}

TEST_CASE("a quench outside the window warns, and oil carries its caution") {
  test::Bench bench;
  const auto number = bench.a_blade("harden,temper");
  const auto done = bench.tries(
      "log_quench",
      {{"blade", number}, {"medium", "medium oil 50"}, {"set", "900 C"}, {"hold", "10 min"}});
  REQUIRE(done.ok());
  CHECK(test::warns(done, "above the published window to harden 80CrV2"));
  CHECK(says(done->advice, "local codes come first", false));
}

TEST_CASE("a step is held against the window already when it is planned") {
  test::Bench bench;
  const auto number = bench.a_blade("profile");
  const auto done = bench.tries(
      "add_route_step",
      {{"blade", number}, {"operation", "harden"}, {"set", "700 C"}, {"medium", "fast oil"}});
  REQUIRE(done.ok());
  CHECK(test::warns(done, "nothing hardens"));
  const auto asked = db::ask(bench.shop, 23, {{"blade", number}}, bench.now);
  REQUIRE(asked.ok());
  CHECK_THAT(asked->sentences.front(),
             Contains("nothing hardens") || Contains("below the published window"));
}

TEST_CASE(
    "the second temper is reckoned with the first, and a steel nobody knows gets cautions only") {
  test::Bench bench;
  const auto number = bench.did("assign_blade", {{"title", "hunter"},
                                                 {"length", "100 mm"},
                                                 {"grade", "O1"},
                                                 {"route", "harden,temper,temper"}});
  bench.did("log_quench",
            {{"blade", number}, {"medium", "oil"}, {"set", "800 C"}, {"hold", "15 min"}});
  bench.later(150);
  bench.did("log_temper", {{"blade", number}, {"set", "400 F"}, {"hold", "2 h"}});
  bench.later(300);
  const auto second = bench.tries(
      "log_temper",
      {{"blade", number}, {"set", "400 F"}, {"hold", "2 h"}, {"cooled_to_room", "yes"}});
  REQUIRE(second.ok());
  CHECK(says(second->advice, "60 to 63 HRC by estimate", false));

  const auto unknown = bench.did("assign_blade", {{"title", "old file"},
                                                  {"length", "100 mm"},
                                                  {"grade", "old file"},
                                                  {"route", "harden,temper"}});
  const auto quenched =
      bench.tries("log_quench", {{"blade", unknown}, {"medium", "water"}, {"set", "800 C"}});
  REQUIRE(quenched.ok());
  CHECK(quenched->advice.size() == 1);
  CHECK(quenched->advice.front().kind == steel::AdviceKind::caution);
}
