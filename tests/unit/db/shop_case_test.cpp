// SPDX-License-Identifier: MIT
// What of the shop a planning case knows: its baths, and where the hands already are.
#include "db/store/kiln_store.h"
#include "db/store/plan_case.h"
#include "db/store/plan_difference.h"
#include "db/store/settings_store.h"
#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_json.h"
#include "tests/unit/db/kiln_day.h"

using namespace tangmark;
using namespace tangmark::test;

namespace {

struct FiveBlades : KilnDay {
  FiveBlades() {
    for (int i = 0; i < 5; ++i) planned_blade();
  }

  void oil(const db::Given& more) {
    db::Given given{
        {"name", "long tank"}, {"medium", "fast oil"}, {"low", "20 C"}, {"high", "60 C"}};
    given.insert(more.begin(), more.end());
    did("add_bath", given);
  }

  db::ShopCase a_case() const { return db::shop_case(shop, now, db::Keep::locked_only); }

  static kiln::PlanAnswer planned(const db::ShopCase& made) {
    kiln::SearchLimits limits;
    limits.iterations = 3000;
    limits.words = made.words();
    return kiln::plan_firings(made.a_case, limits, 1);
  }

  static std::size_t most_quenched_together(const kiln::FiringPlan& plan) {
    std::size_t most = 0;
    for (const kiln::PlanFiring& f : plan.firings)
      if (f.kind == kiln::PlanKind::harden) most = std::max(most, f.members.size());
    return most;
  }
};

}  // namespace

TEST_CASE("a small bath whose figures are entered takes two blades at a time and not four") {
  // 200 x 40 x 5 mm ground to two thirds are 0.21 kg; from 805 C they bring about 118 kJ, which
  // warm 4 l of oil at 1.7 kJ by 17 degrees: two stay below 60 C, a third one does not.
  FiveBlades shop;
  const auto before = FiveBlades::planned(shop.a_case());
  CHECK(FiveBlades::most_quenched_together(before.plan) == 4);
  shop.oil({{"volume", "4 l"}, {"cooling_time_constant", "1 h"}});
  const db::ShopCase made = shop.a_case();
  REQUIRE(made.a_case.baths.size() == 1);
  CHECK(made.a_case.blades[0].operations[0].bath == "long tank");
  CHECK(made.a_case.blades[0].operations[0].warms_mk == Approx(17'400).margin(500));
  const auto answer = FiveBlades::planned(made);
  CHECK(answer.unplaced.empty());
  CHECK(kiln::check_plan(made.a_case, answer.plan).feasible());
  CHECK(FiveBlades::most_quenched_together(answer.plan) == 2);
}

TEST_CASE("a bath without volume or time constant limits nothing") {
  FiveBlades shop;
  shop.oil({{"volume", "4 l"}});
  CHECK(shop.a_case().a_case.baths.empty());
  shop.did("check_bath", {{"bath", "long tank"}, {"cooling_time_constant", "40 min"}});
  CHECK(shop.a_case().a_case.baths.size() == 1);
}

TEST_CASE("a time constant of seconds is refused") {
  FiveBlades shop;
  check_refused(shop, "add_bath",
                {{"name", "tank"}, {"medium", "oil"}, {"cooling_time_constant", "10 s"}},
                "cooling_time_constant");
}

TEST_CASE("a firing kept in place against a hot bath stays, and the bath is let go hotter for it") {
  FiveBlades shop;
  const db::ShopCase made = shop.a_case();
  shop.did("accept_plan", {{"from", to_stored(made.origin)},
                           {"plan", kiln::write_firing_plan(FiveBlades::planned(made).plan)}});
  for (const auto& firing : db::booked_firings(shop.shop))
    if (firing.blades.size() == 4 && firing.kind == kiln::FiringKind::harden)
      shop.did("lock_firing", {{"firing", std::to_string(firing.number)}});
  shop.oil({{"volume", "4 l"}, {"cooling_time_constant", "1 h"}});
  const db::ShopCase kept = shop.a_case();
  REQUIRE(kept.a_case.locked.size() == 1);
  CHECK(kept.a_case.baths.at(0).highest_c > 60);
  CHECK(FiveBlades::planned(kept).unplaced.empty());
}

TEST_CASE("the hands are at a running firing's unloading, and nothing else is booked then") {
  FiveBlades shop;
  const db::ShopCase made = shop.a_case();
  shop.did("accept_plan", {{"from", to_stored(made.origin)},
                           {"plan", kiln::write_firing_plan(FiveBlades::planned(made).plan)}});
  const auto first = db::booked_firings(shop.shop).front();
  shop.now = first.starts_at;
  shop.did("run_firing",
           {{"firing", std::to_string(first.number)}, {"start", clock_text(shop.now, Zone())}});
  shop.now += std::chrono::minutes(5);
  const db::ShopCase running = shop.a_case();
  REQUIRE(running.a_case.hands_taken.size() == 1);
  const auto [from, to] = running.a_case.hands_taken[0];
  CHECK(to == running.minute(first.ends_at));
  CHECK(to - from == 4 * static_cast<int>(first.blades.size()));  // pulled and quenched one by one
  const auto answer = FiveBlades::planned(running);
  for (const auto& timed : kiln::check_plan(running.a_case, answer.plan).firings)
    for (const auto& hands : timed.hands) CHECK((hands.second <= from || to <= hands.first));
}

namespace {

// Where the first temper of a blade stands in the best plan of the shop.
int first_temper_start(const db::ShopCase& made, const std::string& blade) {
  const auto answer = FiveBlades::planned(made);
  REQUIRE(answer.unplaced.empty());
  for (const kiln::PlanFiring& firing : answer.plan.firings)
    for (const kiln::PlanMember& member : firing.members)
      if (member.blade == blade && member.operation == 0) return firing.start_min;
  return -1;
}

}  // namespace

TEST_CASE("a quenched blade is tempered within the limit, or soon where that is past") {
  FiveBlades shop;
  const std::string first = shop.a_case().a_case.blades[0].id;
  shop.did("log_quench", {{"blade", first},
                          {"set", "805 C"},
                          {"hold", "12 min"},
                          {"medium", "fast oil"},
                          {"hands_on", "10 min"}});
  const int limit = static_cast<int>(
      std::chrono::floor<std::chrono::minutes>(db::load_settings(shop.shop).temper_limit).count());
  const Instant quenched = shop.now;
  SECTION("in time") {
    shop.now = quenched + std::chrono::minutes(20);
    const db::ShopCase made = shop.a_case();
    REQUIRE(made.a_case.blades[0].previous_end_min);
    CHECK(made.a_case.blades[0].operations[0].longest_gap_min == limit);
    CHECK(first_temper_start(made, first) - made.minute(quenched) <= limit);
  }
  SECTION("too late, and somebody is there") {
    shop.now = quenched + std::chrono::minutes(limit + 30);
    const db::ShopCase made = shop.a_case();
    const int there = std::max(0, made.a_case.windows.front().first);
    CHECK(first_temper_start(made, first) <= there + 4 * 60);
  }
  SECTION("a second temper waits for no limit of the quench") {
    shop.now = quenched + std::chrono::minutes(60);
    shop.did("log_temper",
             {{"blade", first}, {"set", "200 C"}, {"hold", "2h"}, {"hands_on", "5 min"}});
    CHECK_FALSE(shop.a_case().a_case.blades[0].operations[0].longest_gap_min);
  }
}
