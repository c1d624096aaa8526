// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "db/store/log_store.h"
#include "db/store/timer_store.h"
#include "tests/unit/db/blade_bench.h"

using namespace tangmark;
using tangmark::test::Bench;
using tangmark::test::content_of;
using tangmark::test::refusal;
using namespace std::chrono_literals;

namespace {

// At the bench from eight to five, Monday to Friday.
Bench manned() {
  Bench bench;
  for (const char* day : {"monday", "tuesday", "wednesday", "thursday", "friday"})
    bench.did("add_bench_hours", {{"weekday", day}, {"from", "8:00"}, {"to", "17:00"}});
  return bench;
}

}  // namespace

TEST_CASE("a timer on two blades logs its minutes on both, shared, and ticks their steps") {
  Bench bench = manned();
  bench.a_blade();
  bench.a_blade();
  const auto number = bench.did("start_timer", {{"blades", "11,12"}, {"operation", "profile"}});
  bench.later(20);
  bench.did("pause_timer", {{"timer", number}});
  CHECK(bench.record("11").log.empty());
  bench.later(40);
  bench.did("resume_timer", {{"blade", "12"}});
  bench.later(30);
  bench.did("stop_timer", {});
  for (const char* blade : {"11", "12"}) {
    const auto record = bench.record(blade);
    REQUIRE(record.log.size() == 1);
    CHECK(record.log[0].hands_on == 25min);
    CHECK(record.log[0].how_timed == blade::HowTimed::live);
    CHECK_FALSE(record.route[0].open());
  }
  CHECK(db::open_timers(bench.shop).empty());
}

TEST_CASE("24: a timer that ran on past the bench day asks, proposes, and takes the answer") {
  Bench bench = manned();
  bench.a_blade();
  bench.later(7 * 60);
  bench.did("start_timer", {{"blades", "11"}, {"operation", "profile"}});
  bench.later(16 * 60);  // the next morning at seven
  const auto before = content_of(bench.shop);
  const auto refused = bench.tries("stop_timer", {});
  REQUIRE_FALSE(refused);
  CHECK(refused.problem().field == "until");
  CHECK(refused.problem().sentence.find("17:00") != std::string::npos);
  CHECK(content_of(bench.shop) == before);
  bench.did("stop_timer", {{"until", "2026-11-25T17:00:00Z"}});
  const auto log = bench.record("11").log;
  REQUIRE(log.size() == 1);
  CHECK(log[0].hands_on == 2h);
  CHECK(log[0].how_timed == blade::HowTimed::estimated);
}

TEST_CASE("what a timer logged is corrected as a correction, and the first entry stays") {
  Bench bench = manned();
  bench.a_blade();
  bench.did("start_timer", {{"blades", "11"}, {"operation", "profile"}});
  bench.later(50);
  bench.did("stop_timer", {});
  const auto entry = bench.record("11").log.at(0).id;
  bench.did("correct", {{"subject", "log_entry"},
                        {"id", std::to_string(entry.row())},
                        {"field", "hands_on"},
                        {"value", "35 min"},
                        {"reason", "a visitor came"}});
  CHECK(bench.record("11").log.at(0).hands_on == 35min);
  CHECK(db::whole_log_of(bench.shop, bench.blade("11").id).size() == 2);
}

TEST_CASE("a blade is on one timer at a time, and a scrapped one on none") {
  Bench bench = manned();
  bench.a_blade();
  bench.did("start_timer", {{"blades", "11"}, {"operation", "profile"}});
  CHECK(refusal(bench.tries("start_timer", {{"blades", "11"}, {"operation", "drill"}}))
            .find("is on timer") != std::string::npos);
  bench.did("stop_timer", {{"discard", "yes"}});
  CHECK(bench.record("11").log.empty());
  CHECK(refusal(bench.tries("start_timer", {{"blades", "11"}, {"operation", "harden"}}))
            .find("not with a timer") != std::string::npos);
  CHECK(refusal(bench.tries("start_timer", {{"blades", "99"}, {"operation", "drill"}})) != "done");
}

TEST_CASE("two timers of the same hands share the minutes in which both ran") {
  Bench bench = manned();
  bench.a_blade();
  bench.a_blade();
  const auto first = bench.did("start_timer", {{"blades", "11"}, {"operation", "profile"}});
  bench.later(30);
  const auto second = bench.did("start_timer", {{"blades", "12"}, {"operation", "profile"}});
  bench.later(30);
  bench.did("stop_timer", {{"timer", first}});
  bench.later(60);
  bench.did("stop_timer", {{"timer", second}});
  CHECK(bench.record("11").log.at(0).hands_on == 45min);
  CHECK(bench.record("12").log.at(0).hands_on == 75min);
}
