// SPDX-License-Identifier: MIT
#include "domain/measure/when.h"

#include "tests/unit/measure/refusal.h"

using namespace tangmark;
using namespace date::literals;
using std::chrono::hours;
using std::chrono::minutes;

namespace {

const Zone& berlin() {
  static const Zone zone = *Zone::of("Europe/Berlin");
  return zone;
}

Instant utc(CalendarDate day, std::chrono::seconds since_midnight) {
  return Instant{date::sys_days{day} + since_midnight};
}

const Instant morning = utc(2026_y / 11 / 25, hours{6} + minutes{51});

struct Read {
  const char* text;
  Instant instant;
};

struct Refused {
  const char* text;
  const char* word;
};

}  // namespace

TEST_CASE("a zone that the tz database does not have is refused") {
  for (const char* name : {"", "Berlin", "Europe/Atlantis", "../../etc/passwd", "+01:00"}) {
    CAPTURE(name);
    check_refused(Zone::of(name, "zone"), "zone", "not a time zone");
  }
  CHECK(Zone().name() == "Etc/UTC");
  CHECK(berlin().name() == "Europe/Berlin");
}

TEST_CASE("an instant is read with an offset, in the shop's zone, today, or as now") {
  const auto row = GENERATE(values<Read>({
      {"2026-11-25T07:51:00+01:00", morning},
      {"2026-11-25T07:51+0100", morning},
      {"2026-11-25T07:51:00 +01", morning},
      {"2026-11-25T06:51:00Z", morning},
      {"2026-11-25T01:51:00-05:00", morning},
      {"2026-11-25T06:51:00.750Z", morning},
      {"2026-11-25 07:51", morning},
      {"2026-11-25T07:51:00", morning},
      {"2026-11-25", utc(2026_y / 11 / 24, hours{23})},
      {"08:00", utc(2026_y / 11 / 25, hours{7})},
      {" now ", morning},
  }));
  CAPTURE(row.text);
  const auto instant = parse_instant(row.text, berlin(), morning, "when");
  REQUIRE(instant.ok());
  CHECK(*instant == row.instant);
}

TEST_CASE("a time that is not one is refused") {
  const auto row = GENERATE(values<Refused>({
      {"", "not a time"},
      {"soon", "not a time"},
      {"2026-02-30 10:00", "does not exist"},
      {"2026-13-01", "does not exist"},
      {"2026-00-10", "does not exist"},
      {"2026-11-25 24:00", "no time of day"},
      {"2026-11-25 07:60", "no time of day"},
      {"2026-11-25 07:51:60", "no time of day"},
      {"2026-11-25 7:51", "no time of day"},
      {"2026-11-25 07:51 o'clock", "not an offset"},
      {"2026-11-25T07:51:00+25:00", "not an offset"},
      {"2026-11-25T07:51:00+1", "not an offset"},
      {"2026-11-25x", "not a time"},
      {"26-11-25", "not a time"},
      {"25/11/2026 10:00", "not a time"},
      {"1899-12-31", "1900 and 2199"},
      {"9999-01-01", "1900 and 2199"},
      {"07:51 tomorrow", "not a time"},
      {"1764057060", "not a time"},
  }));
  CAPTURE(row.text);
  check_refused(parse_instant(row.text, berlin(), morning, "when"), "when", row.word);
}

TEST_CASE("a date is read in figures or with the month's name") {
  for (const char* text : {"2026-11-25", "25 Nov 2026", "25 november 2026", " 25 NOV 2026 "}) {
    CAPTURE(text);
    REQUIRE(parse_date(text, "day").ok());
    CHECK(*parse_date(text, "day") == 2026_y / 11 / 25);
  }
  CHECK(*parse_date("5 May 2026", "day") == 2026_y / 5 / 5);
  CHECK(*parse_date("29 Feb 2028", "day") == 2028_y / 2 / 29);
}

TEST_CASE("a date that is not one or means two things is refused") {
  const auto row = GENERATE(values<Refused>({
      {"", "not a date"},
      {"11/25/2026", "not a date"},
      {"25.11.2026", "not a date"},
      {"2026-11-25 07:51", "not a date"},
      {"2026-2-3", "not a date"},
      {"25 Foo 2026", "not a date"},
      {"Nov 2026", "not a date"},
      {"29 Feb 2026", "does not exist"},
      {"2026-11-31", "does not exist"},
      {"1 Jan 1800", "1900 and 2199"},
  }));
  CAPTURE(row.text);
  check_refused(parse_date(row.text, "day"), "day", row.word);
}

TEST_CASE("a stored time sorts as text and comes back the same") {
  CHECK(to_stored(morning) == "2026-11-25T06:51:00Z");
  CHECK(*from_stored_instant("2026-11-25T06:51:00Z", "at") == morning);
  CHECK(to_stored(2026_y / 3 / 5) == "2026-03-05");
  for (const char* text : {"2026-11-25T06:51:00", "2026-11-25T06:51Z", "2026-11-25 06:51:00Z",
                           "2026-11-31T06:51:00Z", "2026-11-25T06:51:00+01:00", ""}) {
    CAPTURE(text);
    check_refused(from_stored_instant(text, "at"), "at", "not a stored time");
  }
}

TEST_CASE("a time is shown by the shop's clock") {
  CHECK(to_text(morning, berlin()) == "Wed 25 Nov 2026, 07:51");
  CHECK(clock_text(morning, berlin()) == "07:51");
  CHECK(to_text(CalendarDate{2026_y / 11 / 5}) == "Thu 5 Nov 2026");
  CHECK(short_text(2026_y / 11 / 25) == "25 Nov");
  CHECK(berlin().weekday_of(morning) == date::Wednesday);
  CHECK(berlin().clock_of(morning) == hours{7} + minutes{51});
  CHECK(berlin().date_of(utc(2026_y / 11 / 24, hours{23})) == 2026_y / 11 / 25);
}

TEST_CASE("a time in the hour that does not exist is the instant of the change") {
  const Instant change = utc(2026_y / 3 / 29, hours{1});
  CHECK(berlin().at(2026_y / 3 / 29, hours{2} + minutes{30}) == change);
  CHECK(berlin().at(2026_y / 3 / 29, hours{3}) == change);
  CHECK(*parse_instant("2026-03-29 02:30", berlin(), morning, "when") == change);
}

TEST_CASE("a time in the hour that happens twice is the first of the two") {
  CHECK(berlin().at(2026_y / 10 / 25, hours{2} + minutes{30}) ==
        utc(2026_y / 10 / 25, minutes{30}));
  CHECK(berlin().happens_twice(2026_y / 10 / 25, hours{2} + minutes{30}));
  CHECK_FALSE(berlin().happens_twice(2026_y / 10 / 25, hours{3}));
  CHECK_FALSE(berlin().happens_twice(2026_y / 3 / 29, hours{2} + minutes{30}));
}
