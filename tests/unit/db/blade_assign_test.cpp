// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "db/store/route_store.h"
#include "tests/unit/db/blade_bench.h"

using namespace tangmark;
using tangmark::test::Bench;
using tangmark::test::content_of;
using tangmark::test::refusal;

TEST_CASE("a blade gets the next number and the route it was given") {
  Bench bench;
  CHECK(bench.a_blade() == "11");
  CHECK(bench.a_blade("forge, Normalise, harden") == "12");
  const auto route = bench.record("12").route;
  REQUIRE(route.size() == 3);
  CHECK(route[1].operation == "normalize");
  CHECK(bench.record("12").state.stage == blade::HeatStage::not_quenched);
}

TEST_CASE("27: the number of a scrapped blade is never given again") {
  Bench bench;
  bench.a_blade();
  bench.did("scrap_blade", {{"blade", "11"}, {"why", "cracked"}, {"cost_to", "shop"}});
  CHECK(bench.a_blade() == "12");
}

TEST_CASE("a blade takes its piece, which is a blank from then on") {
  Bench bench;
  bench.a_bar("1-1", "80CrV2");
  bench.did("assign_blade", {{"title", "petty"}, {"length", "150"}, {"piece", "1-1"}});
  CHECK(bench.state_of_piece("1-1") == "blank");
  CHECK(bench.blade("11").grade == "80CrV2");
  CHECK(refusal(
            bench.tries("assign_blade", {{"title", "second"}, {"length", "150"}, {"piece", "1-1"}}))
            .starts_with("piece: "));
}

TEST_CASE("4: steel on the job that differs from the steel of the piece is asked about") {
  Bench bench;
  bench.a_bar("1-1", "52100");
  const db::Given given{
      {"title", "petty"}, {"length", "150"}, {"piece", "1-1"}, {"grade", "80CrV2"}};
  const std::string before = content_of(bench.shop);
  CHECK(refusal(bench.tries("assign_blade", given)).find("80CrV2") != std::string::npos);
  CHECK(content_of(bench.shop) == before);
  auto set_aside = given;
  set_aside["override"] = "buyer agreed by letter";
  CHECK(bench.tries("assign_blade", set_aside));
  db::Query kept(bench.shop, "SELECT catch, reason FROM override");
  REQUIRE(kept.next());
  CHECK(kept.integer("catch") == 4);
  CHECK(kept.text("reason") == "buyer agreed by letter");
}

TEST_CASE("a blade without name, length or a known route is refused and nothing changes") {
  Bench bench;
  const std::string before = content_of(bench.shop);
  CHECK(bench.tries("assign_blade", {}).problems().size() == 2);
  CHECK(refusal(bench.tries("assign_blade", {{"title", "x"}, {"length", "0"}}))
            .starts_with("length"));
  CHECK(refusal(bench.tries("assign_blade", {{"title", "x"}, {"length", "15 kg"}}))
            .starts_with("length"));
  CHECK(refusal(bench.tries("assign_blade", {{"title", "x"}, {"length", "150"}, {"route", "grnd"}}))
            .starts_with("route"));
  CHECK(refusal(bench.tries("assign_blade", {{"title", "x"}, {"length", "150"}, {"item", "7"}}))
            .starts_with("item"));
  CHECK(refusal(bench.tries("assign_blade", {{"title", "x"}, {"length", "150"}, {"piece", "9-9"}}))
            .starts_with("piece"));
  CHECK(content_of(bench.shop) == before);
}

TEST_CASE("a step can be put into a route, and one left out with a reason") {
  Bench bench;
  bench.a_blade("harden,temper");
  bench.did("add_route_step", {{"blade", "11"}, {"operation", "sub-zero"}, {"position", "2"}});
  auto route = bench.record("11").route;
  REQUIRE(route.size() == 3);
  CHECK(route[1].operation == "sub-zero");
  CHECK(route[2].operation == "temper");
  bench.did("skip_step", {{"blade", "11"}, {"step", "2"}, {"why", "no dry ice"}});
  CHECK(bench.record("11").route[1].skipped_why == "no dry ice");
  CHECK(refusal(bench.tries("skip_step", {{"blade", "11"}, {"step", "2"}, {"why", "again"}}))
            .starts_with("step"));
  CHECK(refusal(bench.tries("skip_step", {{"blade", "11"}, {"step", "9"}, {"why", "x"}}))
            .starts_with("step"));
  CHECK(refusal(bench.tries(
                    "add_route_step",
                    {{"blade", "11"}, {"operation", "temper"}, {"set", "200 C"}, {"low", "210 C"}}))
            .starts_with("set"));
}

TEST_CASE("blades are found by number, title, grade or blank") {
  Bench bench;
  bench.a_bar("1-1", "52100");
  bench.a_blade();
  bench.did("assign_blade", {{"title", "chef's 100 % knife"}, {"length", "210"}, {"piece", "1-1"}});
  CHECK(db::list_blades(bench.shop, "", db::Which::all).size() == 2);
  CHECK(db::list_blades(bench.shop, "52100", db::Which::in_work).size() == 1);
  CHECK(db::list_blades(bench.shop, "1-1", db::Which::in_work).at(0).number == 12);
  CHECK(db::list_blades(bench.shop, "PETTY", db::Which::in_work).at(0).number == 11);
  CHECK(db::list_blades(bench.shop, "0 % k", db::Which::in_work).size() == 1);
  CHECK(db::list_blades(bench.shop, "9_9", db::Which::all).empty());
}
