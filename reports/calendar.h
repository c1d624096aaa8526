// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"

namespace tangmark::reports {

/// One entry of a calendar file. With `end` it is a span of time; with neither, use all_day.
struct CalendarEvent {
  std::string uid;  ///< stays the same each time the same thing is written: "firing-12@quillfen"
  std::string summary;
  std::string description;
  std::string location;
  Instant start{};
  std::optional<Instant> end;
  std::optional<CalendarDate> all_day;  ///< for promises: a day without a time; start is not used
  int sequence = 0;                     ///< raised each time the thing is moved
  std::optional<Duration> remind_before;
};

/// Writes an iCalendar file. Times are in UTC; lines end in CR LF and are folded at 75 octets,
/// never inside a character.
/// **Source** RFC 5545 sections 3.1 (folding), 3.3.11 (escaping), 3.6.1 (VEVENT).
/// Refuses an empty or doubled uid, an end before its start, text that is not UTF-8.
Outcome<std::string> calendar_text(const std::vector<CalendarEvent>& events, Instant stamp,
                                   std::string_view calendar_name);

}  // namespace tangmark::reports
