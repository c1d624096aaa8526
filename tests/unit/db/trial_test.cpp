// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "db/store/questions.h"
#include "db/store/trial_store.h"
#include "tests/unit/db/blade_bench.h"
#include "tests/unit/db/maker.h"

using namespace tangmark;
using Catch::Matchers::Contains;

namespace {

// Hardened with a soak, tempered twice and read.
std::string soaked(test::Bench& bench, int soak_min, const std::string& hrc) {
  const auto number = bench.a_blade("harden,temper,temper");
  bench.did("log_quench", {{"blade", number},
                           {"medium", "medium oil"},
                           {"set", "830 C"},
                           {"hold", std::to_string(soak_min) + " min"},
                           {"warp", "0.3 mm"}});
  bench.later(150);
  bench.tempered(number, "");
  bench.later(200);
  bench.tempered(number, "yes");
  bench.later(60);
  bench.did("log_hardness",
            {{"blade", number}, {"readings", hrc}, {"place", "edge"}, {"tester", "bench tester"}});
  return number;
}

}  // namespace

TEST_CASE(
    "a trial reads its variables and outcome off the log, and question 25 says what they show") {
  test::Bench bench;
  std::string blades;
  const char* const hardness[] = {"60", "60.5", "61", "61.5", "62"};
  for (int i = 0; i < 5; ++i) blades += (i ? "," : "") + soaked(bench, 5 + 5 * i, hardness[i]);
  const auto trial = bench.did("start_trial", {{"question", "does a longer soak come out harder?"},
                                               {"variables", "soak, hardening temperature"},
                                               {"outcome", "hardness"},
                                               {"blades", blades}});
  const auto kept = db::trial_named(bench.shop, trial, "trial");
  REQUIRE(kept.ok());
  const auto read = db::blades_of_trial(bench.shop, *kept);
  REQUIRE(read.size() == 5);
  CHECK(read[0].variables.at(blade::TrialVariable::soak) == 5);
  CHECK(read[0].variables.at(blade::TrialVariable::hardening_temperature) == Approx(830));
  CHECK(read[0].variables.at(blade::TrialVariable::temper_temperature) == Approx(200));
  CHECK(read[4].outcome == Approx(62));
  const auto answer = db::ask(bench.shop, 25, {{"trial", trial}}, bench.now);
  REQUIRE(answer.ok());
  CHECK(answer->rows.size() == 5);
  CHECK_THAT(answer->sentences[0], Contains("rank correlation 1, p 0.02, 5 blades"));
  CHECK_THAT(answer->sentences[1], Contains("same hardening temperature"));
  CHECK_THAT(answer->sentences[2],
             Contains("Next blade: soak 5 min, hardening temperature left at 830 C"));
}

TEST_CASE("a trial takes only words it knows and blades there are, each once, until it is ended") {
  test::Bench bench;
  const auto number = bench.a_blade();
  test::check_refused(bench, "start_trial",
                      {{"question", "q"}, {"variables", "moon"}, {"outcome", "hardness"}},
                      "variables");
  test::check_refused(bench, "start_trial",
                      {{"question", "q"}, {"variables", "soak,soak"}, {"outcome", "hardness"}},
                      "variables");
  test::check_refused(bench, "start_trial",
                      {{"question", "q"}, {"variables", "soak"}, {"outcome", "luck"}}, "outcome");
  test::check_refused(
      bench, "start_trial",
      {{"question", "q"}, {"variables", "soak"}, {"outcome", "warp"}, {"blades", "999"}}, "blades");
  const auto trial = bench.did(
      "start_trial",
      {{"question", "q"}, {"variables", "soak"}, {"outcome", "warp"}, {"blades", number}});
  CHECK(test::warns(bench.tries("add_to_trial", {{"trial", trial}, {"blades", number}}),
                    "in the trial already"));
  bench.did("end_trial", {{"trial", trial}, {"conclusion", "nothing to see"}});
  test::check_refused(bench, "add_to_trial", {{"trial", trial}, {"blades", number}}, "trial");
  const auto all = db::ask(bench.shop, 25, {}, bench.now);
  REQUIRE(all.ok());
  CHECK(all->rows[0][4] == "nothing to see");
}

TEST_CASE("an etch says what it was for; its contrast is that of a pattern") {
  test::Bench bench;
  const auto number = bench.a_blade("etch,etch");
  test::check_refused(
      bench, "log_step",
      {{"blade", number}, {"operation", "profile"}, {"contrast", "3"}, {"hands_on", "5 min"}},
      "contrast");
  test::check_refused(
      bench, "log_step",
      {{"blade", number}, {"operation", "etch"}, {"contrast", "6"}, {"hands_on", "5 min"}},
      "contrast");
  test::check_refused(bench, "log_step",
                      {{"blade", number},
                       {"operation", "etch"},
                       {"resist", "yes"},
                       {"contrast", "3"},
                       {"hands_on", "5 min"}},
                      "contrast");
  bench.did("log_step",
            {{"blade", number}, {"operation", "etch"}, {"contrast", "4"}, {"hands_on", "5 min"}});
  bench.did("log_step", {{"blade", number},
                         {"operation", "etch"},
                         {"resist", "yes"},
                         {"purpose", "maker's mark"},
                         {"hands_on", "5 min"}});
  const auto log = bench.record(number).log;
  REQUIRE(log.size() == 2);
  CHECK(log[0].etch_for == blade::EtchFor::pattern);
  CHECK(log[0].contrast == 4);
  CHECK(log[1].etch_for == blade::EtchFor::makers_mark);
}
