// SPDX-License-Identifier: MIT
#include "db/store/kiln_store.h"
#include "db/store/plan_difference.h"
#include "domain/kiln/plan_json.h"
#include "domain/kiln/plan_search.h"
#include "tests/scratch.h"
#include "tests/unit/db/kiln_day.h"

using namespace tangmark;
using namespace tangmark::test;

TEST_CASE("a firing is booked with its heating, its end and its energy") {
  KilnDay day;
  const auto number = day.planned_blade();
  const auto firing =
      day.did("book_firing", {{"kiln", "Long kiln"}, {"blades", number}, {"start", "10:00"}});
  const auto kept = db::find_firing(day.shop, firing, "firing");
  REQUIRE(kept);
  CHECK(kept->set == Temperature::celsius(805));
  CHECK(kept->ends_at - kept->starts_at == std::chrono::minutes(5 + 10 + 4));
  // 785 C at 900 C an hour are 52.3 minutes, so 53.
  CHECK(kept->starts_at - kept->heat_from == std::chrono::minutes(53));
  CHECK(kept->energy.joules() > 2900LL * 53 * 60);
}

TEST_CASE("a booking that breaks a rule is refused and leaves the shop as it was") {
  KilnDay day;
  const auto number = day.planned_blade(), longer = day.planned_blade("500 mm");
  const std::string before = content_of(day.shop);
  CHECK_FALSE(
      day.tries("book_firing", {{"kiln", "Long kiln"}, {"blades", longer}, {"start", "10:00"}}));
  CHECK_FALSE(
      day.tries("book_firing", {{"kiln", "Temper oven"}, {"blades", number}, {"start", "10:00"}}));
  CHECK_FALSE(day.tries(
      "book_firing",
      {{"kiln", "Long kiln"}, {"blades", number}, {"start", "08:20"}}));  // not at heat by then
  CHECK_FALSE(
      day.tries("book_firing",
                {{"kiln", "Long kiln"}, {"blades", number}, {"start", "17:55"}}));  // nobody there
  CHECK_FALSE(
      day.tries("book_firing", {{"kiln", "No kiln"}, {"blades", number}, {"start", "10:00"}}));
  CHECK_FALSE(
      day.tries("book_firing", {{"kiln", "Long kiln"}, {"blades", "9999"}, {"start", "10:00"}}));
  CHECK_FALSE(
      day.tries("book_firing", {{"kiln", "Long kiln"}, {"blades", number}, {"start", "07:00"}}));
  CHECK(content_of(day.shop) == before);
}

TEST_CASE("a firing outside the hours is booked when the maker says why, and the reason is kept") {
  KilnDay day;
  const auto number = day.planned_blade();
  day.did(
      "book_firing",
      {{"kiln", "Long kiln"}, {"blades", number}, {"start", "18:30"}, {"override", "I stay late"}});
  CHECK(content_of(day.shop).find("|I stay late") != std::string::npos);
}

TEST_CASE("a firing is moved, locked and cancelled") {
  KilnDay day;
  const auto number = day.planned_blade();
  const auto firing =
      day.did("book_firing", {{"kiln", "Long kiln"}, {"blades", number}, {"start", "10:00"}});
  day.did("move_firing", {{"firing", firing}, {"start", "13:00"}});
  CHECK(db::find_firing(day.shop, firing, "firing")->starts_at ==
        bench_day + std::chrono::hours(5));
  day.did("lock_firing", {{"firing", firing}});
  CHECK(db::find_firing(day.shop, firing, "firing")->locked);
  day.did("cancel_firing", {{"firing", firing}, {"why", "element broken"}});
  CHECK_FALSE(day.tries("move_firing", {{"firing", firing}, {"start", "14:00"}}));
}

TEST_CASE("a firing that ran logs each blade with its own time in and out") {
  KilnDay day;
  const auto one = day.planned_blade(), two = day.planned_blade();
  const auto firing = day.did(
      "book_firing", {{"kiln", "Long kiln"}, {"blades", one + "," + two}, {"start", "10:00"}});
  day.now = bench_day + std::chrono::hours(3);
  day.did("run_firing", {{"firing", firing},
                         {"start", "10:00"},
                         {"end", "10:25"},
                         {"times", one + "=10:02-10:17," + two + "=10:02-10:21"},
                         {"medium", "fast oil"},
                         {"read", "806 C"},
                         {"hands_on", "20 min"}});
  const auto kept = db::find_firing(day.shop, firing, "firing");
  REQUIRE(kept);
  CHECK(kept->state == kiln::FiringState::done);
  CHECK(*kept->blades[1].time_out - *kept->blades[1].time_in == std::chrono::minutes(19));
  CHECK_FALSE(day.tries("run_firing", {{"firing", firing}, {"start", "10:00"}, {"end", "10:25"}}));
}

TEST_CASE("a kiln record is attached when it covers the firing, and refused when it does not") {
  KilnDay day;
  Scratch scratch;
  const auto number = day.planned_blade();
  const auto firing =
      day.did("book_firing", {{"kiln", "Long kiln"}, {"blades", number}, {"start", "10:00"}});
  day.now = bench_day + std::chrono::hours(3);
  day.did("run_firing", {{"firing", firing},
                         {"start", "10:00"},
                         {"end", "10:20"},
                         {"medium", "fast oil"},
                         {"hands_on", "20 min"}});
  std::string good = "time,kiln C\n", other = "time,kiln C\n";
  for (int m = 0; m < 80; ++m) {
    good += "2026-11-25T" + std::string(m < 20 ? "09:" : "10:") +
            std::to_string(100 + (m + 40) % 60).substr(1) + ":00Z," + std::to_string(700 + m) +
            "\n";
    other += "2026-11-24T09:" + std::to_string(100 + m % 60).substr(1) + ":00Z," +
             std::to_string(700 + m) + "\n";
  }
  write_file(scratch / "good.csv", good);
  write_file(scratch / "other.csv", other);
  write_file(scratch / "broken.csv", "time,kiln C\nnoon,hot\n");
  day.did("attach_record", {{"firing", firing}, {"file", (scratch / "good.csv").string()}});
  const std::string before = content_of(day.shop);
  CHECK_FALSE(
      day.tries("attach_record", {{"firing", firing}, {"file", (scratch / "other.csv").string()}}));
  CHECK_FALSE(day.tries("attach_record",
                        {{"firing", firing}, {"file", (scratch / "broken.csv").string()}}));
  CHECK_FALSE(
      day.tries("attach_record", {{"firing", firing}, {"file", (scratch / "none.csv").string()}}));
  CHECK(content_of(day.shop) == before);
}

TEST_CASE("the shop's own plan is feasible, is booked, and then nothing is left to change") {
  KilnDay day;
  for (int i = 0; i < 5; ++i) day.planned_blade();
  const auto shop_case = db::shop_case(day.shop, day.now, db::Keep::locked_only);
  CHECK(shop_case.a_case.blades.size() == 5);
  kiln::SearchLimits limits;
  limits.iterations = 500;
  const auto answer = kiln::plan_firings(shop_case.a_case, limits, 1);
  CHECK(answer.unplaced.empty());
  CHECK(kiln::check_plan(shop_case.a_case, answer.plan).feasible());
  day.did("accept_plan",
          {{"from", to_stored(shop_case.origin)}, {"plan", kiln::write_firing_plan(answer.plan)}});
  const auto after =
      db::difference(db::shop_case(day.shop, day.now, db::Keep::locked_only), answer.plan);
  for (const auto& change : after.changes) CHECK(change.what == db::PlanDifference::What::kept);
}
