// SPDX-License-Identifier: MIT
#pragma once

#include <date/date.h>
#include <date/tz.h>

#include <chrono>
#include <string>
#include <string_view>

#include "domain/measure/outcome.h"

namespace tangmark {

/// A point in time, to the second. A span is a Duration. Calendar dates are date::year_month_day.
using Instant = date::sys_seconds;
using Duration = std::chrono::seconds;
using CalendarDate = date::year_month_day;

/// The shop's IANA zone. All calendar arithmetic goes through it, so that a firing over a change of
/// the clocks lasts its true minutes. Source of the rules: the machine's IANA tz database.
class Zone {
 public:
  static Outcome<Zone> of(std::string_view name, std::string_view field = "zone");
  Zone();  ///< Etc/UTC
  std::string name() const;
  CalendarDate date_of(Instant at) const;
  /// Minutes since local midnight by the clock on the wall.
  std::chrono::minutes clock_of(Instant at) const;
  date::weekday weekday_of(Instant at) const;
  /// The instant of a wall-clock time. In the hour that does not exist: the instant of the change.
  /// In the hour that happens twice: the first of the two.
  Instant at(CalendarDate day, std::chrono::seconds since_midnight) const;
  /// Whether the wall clock shows this time twice that day, so that a reader may ask which.
  bool happens_twice(CalendarDate day, std::chrono::seconds since_midnight) const;

 private:
  explicit Zone(const date::time_zone* zone) : zone_(zone) {}
  const date::time_zone* zone_;  // owned by the tz database for the life of the program
};

/// Reads "2026-11-25T07:51:00+01:00", "...Z", "2026-11-25 07:51" and "2026-11-25" (start of day) in
/// the shop's zone, "07:51" (today at `now`), and "now". Trailing words are refused, so are years
/// outside 1900 to 2199. Parts of a second are cut off.
Outcome<Instant> parse_instant(std::string_view text, const Zone& zone, Instant now,
                               std::string_view field);
/// Reads "2026-11-25" or "25 Nov 2026". Refuses a day that the month does not have.
Outcome<CalendarDate> parse_date(std::string_view text, std::string_view field);
/// Reads "2h", "1:30", "90 min", "1 h 20 min", "45 s", "2.5 h", "3 d"; a bare number is minutes.
/// Refuses negative spans and anything above ten years.
Outcome<Duration> parse_duration(std::string_view text, std::string_view field);

/// "2026-11-25T06:51:00Z": for storing; sorts as text.
std::string to_stored(Instant at);
Outcome<Instant> from_stored_instant(std::string_view text, std::string_view field);
/// "2026-11-25".
std::string to_stored(CalendarDate day);
/// "Wed 25 Nov 2026, 07:51".
std::string to_text(Instant at, const Zone& zone);
/// "07:51".
std::string clock_text(Instant at, const Zone& zone);
/// "Wed 25 Nov 2026" and the short "25 Nov".
std::string to_text(CalendarDate day);
std::string short_text(CalendarDate day);
/// "2 h 05 min", "45 s", "3 d 2 h": from an hour to the nearest minute, from 48 hours to the
/// nearest hour.
std::string to_text(Duration span);
/// "2.1" hours to one decimal, for tables whose head names the hour.
std::string hours_text(Duration span);

}  // namespace tangmark
