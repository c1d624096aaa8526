// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"

namespace tangmark::kiln {

/// What the time column of a record counts.
enum class RecordClock {
  elapsed,      ///< a number or h:mm:ss since the start
  time_of_day,  ///< the clock on the wall without a date
  local_time,   ///< date and time of the wall clock, in the shop's zone
  instant,      ///< date and time with its offset, or seconds since 1970
};

/// What one of a bare elapsed number is. With minute, a time of two figures is mm:ss, else h:mm.
enum class ElapsedUnit { millisecond, second, minute, hour };

/// How a date is written.
enum class DateOrder { year_first, day_first, month_first };

/// One column of temperatures.
struct SensorColumn {
  std::size_t column = 0;  ///< from 0
  std::string name;        ///< as headed, or "column 2"
  TemperatureUnit unit = TemperatureUnit::celsius;
  friend bool operator==(const SensorColumn&, const SensorColumn&) = default;
};

/// How a kiln's logger writes its records: recognised once or mapped by hand, remembered per kiln.
/// It reads any later record of the same logger without guessing. The separator blank means any
/// number of blanks; separator and point are both commas when cells with decimals stand in
/// quotation marks.
struct RecordShape {
  char separator = ',';
  char point = '.';
  RecordClock clock = RecordClock::elapsed;
  ElapsedUnit elapsed_unit = ElapsedUnit::second;
  DateOrder date_order = DateOrder::year_first;
  std::size_t time_column = 0;
  std::optional<std::size_t> date_column;  ///< when the date stands in a column of its own
  std::vector<SensorColumn> sensors;       ///< the first is the one that is judged
  std::string zone{};                      ///< of the logger's clock; empty for the shop's own
  friend bool operator==(const RecordShape&, const RecordShape&) = default;
};

/// What the reader is told beforehand; everything that is left out is recognised. Columns are named
/// by their head or by their number from 1. What is named outranks what heads say.
struct ShapeHints {
  std::optional<TemperatureUnit> unit;  ///< of all sensors; else when neither head nor cells say it
  std::optional<DateOrder> date_order;    ///< when 03/04/2026 may mean two days
  std::optional<char> separator;
  std::optional<char> point;
  std::string time;                       ///< the column of times
  std::string date;                       ///< the column of dates, when they stand apart
  std::vector<std::string> sensors;       ///< the columns of temperatures, the judged one first
  std::optional<RecordClock> clock;       ///< elapsed or time of day, when a clock may be either
  std::optional<ElapsedUnit> elapsed_unit;
  std::string zone;
  friend bool operator==(const ShapeHints&, const ShapeHints&) = default;
};

/// Reads a mapping as typed, each part empty when it is not said: unit "C" or "F"; dates "day
/// first", "month first" or "year first"; separator "comma", "semicolon", "tab", "bar" or "blanks";
/// decimals "point" or "comma"; counts "seconds", "minutes", "hours", "milliseconds" (since the
/// start), "time of day"; time, date and sensors as in ShapeHints, sensors with commas between; an
/// IANA zone. Refuses a word it does not know and a zone that is none, the field named.
struct TypedMapping {
  std::string unit, dates, separator, decimals, counts, time, date, sensors, zone;
};
Outcome<ShapeHints> read_hints(const TypedMapping& typed);

struct RecognisedShape {
  RecordShape shape;
  std::int64_t head_lines = 0;            ///< lines before the first sample
  std::vector<std::string> assumptions;   ///< what was taken for granted, in sentences
};

/// Recognises the shape from the beginning of a record (its first 64 kB are plenty): separator , ;
/// tab , | or blanks, decimal comma with ; or tab or in quotation marks, comment lines (# or //),
/// lines of any kind before the samples, column heads with units, a date in its own column, set
/// points and outputs left aside. Refuses text that is not text, has no samples, has dates that
/// mean two days, or lacks a column that the hints name.
Outcome<RecognisedShape> recognise_shape(std::string_view beginning, const ShapeHints& hints = {});

/// One line that reads back to the same shape, for keeping with a kiln.
std::string shape_to_stored(const RecordShape& shape);
Outcome<RecordShape> shape_from_stored(std::string_view text, std::string_view field);

/// The zone that times without an offset are in.
Zone zone_of(const RecordShape& shape, const Zone& shop);

/// Cuts a line at the separator; a separator inside quotation marks does not cut, and blanks cut
/// once however many they are.
std::vector<std::string_view> cells_of(std::string_view line, char separator);
/// A comment or an empty line.
bool says_nothing(std::string_view line);

}  // namespace tangmark::kiln
