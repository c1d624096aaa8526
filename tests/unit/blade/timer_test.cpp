// SPDX-License-Identifier: MIT
#include "domain/blade/timer.h"

#include <catch2/catch.hpp>
#include <numeric>

using namespace tangmark;
using namespace tangmark::blade;
using namespace std::chrono_literals;

namespace {

const Instant eight = date::sys_days{date::year{2026} / 11 / 25} + 8h;
const std::vector<std::pair<Instant, Instant>> bench{{eight, eight + 4h}, {eight + 5h, eight + 9h}};

KeptTimer a_timer(std::int64_t number, Instant from, std::optional<Instant> to) {
  Timer timer;
  timer.number = number;
  timer.operation = "rough grind";
  timer.blades = {BladeId{number}};
  timer.stretches = {{from, to}};
  return {TimerId{number}, timer};
}

}  // namespace

TEST_CASE("pauses are no work") {
  auto timer = a_timer(1, eight, eight + 20min);
  timer.stretches.push_back({eight + 50min, std::nullopt});
  CHECK(time_run(timer, eight + 60min) == 30min);
  CHECK(time_run(timer, eight + 55min) == 25min);
  CHECK(time_run(timer, eight + 10min) == 10min);
}

TEST_CASE("equal parts sum to the whole, to the second") {
  for (const int seconds : {0, 1, 59, 3600, 3601, 7321})
    for (const std::size_t parts : {1u, 2u, 3u, 7u}) {
      const auto all = equal_parts(Duration(seconds), parts);
      CHECK(std::accumulate(all.begin(), all.end(), Duration()) == Duration(seconds));
      CHECK(*std::max_element(all.begin(), all.end()) - *std::min_element(all.begin(), all.end()) <=
            1s);
    }
}

TEST_CASE("minutes in which two timers run are shared, and none is counted twice") {
  // 8:00 to 9:00 and 8:30 to 10:00: half an hour of both is shared.
  const auto first = a_timer(1, eight, eight + 60min);
  const auto second = a_timer(2, eight + 30min, eight + 120min);
  const std::vector<KeptTimer> all{first, second};
  CHECK(fair_time(first, all, eight + 5h) == 45min);
  CHECK(fair_time(second, all, eight + 5h) == 75min);
}

TEST_CASE("three timers of odd seconds still sum to the time of one pair of hands") {
  const std::vector<KeptTimer> all{a_timer(1, eight, eight + 100s),
                                   a_timer(2, eight + 3s, eight + 101s),
                                   a_timer(3, eight + 7s, std::nullopt)};
  Duration sum{};
  for (const auto& timer : all) sum += fair_time(timer, all, eight + 111s);
  CHECK(sum == 111s);
}

TEST_CASE("waiting beside the work, another hand and a discarded timer share nothing") {
  const auto work = a_timer(1, eight, eight + 60min);
  auto wait = a_timer(2, eight, eight + 60min);
  wait.timed_as = TimedAs::attended;
  auto helper = a_timer(3, eight, eight + 60min);
  helper.who = "the apprentice";
  auto thrown = a_timer(4, eight, eight + 60min);
  thrown.state = TimerState::discarded;
  const std::vector<KeptTimer> all{work, wait, helper, thrown};
  CHECK(fair_time(work, all, eight + 60min) == 60min);
}

TEST_CASE("a timer that runs past the bench day was forgotten, and the day's end is proposed") {
  const auto timer = a_timer(1, eight + 1h, std::nullopt);
  const Zone utc;
  CHECK_FALSE(forgotten(timer, bench, utc, eight + 6h, 12h, 1h));  // over the rest at noon
  CHECK_FALSE(forgotten(timer, bench, utc, eight + 9h + 30min, 12h, 1h));
  const auto lost = forgotten(timer, bench, utc, eight + 9h + 31min, 12h, 1h);
  REQUIRE(lost);
  CHECK(lost->why == Forgotten::Why::past_the_bench_day);
  CHECK(lost->ended == eight + 9h);
}

TEST_CASE("evening work is forgotten after the limit, and the planned time is proposed") {
  const auto timer = a_timer(1, eight + 12h, std::nullopt);
  const Zone utc;
  CHECK_FALSE(forgotten(timer, bench, utc, eight + 24h, 12h, 90min));
  const auto lost = forgotten(timer, bench, utc, eight + 24h + 1s, 12h, 90min);
  REQUIRE(lost);
  CHECK(lost->ended == eight + 13h + 30min);
  CHECK(forgotten(timer, bench, utc, eight + 30h, 12h, Duration())->ended == eight + 24h);
}

TEST_CASE("a paused timer is not forgotten") {
  auto timer = a_timer(1, eight, eight + 1h);
  timer.state = TimerState::paused;
  CHECK_FALSE(forgotten(timer, bench, Zone(), eight + 90h, 12h, 1h));
}
