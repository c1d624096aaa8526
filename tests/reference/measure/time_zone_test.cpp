// SPDX-License-Identifier: MIT
// Sources: the IANA tz database's rules for 2026 as printed by zdump (figures in the first three
// cases), and Python's zoneinfo, an independent reader of it, for a grid of instants.
#include <catch2/catch.hpp>
#include <sstream>

#include "domain/measure/when.h"
#include "tests/reference/measure/outside_program.h"

using namespace tangmark;
using namespace date::literals;
using std::chrono::hours;
using std::chrono::minutes;

namespace {

// Start on the wall clock, true length, end on the wall clock.
void check_firing(const char* zone_name, CalendarDate day, minutes start, Duration length,
                  const char* end) {
  const Zone zone = *Zone::of(zone_name);
  const Instant begin = zone.at(day, start);
  const Instant finish = begin + length;
  CHECK(to_text(finish, zone) == end);
  const auto read_end = parse_instant(to_stored(finish), zone, begin, "end");
  CHECK(*read_end - begin == length);
}

}  // namespace

TEST_CASE("a firing across the spring change lasts its true minutes") {
  // zdump: Europe/Berlin 2026-03-29 00:59:59 UT is 01:59:59 CET, 01:00:00 UT is 03:00:00 CEST.
  check_firing("Europe/Berlin", 2026_y / 3 / 29, hours{0} + minutes{30}, hours{5},
               "Sun 29 Mar 2026, 06:30");
  // zdump: America/New_York 2026-03-08 06:59:59 UT is 01:59:59 EST, 07:00:00 UT is 03:00:00 EDT.
  check_firing("America/New_York", 2026_y / 3 / 8, hours{1}, hours{2}, "Sun 8 Mar 2026, 04:00");
}

TEST_CASE("a firing across the autumn change lasts its true minutes") {
  // zdump: Europe/Berlin 2026-10-25 00:59:59 UT is 02:59:59 CEST, 01:00:00 UT is 02:00:00 CET.
  check_firing("Europe/Berlin", 2026_y / 10 / 25, hours{0} + minutes{30}, hours{5},
               "Sun 25 Oct 2026, 04:30");
  // zdump: America/New_York 2026-11-01 05:59:59 UT is 01:59:59 EDT, 06:00:00 UT is 01:00:00 EST.
  check_firing("America/New_York", 2026_y / 11 / 1, hours{0} + minutes{30}, hours{2},
               "Sun 1 Nov 2026, 01:30");
}

TEST_CASE("the wall clock of a day shows 23, 24 or 25 true hours") {
  const Zone berlin = *Zone::of("Europe/Berlin");
  const auto day_length = [&](CalendarDate day) {
    return berlin.at(day, hours{24}) - berlin.at(day, hours{0});
  };
  CHECK(day_length(2026_y / 3 / 29) == hours{23});
  CHECK(day_length(2026_y / 6 / 1) == hours{24});
  CHECK(day_length(2026_y / 10 / 25) == hours{25});
}

TEST_CASE("Python's zoneinfo shows the same wall clock around every change of two years") {
  if (std::system("/usr/bin/python3 -c 'import zoneinfo' > /dev/null 2>&1") != 0) {
    WARN("Python's zoneinfo is not installed: the second opinion is not asked");
    return;
  }
  const std::string zones =
      "Europe/Berlin America/New_York Europe/London Australia/Lord_Howe Asia/Kathmandu "
      "America/St_Johns Africa/Casablanca Etc/UTC";
  std::istringstream lines(output_of("/usr/bin/python3 " + std::string(TANGMARK_TESTS_DIR) +
                                     "/reference/measure/wall_clocks.py " + zones));
  std::string zone_name, day, clock;
  std::int64_t seconds = 0, back = 0;
  std::size_t checked = 0;
  while (lines >> zone_name >> seconds >> day >> clock >> back) {
    const Zone zone = *Zone::of(zone_name);
    const Instant at{std::chrono::seconds{seconds}};
    const Instant first{std::chrono::seconds{back}};
    const CalendarDate date = zone.date_of(at);
    if (to_stored(date) != day || clock_text(at, zone) != clock ||
        zone.at(date, zone.clock_of(at)) != first) {
      FAIL_CHECK(zone_name << " at " << to_stored(at) << " is " << day << " " << clock);
    }
    ++checked;
  }
  CHECK(checked > 10'000);
}
