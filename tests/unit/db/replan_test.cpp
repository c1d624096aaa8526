// SPDX-License-Identifier: MIT
// Planning anew around what is booked, on a real shop file.
#include "db/store/blade_store.h"
#include "db/store/firing_reasons.h"
#include "db/store/kiln_store.h"
#include "db/store/plan_difference.h"
#include "domain/kiln/plan_json.h"
#include "domain/kiln/replanning.h"
#include "tests/unit/db/kiln_day.h"

using namespace tangmark;
using namespace tangmark::test;
using What = db::PlanDifference::What;

namespace {

/// What planning anew comes to.
struct Anew {
  db::ShopCase shop;
  kiln::Replanned found;
  db::PlanDifference difference;
  int count(What what) const {
    return static_cast<int>(std::count_if(difference.changes.begin(), difference.changes.end(),
                                          [&](const auto& c) { return c.what == what; }));
  }
  std::string whys() const {
    std::string all;
    for (const auto& change : difference.changes) all += change.why + " ";
    return all;
  }
};

struct Week : KilnDay {
  std::vector<std::string> blades;
  Week() {
    for (int i = 0; i < 5; ++i) blades.push_back(planned_blade());
  }
  Anew anew() {
    Anew anew{db::shop_case(shop, now, db::Keep::locked_only), {}, {}};
    kiln::SearchLimits limits;
    limits.iterations = 3000;
    limits.words = anew.shop.words();
    anew.found = kiln::replan_firings(anew.shop.a_case, anew.shop.booked(), limits, 1);
    anew.difference = db::difference(anew.shop, anew.found.answer.plan);
    return anew;
  }
  void accept(const Anew& anew) {
    did("accept_plan", {{"from", to_stored(anew.shop.origin)},
                        {"plan", kiln::write_firing_plan(anew.found.answer.plan)}});
  }
  std::vector<kiln::KeptFiring> booked() const { return db::booked_firings(shop); }
  /// No step of a blade stands in two firings.
  void check_each_step_once() const {
    std::set<std::pair<std::int64_t, std::int64_t>> seen;
    for (const auto& firing : booked())
      for (const auto& member : firing.blades)
        CHECK(seen.emplace(member.blade.row(), member.step->row()).second);
  }
  std::string fullest_hardening() const {
    std::int64_t number = 0;
    std::size_t most = 0;
    for (const auto& firing : booked()) {
      if (firing.kind != kiln::FiringKind::harden || firing.blades.size() <= most) continue;
      most = firing.blades.size();
      number = firing.number;
    }
    return std::to_string(number);
  }
};

}  // namespace

TEST_CASE("a cracked blade leaves its firings, and no booked firing moves") {
  Week week;
  week.accept(week.anew());
  const auto before = week.booked();
  week.did("scrap_blade",
           {{"blade", week.blades[1]}, {"why", "cracked in the quench"}, {"cost_to", "shop"}});
  const Anew anew = week.anew();
  CHECK(anew.difference.moved == 0);
  CHECK(anew.found.moved == 0);
  week.accept(anew);
  week.check_each_step_once();
  for (const auto& was : before)
    for (const auto& is : week.booked())
      if (is.number == was.number) CHECK(is.starts_at == was.starts_at);
}

TEST_CASE("a dead kiln moves its firings only, and the reason says so") {
  Week week;
  week.did("add_kiln", {{"name", "Small kiln"},
                        {"kind", "kiln"},
                        {"slots", "2"},
                        {"usable_length", "300 mm"},
                        {"lowest", "100 C"},
                        {"highest", "1100 C"},
                        {"heats_per_hour", "700 C"},
                        {"cooling_time_constant", "90 min"},
                        {"heating_watts", "2000"},
                        {"holding_mw_per_c", "900"}});
  week.accept(week.anew());
  const auto hardening = db::find_firing(week.shop, week.fullest_hardening(), "firing");
  REQUIRE(hardening);
  std::string dead;
  for (const auto& k : db::all_kilns(week.shop))
    if (k.id == hardening->kiln) dead = k.name;
  week.did("change_kiln", {{"kiln", dead}, {"out_of_use_on", "2026-11-25"}});
  const Anew anew = week.anew();
  CHECK(anew.found.answer.unplaced.empty());
  CHECK(anew.difference.moved > 0);
  CHECK_THAT(anew.whys(), Catch::Contains("The " + dead + " is out of use."));
  week.accept(anew);
  week.check_each_step_once();
  const auto dead_kiln = db::find_kiln(week.shop, dead, "kiln");
  for (const auto& firing : week.booked()) CHECK(firing.kiln != dead_kiln->id);
}

