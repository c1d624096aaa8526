// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "db/history.h"
#include "db/store/log_store.h"
#include "tests/unit/db/blade_bench.h"

using namespace tangmark;
using tangmark::test::Bench;
using tangmark::test::content_of;
using tangmark::test::refusal;

TEST_CASE("a corrected entry takes the place of the old one, which stays in the log") {
  Bench bench;
  bench.a_blade("profile");
  const std::string id =
      bench.did("log_step", {{"blade", "11"}, {"operation", "profile"}, {"hands_on", "14 min"}});
  const std::string next = bench.did("correct", {{"subject", "log_entry"},
                                                 {"id", id},
                                                 {"field", "hands_on"},
                                                 {"value", "41 min"},
                                                 {"reason", "figures swapped"}});
  const auto log = bench.record("11").log;
  REQUIRE(log.size() == 1);
  CHECK(log[0].hands_on == std::chrono::minutes(41));
  CHECK(log[0].why == "figures swapped");
  CHECK(db::whole_log_of(bench.shop, bench.blade("11").id).size() == 2);
  CHECK(refusal(bench.tries("correct", {{"subject", "log_entry"},
                                        {"id", id},
                                        {"field", "hands_on"},
                                        {"value", "1 h"},
                                        {"reason", "x"}}))
            .starts_with("id"));
  CHECK(bench.tries("correct", {{"subject", "log_entry"},
                                {"id", next},
                                {"field", "note"},
                                {"value", "with the new belt"},
                                {"reason", "forgot"}}));
  CHECK(db::check_history(bench.shop).empty());
}

TEST_CASE("an entry struck out counts no more and opens its step again") {
  Bench bench;
  bench.a_blade("harden,temper");
  const std::string id = bench.quenched("11");
  bench.did(
      "correct",
      {{"subject", "log_entry"}, {"id", id}, {"field", "all"}, {"reason", "it was blade 12"}});
  CHECK(bench.record("11").log.empty());
  CHECK(bench.record("11").state.stage == blade::HeatStage::not_quenched);
  CHECK(bench.record("11").route[0].open());
}

TEST_CASE("a misread hardness is voided, never rewritten") {
  Bench bench;
  bench.a_blade("profile");
  const std::string id = bench.did("log_hardness", {{"blade", "11"}, {"readings", "61"}});
  CHECK(refusal(bench.tries("correct", {{"subject", "reading"},
                                        {"id", id},
                                        {"field", "tenths"},
                                        {"value", "62"},
                                        {"reason", "x"}}))
            .starts_with("field"));
  bench.did("correct",
            {{"subject", "reading"}, {"id", id}, {"field", "void"}, {"reason", "wrong scale"}});
  CHECK(bench.record("11").readings.at(0).void_why == "wrong scale");
}

TEST_CASE("a typed field is set right and history keeps the old value and the reason") {
  Bench bench;
  bench.a_blade();
  bench.did("correct", {{"subject", "blade"},
                        {"id", "11"},
                        {"field", "length"},
                        {"value", "6 in"},
                        {"reason", "measured"}});
  CHECK(bench.blade("11").length == Length::nanometres(152'400'000));
  const auto latest = db::latest_history(bench.shop, 1);
  CHECK(latest.at(0).reason == "measured");
  CHECK(latest.at(0).before.find("150000000") != std::string::npos);
}

TEST_CASE("what may not be corrected is refused and nothing changes") {
  Bench bench;
  bench.a_blade();
  const std::string before = content_of(bench.shop);
  const auto tries = [&](const char* subject, const char* id, const char* field,
                         const char* value) {
    return refusal(bench.tries(
        "correct",
        {{"subject", subject}, {"id", id}, {"field", field}, {"value", value}, {"reason", "x"}}));
  };
  CHECK(tries("blade", "11", "number", "12").starts_with("field"));
  CHECK(tries("blade", "11", "length", "long").starts_with("value"));
  CHECK(tries("blade", "11", "title", "").starts_with("value"));
  CHECK(tries("blade", "99", "title", "x").starts_with("id"));
  CHECK(tries("payment", "1", "amount", "1").starts_with("subject"));
  CHECK(tries("blade; DROP TABLE blade", "1", "title", "1").starts_with("subject"));
  CHECK(tries("log_entry", "1", "note", "x").starts_with("id"));
  CHECK(tries("reading", "x", "void", "").starts_with("id"));
  CHECK(
      refusal(bench.tries("correct",
                          {{"subject", "blade"}, {"id", "11"}, {"field", "title"}, {"value", "y"}}))
          .starts_with("reason"));
  CHECK(content_of(bench.shop) == before);
}
