// SPDX-License-Identifier: MIT
#include "reports/calendar.h"

#include <catch2/catch.hpp>

#include "samples.h"

namespace tangmark::reports::samples {

namespace {

CalendarEvent firing_event() {
  CalendarEvent event;
  event.uid = "firing-57@quillfen";
  event.summary = "Long kiln: hardening, 4 blades";
  event.start = noon();
  event.end = noon() + std::chrono::minutes(150);
  return event;
}

std::string written(const CalendarEvent& event) {
  return *calendar_text({event}, noon(), "Quillfen Bench");
}

}  // namespace

TEST_CASE("a firing becomes an entry in world time") {
  const std::string text = written(firing_event());
  CHECK_THAT(text, Catch::Contains("DTSTART:20261124T110000Z\r\n") &&
                       Catch::Contains("DTEND:20261124T133000Z\r\n") &&
                       Catch::Contains("DTSTAMP:20261124T110000Z\r\n") &&
                       Catch::Contains("SUMMARY:Long kiln: hardening\\, 4 blades\r\n"));
}

TEST_CASE("a promise is a day without a time, and ends the day after") {
  CalendarEvent event = firing_event();
  event.all_day = CalendarDate(date::year(2027) / 2 / 28);
  CHECK_THAT(written(event), Catch::Contains("DTSTART;VALUE=DATE:20270228\r\n") &&
                                 Catch::Contains("DTEND;VALUE=DATE:20270301\r\n"));
}

TEST_CASE("no line of a calendar is longer than 75 octets nor cut inside a character") {
  CalendarEvent event = firing_event();
  for (int i = 0; i < 40; ++i) event.description += "Щит; λάδι, °C\\\n";
  const std::string text = written(event);
  std::string unfolded;
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t end = text.find("\r\n", from);
    REQUIRE(end != std::string::npos);
    const std::string line = text.substr(from, end - from);
    CHECK(line.size() <= 75);
    CHECK((static_cast<unsigned char>(line[line[0] == ' ' ? 1 : 0]) & 0xC0U) != 0x80U);
    unfolded += line[0] == ' ' ? line.substr(1) : "\n" + line;
    from = end + 2;
  }
  CHECK_THAT(unfolded, Catch::Contains("Щит\\; λάδι\\, °C\\\\\\nЩит"));
}

TEST_CASE("calendar entries that clash or end before they start are refused") {
  CalendarEvent backwards = firing_event();
  backwards.end = noon() - std::chrono::minutes(1);
  CHECK(!calendar_text({backwards}, noon(), "x"));
  CHECK(!calendar_text({firing_event(), firing_event()}, noon(), "x"));
  CalendarEvent unnamed = firing_event();
  unnamed.uid = "";
  CHECK(!calendar_text({unnamed}, noon(), "x"));
}

}  // namespace tangmark::reports::samples
