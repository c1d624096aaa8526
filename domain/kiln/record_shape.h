// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"

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

/// How a kiln's logger writes its records: recognised once, remembered per kiln. It reads any
/// later record of the same logger without guessing.
struct RecordShape {
  char separator = ',';
  char point = '.';
  RecordClock clock = RecordClock::elapsed;
  ElapsedUnit elapsed_unit = ElapsedUnit::second;
  DateOrder date_order = DateOrder::year_first;
  std::size_t time_column = 0;
  std::optional<std::size_t> date_column;  ///< when the date stands in a column of its own
  std::vector<SensorColumn> sensors;       ///< the first is the one that is judged
  friend bool operator==(const RecordShape&, const RecordShape&) = default;
};

/// What the reader may be told beforehand.
struct ShapeHints {
  std::optional<TemperatureUnit> unit;    ///< when neither head nor cells say it
  std::optional<DateOrder> date_order;    ///< when 03/04/2026 may mean two days
};

struct RecognisedShape {
  RecordShape shape;
  std::int64_t head_lines = 0;            ///< lines before the first sample
  std::vector<std::string> assumptions;   ///< what was taken for granted, in sentences
};

/// Recognises the shape from the beginning of a record (its first 64 kB are plenty): separator , ; tab
/// or |, decimal comma with ; or tab, comment lines (# or //), lines of any kind before the samples,
/// column heads with units, a date in its own column, set points and outputs left aside. Refuses text
/// that is not text, has no samples, or has dates that mean two days.
Outcome<RecognisedShape> recognise_shape(std::string_view beginning, const ShapeHints& hints = {});

/// One line that reads back to the same shape, for keeping with a kiln.
std::string shape_to_stored(const RecordShape& shape);
Outcome<RecordShape> shape_from_stored(std::string_view text, std::string_view field);

/// Cuts a line at the separator; a separator inside quotation marks does not cut.
std::vector<std::string_view> cells_of(std::string_view line, char separator);
/// A comment or an empty line.
bool says_nothing(std::string_view line);

}  // namespace tangmark::kiln
