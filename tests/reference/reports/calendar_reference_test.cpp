// SPDX-License-Identifier: MIT
// Checker: libical 3, the reference reader of RFC 5545 used by the desktop calendars.
#include <libical/ical.h>

#include <catch2/catch.hpp>
#include <memory>
#include <string>

#include "reports/calendar.h"
#include "samples.h"

namespace tangmark::reports::samples {

namespace {

using Component = std::unique_ptr<icalcomponent, decltype(&icalcomponent_free)>;

Component parsed(const std::string& text) {
  return {icalparser_parse_string(text.c_str()), &icalcomponent_free};
}

}  // namespace

TEST_CASE("libical reads back what the calendar says, without one error") {
  CalendarEvent firing;
  firing.uid = "firing-57@quillfen";
  firing.summary = "Quench: 41, 42; fast oil — λάδι, масло \\ 805 °C";
  firing.description = std::string(300, 'x') + "\nsecond line";
  firing.location = "Long kiln";
  firing.start = noon();
  firing.end = noon() + std::chrono::minutes(150);
  firing.sequence = 3;
  firing.remind_before = std::chrono::minutes(20);
  CalendarEvent promise;
  promise.uid = "promise-72@quillfen";
  promise.summary = "Promised: chef’s knife";
  promise.all_day = CalendarDate(date::year(2027) / 2 / 12);

  const Component calendar = parsed(*calendar_text({firing, promise}, noon(), "Quillfen Bench"));
  REQUIRE(calendar);
  CHECK(icalcomponent_count_errors(calendar.get()) == 0);
  CHECK(icalrestriction_check(calendar.get()) == 1);

  icalcomponent* first = icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
  REQUIRE(first != nullptr);
  CHECK(std::string(icalcomponent_get_summary(first)) == firing.summary);
  CHECK(std::string(icalcomponent_get_description(first)) == firing.description);
  CHECK(icalcomponent_get_sequence(first) == 3);
  CHECK(icaltime_as_timet(icalcomponent_get_dtstart(first)) ==
        static_cast<std::time_t>(firing.start.time_since_epoch().count()));
  CHECK(icaltime_as_timet(icalcomponent_get_dtend(first)) -
            icaltime_as_timet(icalcomponent_get_dtstart(first)) ==
        150 * 60);
  CHECK(icalcomponent_count_components(first, ICAL_VALARM_COMPONENT) == 1);

  icalcomponent* second = icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT);
  REQUIRE(second != nullptr);
  const icaltimetype day = icalcomponent_get_dtstart(second);
  CHECK(day.is_date == 1);
  CHECK(day.year == 2027);
  CHECK(day.month == 2);
  CHECK(day.day == 12);
}

}  // namespace tangmark::reports::samples
