// SPDX-License-Identifier: MIT
// The steel desk over a shop: its own grades, analyses against limits, advice on steps.
#include <catch2/catch.hpp>

#include "db/store/grade_store.h"
#include "db/store/questions.h"
#include "db/store/step_advice_reader.h"
#include "domain/steel/step_advice.h"
#include "domain/steel/temper_hardness.h"
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

TEST_CASE("windows and temper tables that the shop enters are used and marked as its own") {
  test::Maker maker;
  maker.did("add_window", {{"grade", "1084"},
                           {"step", "harden"},
                           {"low", "805 C"},
                           {"high", "815 C"},
                           {"hold_least", "5 min"},
                           {"hold_most", "12 min"},
                           {"cooling", "fast oil"},
                           {"source", "our supplier's sheet"}});
  maker.did("add_window", {{"grade", "1084"},
                           {"step", "anneal"},
                           {"low", "790 C"},
                           {"high", "790 C"},
                           {"fall_per_h", "20 C"},
                           {"slow_to", "600 C"},
                           {"source", "our supplier's sheet"}});
  maker.did("add_temper_table", {{"grade", "1084"},
                                 {"rows", "150 C: 64, 204 C: 61, 260 C: 58"},
                                 {"hold", "2 h"},
                                 {"times", "2"},
                                 {"hardened_at", "815 C"},
                                 {"as_quenched", "65"},
                                 {"source", "our supplier's sheet"}});
  const auto book = [&] { return db::grade_book(maker.shop); };
  const steel::GradeBook first = book();
  const steel::Grade& grade = *first.find("1084");
  const auto* harden = grade.window_for("harden");
  CHECK(harden->low == Temperature::celsius(805));
  CHECK(harden->hold_most == std::chrono::minutes(12));
  CHECK_THAT(harden->source, Contains("entered by the shop"));
  CHECK(grade.window_for("anneal")->most_fall_per_hour == TemperatureDifference::celsius(20));
  const auto advice = steel::window_advice({.operation = "harden", .at = Temperature::celsius(830)},
                                           grade, TemperatureUnit::celsius);
  CHECK_THAT(advice.front().sentence, Contains("above the shop's own window to harden 1084"));
  const std::vector<steel::TemperStep> twice(2, {Temperature::celsius(204), std::chrono::hours(2)});
  const auto expected = steel::expected_hardness(grade, twice);
  REQUIRE(expected);
  CHECK(expected->low.points == 59);
  CHECK(expected->high.points == 63);
  // Entered again, the newer takes the place; taken back, the published one stands alone.
  maker.did("add_window", {{"grade", "1084"},
                           {"step", "harden"},
                           {"low", "800 C"},
                           {"high", "810 C"},
                           {"source", "new sheet"}});
  CHECK(book().find("1084")->window_for("harden")->low == Temperature::celsius(800));
  maker.did("add_window", {{"grade", "1084"}, {"step", "harden"}, {"withdraw", "yes"}});
  CHECK(book().find("1084")->window_for("harden")->low == Temperature::fahrenheit(1475));
  maker.did("add_temper_table",
            {{"grade", "1084"}, {"source", "our supplier's sheet"}, {"withdraw", "yes"}});
  CHECK(book().find("1084")->tempers.empty());
}

TEST_CASE("a window or a temper table that is none is refused, and nothing is kept") {
  test::Maker maker;
  using Fields = std::map<std::string, std::string>;
  const auto window = [&](Fields more, const char* field) {
    db::Given given{{"grade", "1084"},
                    {"step", "harden"},
                    {"low", "800 C"},
                    {"high", "810 C"},
                    {"source", "s"}};
    for (auto& [name, value] : more) given[name] = value;
    test::check_refused(maker, "add_window", given, field);
  };
  window({{"grade", "nosuch"}}, "grade");
  window({{"high", "790 C"}}, "high");
  window({{"source", ""}}, "source");
  window({{"hold_least", "9 min"}, {"hold_most", "3 min"}}, "hold_most");
  window({{"slow_to", "600 C"}}, "fall_per_h");
  window({{"withdraw", "yes"}}, "step");
  const auto table = [&](Fields more, const char* field) {
    db::Given given{
        {"grade", "1084"}, {"rows", "150 C: 64, 204 C: 61"}, {"hold", "2 h"}, {"source", "s"}};
    for (auto& [name, value] : more) given[name] = value;
    test::check_refused(maker, "add_temper_table", given, field);
  };
  table({{"rows", "150 C: 64"}}, "rows");
  table({{"hold", ""}}, "hold");
  table({{"times", "0"}}, "times");
  table({{"as_quenched", "99"}}, "as_quenched");
  table({{"withdraw", "yes"}}, "source");
  CHECK(db::grade_book(maker.shop).find("1084")->tempers.empty());
}

TEST_CASE("a grade of the shop has windows for every step it was given") {
  test::Maker maker;
  maker.did("add_grade", {{"name", "115W8"},
                          {"limits", "C:1.10-1.20,W:1.8-2.1"},
                          {"source", "supplier"},
                          {"normalize_from", "860 C"},
                          {"normalize_to", "880 C"},
                          {"anneal_from", "740 C"},
                          {"anneal_to", "770 C"},
                          {"harden_from", "780 C"},
                          {"harden_to", "820 C"}});
  const steel::GradeBook book = db::grade_book(maker.shop);
  for (const char* step : {"normalize", "anneal", "harden"}) {
    CAPTURE(step);
    REQUIRE(book.find("115W8")->window_for(step));
    CHECK(book.find("115W8")->window_for(step)->origin == steel::GradeOrigin::entered_by_shop);
  }
  test::check_refused(maker, "add_grade",
                      {{"name", "Y"}, {"limits", "C:1"}, {"source", "s"}, {"anneal_from", "740 C"}},
                      "anneal_to");
}

TEST_CASE("a welding heat of a billet is advised on for each steel in it") {
  test::Maker maker;
  const auto lot = [&](const char* grade) {
    return maker.did("receive_lot", {{"name", grade},
                                     {"grade", grade},
                                     {"section", "flat"},
                                     {"thickness", "3 mm"},
                                     {"width", "40 mm"},
                                     {"length", "400 mm"},
                                     {"price", "20"}});
  };
  const std::string plain = lot("1084"), nickel = lot("15N20");
  const auto billet = maker.did(
      "start_billet", {{"kind", "pattern-welded"}, {"pieces", plain + "-1:4," + nickel + "-1:3"}});
  const auto hot = maker.tries("weld_stage", {{"billet", billet},
                                              {"operation", "weld"},
                                              {"mass_out", "2.1 kg"},
                                              {"temperature", "1360 C"},
                                              {"thickness", "14 mm"},
                                              {"override", "weighed roughly"}});
  REQUIRE(hot.ok());
  CHECK(test::warns(hot, "begins to melt"));
  std::string all;
  for (const auto& one : hot->advice) all += one.sentence + " ";
  CHECK_THAT(all, Contains("1084: ") && Contains("15N20: ") && Contains("carbon of layers 2 mm"));
  CHECK_THAT(all, Contains("carbon monoxide"));
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
