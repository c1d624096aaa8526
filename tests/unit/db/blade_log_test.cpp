// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "db/store/log_store.h"
#include "tests/unit/db/blade_bench.h"

using namespace tangmark;
using tangmark::test::Bench;
using tangmark::test::content_of;
using tangmark::test::refusal;

TEST_CASE("a logged step ticks its place on the route and keeps its hours") {
  Bench bench;
  bench.a_blade();
  bench.later(60);
  bench.did("log_step",
            {{"blade", "11"}, {"operation", "profile"}, {"started", "2026-11-25T08:10:00Z"}});
  const auto record = bench.record("11");
  REQUIRE(record.log.size() == 1);
  CHECK(record.log[0].hands_on == std::chrono::minutes(50));
  CHECK(record.log[0].how_timed == blade::HowTimed::live);
  CHECK(record.route[0].done_at == bench.now);
  CHECK(record.route[1].open());
}

TEST_CASE("a late entry is marked as entered later, an estimate as estimated") {
  Bench bench;
  bench.a_blade();
  bench.later(180);
  bench.did("log_step", {{"blade", "11"},
                         {"operation", "profile"},
                         {"at", "2026-11-25T09:00:00Z"},
                         {"hands_on", "40 min"}});
  bench.did(
      "log_step",
      {{"blade", "11"}, {"operation", "drill"}, {"hands_on", "10 min"}, {"estimated", "yes"}});
  const auto log = bench.record("11").log;
  CHECK(log[0].how_timed == blade::HowTimed::entered_later);
  CHECK(log[1].how_timed == blade::HowTimed::estimated);
}

TEST_CASE("6: a quench before drilling and normalizing is asked about") {
  Bench bench;
  bench.a_blade();
  const db::Given quench{{"blade", "11"}, {"medium", "medium oil"}};
  const auto refused = bench.tries("log_quench", quench);
  REQUIRE_FALSE(refused);
  CHECK(refused.problems().size() == 2);
  auto set_aside = quench;
  set_aside["override"] = "bought normalized, no pins";
  CHECK(bench.tries("log_quench", set_aside));
}

TEST_CASE("8: handle and finish grind wait until a quenched blade is tempered") {
  Bench bench;
  bench.a_blade("harden,temper,temper,finish grind,handle");
  bench.quenched("11");
  bench.later(30);
  CHECK(refusal(bench.tries("fit_handle", {{"blade", "11"}, {"hands_on", "1 h"}}))
            .find("not tempered") != std::string::npos);
  CHECK(refusal(bench.tries("log_step", {{"blade", "11"}, {"operation", "finish grind"}}))
            .starts_with("operation"));
  CHECK(bench.tries("log_step",
                    {{"blade", "11"}, {"operation", "straighten"}, {"hands_on", "5 min"}}));
  CHECK(db::blades_waiting_for_temper(bench.shop).size() == 1);
  CHECK(refusal(bench.tries("finish_blade", {{"blade", "11"}})).find("not tempered") !=
        std::string::npos);
}

TEST_CASE("9 and 10: the second temper must be there, and begin cold") {
  Bench bench;
  bench.a_blade("harden,temper,temper,handle");
  bench.quenched("11");
  bench.later(140);
  bench.tempered("11", "");
  CHECK(refusal(bench.tries("fit_handle", {{"blade", "11"}, {"hands_on", "1 h"}}))
            .find("1 of 2 tempers") != std::string::npos);
  bench.later(140);
  const db::Given second{{"blade", "11"}, {"set", "200 C"}, {"hold", "2 h"}};
  CHECK(refusal(bench.tries("log_temper", second)).starts_with("cooled_to_room: Nobody"));
  auto warm = second;
  warm["cooled_to_room"] = "no";
  CHECK(refusal(bench.tries("log_temper", warm)).starts_with("cooled_to_room: "));
  warm["override"] = "oven was booked";
  CHECK(bench.tries("log_temper", warm));
  CHECK(bench.record("11").state.stage == blade::HeatStage::tempered_in_part);
  CHECK(bench.record("11").route[2].open());
  bench.later(140);
  bench.tempered("11", "yes");
  CHECK(bench.record("11").state.stage == blade::HeatStage::tempered);
  CHECK(bench.tries("fit_handle", {{"blade", "11"}, {"hands_on", "1 h"}}));
}

TEST_CASE("11: two blades whose routes want different tempers are no batch") {
  Bench bench;
  for (const char* set : {"200 C", "230 C"}) {
    const std::string number = bench.a_blade("harden");
    bench.did("add_route_step", {{"blade", number}, {"operation", "temper"}, {"set", set}});
    bench.quenched(number);
  }
  bench.later(130);
  const db::Given batch{{"blade", "11,12"}, {"set", "200 C"}, {"hold", "2 h"}};
  const std::string before = content_of(bench.shop);
  CHECK(refusal(bench.tries("log_temper", batch)).starts_with("set: "));
  CHECK(content_of(bench.shop) == before);
  auto set_aside = batch;
  set_aside["override"] = "only one oven works";
  CHECK(bench.tries("log_temper", set_aside));
  CHECK(bench.record("12").log.size() == 2);
}