TEST_CASE("a blade that is not ready in time leaves its firing to the others") {
  Week week;
  week.did("change_setting", {{"name", "cost_of_moved_firing"}, {"value", "500.00"}});
  week.accept(week.anew());
  const std::string number = week.fullest_hardening();
  const auto before = db::find_firing(week.shop, number, "firing");
  REQUIRE(before->blades.size() > 1);
  const auto late = db::load_blade(week.shop, before->blades.front().blade);
  week.did("add_route_step", {{"blade", std::to_string(late->number)},
                              {"operation", "drill"},
                              {"position", "2"},
                              {"hands_on", "7h"}});
  const Anew anew = week.anew();
  CHECK(anew.difference.moved == 0);
  CHECK_THAT(anew.whys(), Catch::Contains("is not ready by then"));
  week.accept(anew);
  week.check_each_step_once();
  CHECK(db::find_firing(week.shop, number, "firing")->starts_at == before->starts_at);
  CHECK(db::find_firing(week.shop, number, "firing")->blades.size() < before->blades.size());
}

TEST_CASE("with a price of nothing a new plan may move what a price would have kept") {
  Week week;
  // Booked by hand far apart: a fuller firing would be cheaper.
  week.did("book_firing", {{"kiln", "Long kiln"}, {"blades", week.blades[0]}, {"start", "10:00"}});
  week.did("book_firing", {{"kiln", "Long kiln"}, {"blades", week.blades[1]}, {"start", "13:30"}});
  week.did("change_setting", {{"name", "cost_of_moved_firing"}, {"value", "500.00"}});
  const Anew kept = week.anew();
  CHECK(kept.difference.moved == 0);
  week.did("change_setting", {{"name", "cost_of_moved_firing"}, {"value", "0.00"}});
  const Anew free = week.anew();
  CHECK(free.difference.moved > 0);
  CHECK(free.found.answer.cost.total_mc() < kept.found.answer.cost.total_mc());
  CHECK(free.difference.energy_after < kept.difference.energy_after);
}

TEST_CASE("a firing whose time has passed and that was not logged is planned anew, and once") {
  Week week;
  week.accept(week.anew());
  const auto first = week.booked().front();
  week.now = first.starts_at + std::chrono::minutes(20);
  const Anew anew = week.anew();
  CHECK_THAT(anew.whys(), Catch::Contains("Its time has passed and it was not logged"));
  const auto conflicts = db::booked_conflicts(anew.shop);
  REQUIRE_FALSE(conflicts.empty());
  CHECK(conflicts.front().firing == first.number);
  week.accept(anew);
  week.check_each_step_once();
  for (const auto& firing : week.booked()) CHECK(firing.starts_at >= week.now);
}

TEST_CASE("a running firing keeps its kiln hot and its blades until its end") {
  Week week;
  week.accept(week.anew());
  const auto first = week.booked().front();
  week.now = first.starts_at;
  week.did("run_firing",
           {{"firing", std::to_string(first.number)}, {"start", clock_text(week.now, Zone())}});
  week.now += std::chrono::minutes(5);
  const Anew anew = week.anew();
  CHECK(anew.difference.moved == 0);
  const auto kiln =
      std::find_if(anew.shop.a_case.kilns.begin(), anew.shop.a_case.kilns.end(),
                   [&](const kiln::PlanKiln& k) { return anew.shop.kilns.at(k.id) == first.kiln; });
  REQUIRE(kiln->state);
  CHECK(kiln->state->off_c == first.set.whole_celsius());
  CHECK(kiln->state->free_at_min >= anew.shop.minute(first.ends_at));
  for (const auto& member : first.blades) {
    for (const auto& [name, chain] : anew.shop.chains) {
      if (chain.blade != member.blade) continue;
      CHECK(std::find(chain.steps.begin(), chain.steps.end(), *member.step) == chain.steps.end());
      for (const auto& blade : anew.shop.a_case.blades)
        if (blade.id == name) CHECK(blade.release_min >= anew.shop.minute(first.ends_at));
    }
  }
  week.accept(anew);
  CHECK(db::find_firing(week.shop, std::to_string(first.number), "firing")->state ==
        kiln::FiringState::running);
}

TEST_CASE("a firing that still runs after its planned end holds its kiln until now") {
  Week week;
  week.accept(week.anew());
  const auto first = week.booked().front();
  week.now = first.starts_at;
  week.did("run_firing",
           {{"firing", std::to_string(first.number)}, {"start", clock_text(week.now, Zone())}});
  week.now = first.ends_at + std::chrono::minutes(40);
  const auto shop_case = db::shop_case(week.shop, week.now, db::Keep::locked_only);
  for (const auto& k : shop_case.a_case.kilns)
    if (shop_case.kilns.at(k.id) == first.kiln) {
      REQUIRE(k.state);
      CHECK(k.state->off_at_min == 0);
    }
}

