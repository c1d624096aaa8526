// SPDX-License-Identifier: MIT
#include "domain/kiln/record_reader.h"

#include <algorithm>

#include "domain/kiln/record_cell.h"

namespace tangmark::kiln {
namespace {

constexpr std::size_t longest_line = 64 * 1024;
constexpr std::size_t jumps_kept = 100;

std::string shown(std::string_view cell) {
  std::string text;
  for (const char c : cell.substr(0, 30)) text += c >= ' ' && c < 127 ? c : '?';
  return text;
}

}  // namespace

RecordReader::RecordReader(RecordShape shape, std::int64_t head_lines, const Zone& zone,
                           RecordSink& sink)
    : shape_(std::move(shape)), head_lines_(head_lines), times_(shape_, zone), sink_(sink) {
  std::size_t width = std::max(shape_.time_column, shape_.date_column.value_or(0));
  for (const SensorColumn& sensor : shape_.sensors) width = std::max(width, sensor.column);
  columns_.resize(width + 1);
  for (std::size_t i = 0; i < shape_.sensors.size(); ++i) {
    columns_[shape_.sensors[i].column] = {Use::sensor, i};
  }
  columns_[shape_.time_column] = {Use::time, 0};
  if (shape_.date_column) columns_[*shape_.date_column] = {Use::date, 0};
  readings_.resize(shape_.sensors.size());
}

bool RecordReader::feed(std::string_view piece) {
  while (!refused_ && !piece.empty()) {
    const std::size_t end = piece.find('\n');
    if (end == std::string_view::npos) {
      broken_line_ += piece;
      if (broken_line_.size() > longest_line) {
        ++line_;
        refuse("", "The line is longer than 64 kB.",
               "This does not look like a record: export CSV.");
      }
      break;
    }
    if (broken_line_.empty()) {
      take_line(piece.substr(0, end));
    } else {
      broken_line_ += piece.substr(0, end);
      const std::string line = std::exchange(broken_line_, {});
      take_line(line);
    }
    piece.remove_prefix(end + 1);
  }
  return !refused_;
}

Outcome<RecordRemarks> RecordReader::finish() {
  if (!refused_ && !broken_line_.empty()) {
    // A logger that lost its power leaves half a line; that much of the record is still good.
    const std::string line = std::exchange(broken_line_, {});
    if (!take_line(line) && rows_ > 0 && ends_early_) {
      refused_.reset();
      remarks_.cut_short = true;
    }
  }
  if (refused_) return *refused_;
  if (rows_ == 0) {
    return Problem{"record", "The record holds no samples.", "Export it again from the logger."};
  }
  return std::move(remarks_);
}

bool RecordReader::take_line(std::string_view line) {
  if (++line_ <= head_lines_) return true;
  if (line.size() > longest_line) {
    return refuse("", "The line is longer than 64 kB.",
                  "This does not look like a record: export CSV.");
  }
  if (line.ends_with('\r')) line.remove_suffix(1);
  if (line.empty() || line.front() < '-' || line.front() == '/') {
    if (says_nothing(line)) return true;  // letters and digits never begin a comment
  }
  const bool blanks = shape_.separator == ' ';
  const std::string_view whole = line;
  std::fill(readings_.begin(), readings_.end(), std::nullopt);
  time_cell_ = date_cell_ = {};
  std::size_t column = 0;
  while (true) {
    if (blanks) line.remove_prefix(std::min(line.find_first_not_of(' '), line.size()));
    std::size_t end = 0;
    bool quoted = false;
    for (; end < line.size() && (quoted || line[end] != shape_.separator); ++end) {
      if (line[end] == '"') quoted = !quoted;
    }
    if (!take_cell(column, line.substr(0, end))) return false;
    if (++column == columns_.size()) break;
    if (end == line.size()) {
      if (bare_cell(whole).empty()) return true;
      ends_early_ = true;
      return refuse(name_of(column), "The line ends before this column.",
                    "Complete the line, or delete it.");
    }
    line.remove_prefix(end + 1);
  }
  return take_row();
}

bool RecordReader::take_cell(std::size_t column, std::string_view cell) {
  switch (columns_[column].use) {
    case Use::none: return true;
    case Use::time: time_cell_ = cell; return true;
    case Use::date: date_cell_ = cell; return true;
    case Use::sensor: break;
  }
  const std::size_t sensor = columns_[column].sensor;
  const ReadingCell read = read_reading(cell, shape_.sensors[sensor].unit, shape_.point);
  if (read.kind == CellKind::malformed) {
    return refuse(name_of(column), "\"" + shown(cell) + "\" is not a temperature between -100 and "
                  "2000 C.", "Correct the cell, or leave it empty if the sample was lost.");
  }
  if (read.kind == CellKind::reading) readings_[sensor] = read.reading;
  return true;
}

bool RecordReader::take_row() {
  const auto written = times_.read(time_cell_, date_cell_);
  if (!written) {
    return refuse(name_of(shape_.time_column), "\"" + shown(time_cell_) + "\" is not a time like "
                  "those before it.", "Correct the cell, or delete the line.");
  }
  std::int64_t ms = *written + set_back_ms_;
  if (rows_ > 0 && ms < last_ms_) {
    if (remarks_.clock_jumps.size() < jumps_kept) {
      remarks_.clock_jumps.push_back({line_, last_ms_ - ms});
    }
    set_back_ms_ += last_ms_ - ms + last_step_ms_;
    ms = last_ms_ + last_step_ms_;
  }
  if (rows_ > 0) last_step_ms_ = ms - last_ms_;
  last_ms_ = ms;
  ++rows_;
  if (!readings_.front()) ++remarks_.missing_readings;
  sink_.take({line_, ms, readings_});
  return true;
}

bool RecordReader::refuse(std::string column, std::string sentence, std::string remedy) {
  std::string field = "line " + std::to_string(line_);
  if (!column.empty()) field += ", column " + column;
  refused_ = Problem{std::move(field), std::move(sentence), std::move(remedy)};
  return false;
}

std::string RecordReader::name_of(std::size_t column) const {
  for (const SensorColumn& sensor : shape_.sensors) {
    if (sensor.column == column) return sensor.name;
  }
  if (column == shape_.time_column) return "time";
  if (column == shape_.date_column) return "date";
  return std::to_string(column + 1);
}

}  // namespace tangmark::kiln