TEST_CASE("12: hardening again opens the tempers and voids the readings") {
  Bench bench;
  bench.a_blade("harden,temper,temper");
  bench.heat_treated("11");
  bench.later(60);
  bench.did("log_hardness", {{"blade", "11"}, {"readings", "57,56.5"}, {"place", "edge"}});
  bench.later(60);
  const auto again =
      bench.tries("log_quench", {{"blade", "11"}, {"medium", "medium oil"}, {"hold", "10 min"}});
  REQUIRE(again);
  CHECK(again->warnings.at(0).find("hardened before") != std::string::npos);
  const auto record = bench.record("11");
  CHECK(record.state.stage == blade::HeatStage::quenched);
  CHECK(record.route[1].open());
  CHECK(record.route[2].open());
  CHECK(record.readings.at(0).void_why);
}

TEST_CASE("13: a firing after the handle was fitted is asked about") {
  Bench bench;
  bench.a_blade("harden,temper,temper,handle");
  bench.heat_treated("11");
  bench.later(60);
  bench.did("fit_handle", {{"blade", "11"}, {"hands_on", "2 h"}});
  bench.later(60);
  const db::Given temper{
      {"blade", "11"}, {"set", "180 C"}, {"hold", "1 h"}, {"cooled_to_room", "yes"}};
  CHECK(refusal(bench.tries("log_temper", temper))
            .starts_with("operation: Blade 11 has its handle fitted"));
}

TEST_CASE("22: a bath outside its band is asked about") {
  Bench bench;
  bench.a_blade("harden,temper");
  db::Row("bath")
      .set("name", "tank")
      .set("medium", "medium oil")
      .set("use", "quench")
      .set("low_k1800", Temperature::celsius(40))
      .set("high_k1800", Temperature::celsius(70))
      .insert(bench.shop);
  db::Given quench{{"blade", "11"}, {"bath", "tank"}, {"bath_temperature", "15 C"}};
  CHECK(refusal(bench.tries("log_quench", quench)).starts_with("bath_temperature"));
  quench["bath_temperature"] = "131 F";
  CHECK(bench.tries("log_quench", quench));
  CHECK(bench.record("11").state.quench_medium == "medium oil");
}

TEST_CASE("23 and 24: times that cannot be are refused and nothing changes") {
  Bench bench;
  bench.a_blade();
  bench.later(30);
  const std::string before = content_of(bench.shop);
  const auto tries = [&](db::Given given) {
    given.insert({{"blade", "11"}, {"operation", "profile"}});
    return refusal(bench.tries("log_step", given));
  };
  CHECK(tries({{"started", "2026-11-25T09:00:00Z"}}).starts_with("started"));
  CHECK(tries({{"at", "2026-11-25T07:00:00Z"}}).starts_with("at"));
  CHECK(tries({{"at", "2027-01-01"}}).starts_with("at"));
  CHECK(tries({{"hands_on", "14 h"}}).starts_with("hands_on"));
  CHECK(tries({{"hands_on", "-5"}}).starts_with("hands_on"));
  CHECK(tries({{"firing", "3"}}).starts_with("firing"));
  CHECK(refusal(bench.tries("log_step", {{"blade", "99"}, {"operation", "profile"}}))
            .starts_with("blade"));
  CHECK(content_of(bench.shop) == before);
}

TEST_CASE("27: nothing more is logged on a scrapped blade") {
  Bench bench;
  bench.a_blade();
  CHECK(refusal(bench.tries("scrap_blade", {{"blade", "11"}, {"why", "cracked"}}))
            .starts_with("cost_to"));
  bench.did("scrap_blade", {{"blade", "11"}, {"why", "cracked"}, {"cost_to", "job"}});
  CHECK(bench.blade("11").scrap_cost_to == blade::CostGoesTo::job);
  CHECK(refusal(bench.tries("log_step",
                            {{"blade", "11"}, {"operation", "profile"}, {"hands_on", "1 h"}}))
            .starts_with("blade"));
  CHECK(db::blades_in_work(bench.shop).empty());
}

TEST_CASE("27: a scrapped blade leaves the firings that have not begun") {
  Bench bench;
  bench.a_blade("harden,temper");
  db::Row kiln("kiln");
  kiln.set("name", "long kiln")
      .set("kind", "kiln")
      .set("slots", 4)
      .set("usable_length_nm", Length::millimetres(400));
  kiln.set("low_k1800", Temperature::celsius(100)).set("high_k1800", Temperature::celsius(1200));
  kiln.set("heat_k1800_per_h", 900 * 1800)
      .set("tau_s", 9000)
      .set("heat_w", 3000)
      .set("hold_mw_per_c", 900);
  kiln.set("load_s", 60).set("unload_s", 60).set("currency", "EUR");
  db::Row firing("firing");
  firing.set("number", 1).set("kiln_id", kiln.insert(bench.shop)).set("kind", "harden");
  firing.set("set_k1800", Temperature::celsius(830)).set("soak_s", 600).set("starts_at", bench.now);
  firing.set("ends_at", bench.now)
      .set("heat_from", bench.now)
      .set("state", "booked")
      .set("energy_j", 1);
  db::Row("firing_blade")
      .set("firing_id", firing.insert(bench.shop))
      .set("blade_id", bench.blade("11").id)
      .set("position", 1)
      .insert(bench.shop);
  bench.did("scrap_blade", {{"blade", "11"}, {"why", "burnt"}, {"cost_to", "shop"}});
  db::Query state(bench.shop, "SELECT state FROM firing");
  REQUIRE(state.next());
  CHECK(state.text("state") == "cancelled");
}