TEST_CASE("a kiln that heats for its next firing need not heat from cold") {
  Week week;
  week.accept(week.anew());
  const auto first = week.booked().front();
  week.now = first.starts_at - std::chrono::minutes(15);
  REQUIRE(first.heat_from < week.now);
  const Anew anew = week.anew();
  CHECK(anew.difference.moved == 0);
  CHECK(db::booked_conflicts(anew.shop).empty());
}

TEST_CASE("what was set aside for a firing is kept with it, and no new plan moves it") {
  Week week;
  const auto firing = week.did(
      "book_firing", {{"kiln", "Long kiln"}, {"blades", week.blades[0]}, {"start", "12:00"}});
  CHECK_FALSE(week.tries("move_firing", {{"firing", firing}, {"start", "18:30"}}));
  week.did("move_firing",
           {{"firing", firing}, {"start", "18:30"}, {"override", "I stay late today"}});
  const auto kept = db::find_firing(week.shop, firing, "firing");
  CHECK(kept->locked);
  const auto reasons = db::set_aside_for_firing(week.shop, kept->number);
  REQUIRE_FALSE(reasons.empty());
  CHECK_THAT(reasons.front(), Catch::StartsWith("I stay late today: It needs you from"));
  const Anew anew = week.anew();
  CHECK(db::booked_conflicts(anew.shop).empty());
  // Its temper would have to begin that night, too: only that blade is left, and told why.
  REQUIRE(anew.found.answer.unplaced.size() == 1);
  CHECK(anew.found.answer.unplaced.front().blade == week.blades[0]);
  CHECK_FALSE(anew.found.answer.unplaced.front().change.empty());
  week.accept(anew);
  CHECK(db::find_firing(week.shop, firing, "firing")->starts_at == kept->starts_at);
  week.check_each_step_once();
}

TEST_CASE(
    "a locked firing whose kiln has died does not stop the plan, and is said to be impossible") {
  Week week;
  const auto firing = week.did(
      "book_firing",
      {{"kiln", "Long kiln"}, {"blades", week.blades[0]}, {"start", "12:00"}, {"locked", "yes"}});
  week.did("change_kiln", {{"kiln", "Long kiln"}, {"out_of_use_on", "2026-11-25"}});
  const Anew anew = week.anew();
  CHECK(anew.found.answer.unplaced.size() == 5);
  CHECK_THAT(anew.found.answer.unplaced.front().why, Catch::Contains("805 \u00B0C"));
  CHECK_FALSE(anew.found.answer.unplaced.front().change.empty());
  REQUIRE_FALSE(db::booked_conflicts(anew.shop).empty());
  CHECK(db::booked_conflicts(anew.shop).front().sentence == "The Long kiln is out of use.");
}

TEST_CASE("a blade out of the shop is planned from the end of the day on which it is due back") {
  Week week;
  week.did("send_outside", {{"blade", week.blades[0]},
                            {"operation", "engraving"},
                            {"who", "the engraver"},
                            {"due_back", "2026-11-27"}});
  week.did("send_outside",
           {{"blade", week.blades[1]}, {"operation", "engraving"}, {"who", "the engraver"}});
  const auto shop_case = db::shop_case(week.shop, week.now, db::Keep::locked_only);
  CHECK_FALSE(shop_case.chains.contains(week.blades[1]));
  CHECK_THAT(shop_case.left_aside.front(), Catch::Contains("no day on which it is due back"));
  for (const auto& blade : shop_case.a_case.blades)
    if (blade.id == week.blades[0]) CHECK(blade.release_min >= 2 * 24 * 60);
}

TEST_CASE("a fitted load effect makes a loaded firing longer to load and dearer in energy") {
  Week week;
  const Anew bare = week.anew();
  {
    const auto kept = db::find_kiln(week.shop, "Long kiln", "kiln");
    kiln::Kiln fitted = *kept;
    fitted.load_per_h = TemperatureDifference::celsius(20);
    db::change(week.shop, kept->id, fitted);
  }
  const Anew loaded = week.anew();
  CHECK(loaded.difference.energy_after > bare.difference.energy_after);
  const auto load_of = [](const Anew& anew) {
    for (const auto& k : anew.shop.a_case.kilns)
      if (k.id == "Long kiln") return k.load_min;
    return 0;
  };
  // By hand: 4 blades x 20 / 900 of the 52.3 min from 20 to 805 C are 4.65 min, so 5 more.
  CHECK(load_of(loaded) == load_of(bare) + 5);
}

TEST_CASE("days off hold no firing that needs hands") {
  Week week;
  week.did("add_day_off", {{"day", "2026-11-26"}, {"why", "a fair"}});
  const Anew anew = week.anew();
  for (const auto& change : anew.difference.changes)
    CHECK(Zone().date_of(change.firing.starts_at) != CalendarDate(date::year{2026} / 11 / 26));
}
