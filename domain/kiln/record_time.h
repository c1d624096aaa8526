// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "domain/kiln/record_shape.h"
#include "domain/measure/when.h"

namespace tangmark::kiln {

/// A date and a time as a logger writes them.
struct WrittenTime {
  bool has_date = false;
  std::int64_t first = 0, second = 0, third = 0;  ///< the date's figures in written order
  bool year_leads = false;                        ///< the first figure has four digits
  char date_mark = 0;                             ///< '-', '/' or '.'
  bool has_clock = false;                         ///< h:mm was written
  bool has_seconds = false;
  std::int64_t ms = 0;                            ///< since midnight, or a bare h:mm:ss
  std::optional<std::int64_t> offset_min;         ///< east of UTC, when written
};

/// Reads "2026-11-25T07:51:00.5+01:00", "25.11.2026 7:51", "11/25/2026 7:51:02 PM", "07:51:00",
/// "26:10:05"; none when it is none of these.
std::optional<WrittenTime> read_written_time(std::string_view cell);

/// Turns the time cells of a record into milliseconds: since the record's own zero for elapsed,
/// since midnight of the first day for a time of day (midnight carries over), since 1970 for dates.
/// The hour that happens twice in autumn is told apart by the order of the rows.
class RecordTimes {
 public:
  RecordTimes(const RecordShape& shape, const Zone& zone) : shape_(shape), zone_(zone) {}
  /// Milliseconds of a row, or none when the cells hold no time of this shape. date_cell is empty
  /// when the shape has no date column.
  std::optional<std::int64_t> read(std::string_view time_cell, std::string_view date_cell);

 private:
  std::optional<std::int64_t> elapsed(std::string_view cell) const;
  std::optional<std::int64_t> time_of_day(const WrittenTime& written);
  std::optional<std::int64_t> local(CalendarDate day, std::int64_t ms);
  std::optional<CalendarDate> date_of(const WrittenTime& written) const;

  std::optional<std::int64_t> like_the_last(std::string_view cell) const;
  void remember(std::string_view cell, std::int64_t ms, bool plain_day);

  RecordShape shape_;
  Zone zone_;
  // The last time's text without its clock: rows of one day differ in hh:mm:ss alone.
  std::string before_clock_, behind_clock_;
  std::int64_t midnight_ms_ = 0;
  std::optional<std::int64_t> last_;
  std::int64_t carried_days_ms_ = 0;
  // The day that was reckoned last, since a record has few days and many rows.
  std::optional<CalendarDate> day_;
  std::int64_t day_start_ms_ = 0;
  std::int64_t day_excess_ms_ = 0;  // what the day is longer (or shorter) than 24 h
};

/// A point of a record for printing: elapsed seconds as "754.5", a time of day as "07:51:00", a
/// date as "2026-11-25T07:51:00+01:00" in the zone.
std::string stamp_text(RecordClock clock, std::int64_t ms, const Zone& zone);

}  // namespace tangmark::kiln
