// SPDX-License-Identifier: MIT
#include "domain/commission/promise_calendar.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::commission;
using namespace std::chrono_literals;
using namespace date::literals;

namespace {

/// Monday to Friday five hours from nine, in a zone without clock changes.
BenchWeek a_week() {
  BenchWeek week;
  week.bench = {0h, 5h, 5h, 5h, 5h, 5h, 0h};
  return week;
}
const Instant wednesday_seven = date::sys_days(2026_y / 11 / 25) + 7h;
constexpr std::int64_t hour = 3600;

BenchCalendar a_calendar() { return *BenchCalendar::from(a_week(), wednesday_seven, Zone()); }

}  // namespace

TEST_CASE("bench hours fill the days of the week one after the other") {
  const BenchCalendar c = a_calendar();
  CHECK(c.instant_of(c.when_done(1 * hour)) == date::sys_days(2026_y / 11 / 25) + 10h);
  CHECK(c.instant_of(c.when_done(5 * hour)) == date::sys_days(2026_y / 11 / 25) + 14h);
  CHECK(c.instant_of(c.when_done(5 * hour + 1)) == date::sys_days(2026_y / 11 / 26) + 9h + 1s);
  // Fifteen hours end on Friday, sixteen on Monday.
  CHECK(c.date_of(c.when_done(15 * hour)) == 2026_y / 11 / 27);
  CHECK(c.date_of(c.when_done(16 * hour)) == 2026_y / 11 / 30);
}

TEST_CASE("days off are skipped and today counts only what is left of it") {
  BenchWeek week = a_week();
  week.days_off = {2026_y / 11 / 26};
  const Instant noon = date::sys_days(2026_y / 11 / 25) + 12h;
  const BenchCalendar c = *BenchCalendar::from(week, noon, Zone());
  CHECK(c.instant_of(c.when_done(2 * hour)) == date::sys_days(2026_y / 11 / 25) + 14h);
  CHECK(c.instant_of(c.when_done(3 * hour)) == date::sys_days(2026_y / 11 / 27) + 10h);
}

TEST_CASE("a wait that ends at night or on Sunday resumes at the next bench hour") {
  const BenchCalendar c = a_calendar();
  CHECK(c.bench_at(0) == 0);
  CHECK(c.bench_at(2 * hour) == 0);            // nine o'clock
  CHECK(c.bench_at(4 * hour) == 2 * hour);     // eleven
  CHECK(c.bench_at(14 * hour) == 5 * hour);    // nine in the evening
  CHECK(c.bench_at(4 * 24 * hour) == 15 * hour);  // Sunday
}

TEST_CASE("going to bench time and back keeps the instant within bench hours") {
  const BenchCalendar c = a_calendar();
  std::size_t day = 0;
  for (std::int64_t b = 60; b < 200 * hour; b += 977) {
    CHECK(c.bench_at(c.when_done(b)) == b);
    CHECK(c.when_done(b, day) == c.when_done(b));
  }
}

TEST_CASE("instants and calendar seconds agree in the shop's zone") {
  const Zone berlin = *Zone::of("Europe/Berlin");
  const BenchCalendar c = *BenchCalendar::from(a_week(), wednesday_seven, berlin);
  const Instant later = date::sys_days(2026_y / 12 / 9) + 15h + 20min;
  CHECK(c.instant_of(c.calendar_of(later)) == later);
  CHECK(c.calendar_of(wednesday_seven) == 0);
  CHECK(c.calendar_per_bench() == Approx(7.0 * 24 / 25));
}

TEST_CASE("a week without bench hours is refused") {
  CHECK(BenchCalendar::from({}, wednesday_seven, Zone()).problem().field == "bench hours");
  BenchWeek week = a_week();
  week.bench[3] = 16h;
  CHECK_FALSE(BenchCalendar::from(week, wednesday_seven, Zone()).ok());
}
