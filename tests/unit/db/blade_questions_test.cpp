// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "db/store/questions.h"
#include "tests/unit/db/blade_bench.h"

using namespace tangmark;
using tangmark::test::Bench;
using tangmark::test::content_of;

namespace {

db::Answer asked(const Bench& bench, int number, const db::Given& given = {}) {
  const auto answer = db::ask(bench.shop, number, given, bench.now);
  REQUIRE(answer);
  return *answer;
}

}  // namespace

TEST_CASE("question 6: which blade is quenched and not tempered, the longest waiting first") {
  Bench bench;
  CHECK(asked(bench, 6).sentences.at(0) == "No blade waits for its temper.");
  for (int i = 0; i < 3; ++i) bench.a_blade("harden,temper");
  bench.quenched("12");
  bench.later(40);
  bench.quenched("11");
  bench.later(60);
  const auto answer = asked(bench, 6);
  REQUIRE(answer.rows.size() == 2);
  CHECK(answer.rows[0][0] == "12");
  CHECK(answer.rows[0][4] == "1 h 40 min");
  CHECK(answer.sentences.at(1).starts_with("1 past the shop's limit"));
}

TEST_CASE("question 11: what was done last time with this steel, and how hard it came out") {
  Bench bench;
  bench.a_blade("harden,temper,temper");
  bench.heat_treated("11");
  bench.later(10);
  bench.did("log_hardness", {{"blade", "11"}, {"readings", "60.5"}});
  const auto answer = asked(bench, 11, {{"grade", "80crv2"}, {"medium", "medium"}});
  REQUIRE(answer.rows.size() == 1);
  CHECK(answer.rows[0][3] == "830 °C");
  CHECK(answer.rows[0][7] == "200 °C 2 h, 200 °C 2 h");
  CHECK(answer.rows[0][8] == "60.5 HRC");
  CHECK(asked(bench, 11, {{"grade", "52100"}}).rows.empty());
  CHECK(asked(bench, 11, {{"grade", "80CrV2"}, {"medium", "brine"}}).rows.empty());
  CHECK_FALSE(db::ask(bench.shop, 11, {}, bench.now));
  CHECK_FALSE(db::ask(bench.shop, 11, {{"grade", "x"}, {"thickness", "wide"}}, bench.now));
}

TEST_CASE("question 12: which others shared the bath and the bar") {
  Bench bench;
  db::Row("bath")
      .set("name", "tank")
      .set("medium", "medium oil")
      .set("use", "quench")
      .insert(bench.shop);
  for (int i = 0; i < 3; ++i) bench.a_blade("harden,temper");
  bench.did("log_quench", {{"blade", "11"}, {"bath", "tank"}});
  bench.later(24 * 60);
  bench.did("log_quench", {{"blade", "12"}, {"bath", "tank"}});
  bench.later(24 * 60 * 20);
  bench.did("log_quench", {{"blade", "13"}, {"bath", "tank"}});
  const auto answer = asked(bench, 12, {{"blade", "11"}});
  REQUIRE(answer.rows.size() == 1);
  CHECK(answer.rows[0][0] == "12");
  CHECK(answer.rows[0][2] == "tank, same week");
  CHECK_FALSE(db::ask(bench.shop, 12, {{"blade", "99"}}, bench.now));
}

TEST_CASE("question 16: what fits three free hours, the waiting temper first") {
  Bench bench;
  bench.a_blade("profile");
  bench.a_blade("harden,temper");
  bench.quenched("12");
  bench.a_blade("hand sand");
  bench.did("add_route_step",
            {{"blade", "13"}, {"operation", "etch"}, {"position", "1"}, {"hands_on", "4 h"}});
  const auto answer = asked(bench, 16);
  REQUIRE(answer.rows.size() == 2);
  CHECK(answer.rows[0][0] == "12");
  CHECK(answer.rows[0][3] == "kiln");
  CHECK(answer.rows[1][2] == "profile");
  CHECK(asked(bench, 16, {{"kiln", "no"}, {"free", "5 h"}}).rows.size() == 2);
  CHECK_FALSE(db::ask(bench.shop, 16, {{"free", "long"}}, bench.now));
  CHECK_FALSE(db::ask(bench.shop, 16, {{"kiln", "maybe"}}, bench.now));
}

TEST_CASE("question 17: cracks and warps are counted, not made into shares") {
  Bench bench;
  for (int i = 0; i < 3; ++i) bench.quenched(bench.a_blade("harden,temper"));
  bench.did("log_finding", {{"blade", "12"}, {"kind", "crack"}, {"words", "hairline"}});
  const auto answer = asked(bench, 17, {{"by", "quench"}});
  REQUIRE(answer.rows.size() == 1);
  CHECK(answer.rows[0][0] == "medium oil");
  CHECK(answer.rows[0][2] == "1 of 3");
  CHECK(answer.sentences.at(0) == "1 of 3 cracked and 0 of 3 warped.");
  CHECK(asked(bench, 17, {{"by", "length"}}).rows.at(0).at(0) == "100 mm to 200 mm");
  CHECK_FALSE(db::ask(bench.shop, 17, {{"by", "moon"}}, bench.now));
}

TEST_CASE("asking changes nothing") {
  Bench bench;
  bench.a_blade("harden,temper");
  bench.quenched("11");
  const std::string before = content_of(bench.shop);
  for (const int number : {6, 16, 17}) CHECK(db::ask(bench.shop, number, {}, bench.now));
  CHECK(content_of(bench.shop) == before);
}
