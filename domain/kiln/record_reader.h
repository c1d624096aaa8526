// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "domain/kiln/record_shape.h"
#include "domain/kiln/record_time.h"
#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"

namespace tangmark::kiln {

using Reading = std::optional<Temperature>;  ///< none when the logger wrote none

/// One line of samples, on a clock that never runs backwards.
struct RecordRow {
  std::int64_t line = 0;
  std::int64_t ms = 0;  ///< see RecordTimes
  std::span<const Reading> readings;  ///< in the order of the shape's sensors; lives for the call
};

/// What takes the rows as they are read.
class RecordSink {
 public:
  virtual ~RecordSink() = default;
  virtual void take(const RecordRow& row) = 0;
};

/// A clock that was set back. The rows behind it go on from where the clock was, one step later.
struct ClockJump {
  std::int64_t line = 0;
  std::int64_t back_ms = 0;
  friend bool operator==(const ClockJump&, const ClockJump&) = default;
};

/// What was met on the way through a record.
struct RecordRemarks {
  std::vector<ClockJump> clock_jumps;  ///< the first 100 of them
  std::int64_t missing_readings = 0;   ///< of the judged sensor
  bool cut_short = false;              ///< the last line broke off and was left out
};

/// Reads a record piece by piece, so that a record of any length takes the memory of one line.
///
///     RecordReader reader(shape, head_lines, zone, judge);
///     while (auto piece = next()) if (!reader.feed(*piece)) break;
///     auto remarks = reader.finish();   // refused: the line and column at fault
class RecordReader {
 public:
  RecordReader(RecordShape shape, std::int64_t head_lines, const Zone& zone, RecordSink& sink);
  RecordReader(const RecordReader&) = delete;  // holds the sink of one record
  RecordReader& operator=(const RecordReader&) = delete;

  /// False once the record is refused; more pieces change nothing then.
  bool feed(std::string_view piece);
  /// Takes the last line and answers. Refuses a record without samples, and names line and column
  /// of a cell that is neither a reading nor missing, of a time that is none, of a line too short
  /// or longer than 64 kB.
  Outcome<RecordRemarks> finish();

 private:
  enum class Use { none, time, date, sensor };
  struct Column {
    Use use = Use::none;
    std::size_t sensor = 0;
  };

  bool take_line(std::string_view line);
  bool take_cell(std::size_t column, std::string_view cell);
  bool take_row();
  bool refuse(std::string column, std::string sentence, std::string remedy);
  std::string name_of(std::size_t column) const;

  RecordShape shape_;
  std::int64_t head_lines_;
  RecordTimes times_;
  RecordSink& sink_;
  std::vector<Column> columns_;  // up to the last one that is used
  std::vector<Reading> readings_;
  std::string_view time_cell_, date_cell_;
  std::string broken_line_;  // the part of a line that the last piece ended in
  std::int64_t line_ = 0;
  std::int64_t rows_ = 0;
  std::int64_t last_ms_ = 0, last_step_ms_ = 0, set_back_ms_ = 0;
  RecordRemarks remarks_;
  bool ends_early_ = false;  // the refused line lacks a column
  std::optional<Problem> refused_;
};

}  // namespace tangmark::kiln
