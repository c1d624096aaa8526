// SPDX-License-Identifier: MIT
#include "domain/kiln/record_shape.h"

#include <algorithm>

#include "domain/kiln/record_cell.h"
#include "domain/kiln/record_heads.h"
#include "domain/kiln/record_time.h"

namespace tangmark::kiln {
namespace {

constexpr std::size_t lines_looked_at = 400;

std::vector<std::string_view> lines_of(std::string_view text) {
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  std::vector<std::string_view> lines;
  while (!text.empty() && lines.size() < lines_looked_at) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    std::string_view line = text.substr(0, end);
    if (line.ends_with('\r')) line.remove_suffix(1);
    lines.push_back(line);
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

bool is_reading(std::string_view cell, char point) {
  return read_reading(cell, TemperatureUnit::celsius, point).kind == CellKind::reading;
}

bool is_number(std::string_view cell, char point) {
  cell = bare_cell(cell);
  return take_decimal(cell, point) && cell.empty();
}

// A row of samples has a time or a number in front and a reading behind it.
bool is_sample_row(const std::vector<std::string_view>& cells, char point) {
  std::size_t at = 0;
  while (at < cells.size() && !read_written_time(cells[at]) && !is_number(cells[at], point)) ++at;
  for (++at; at < cells.size(); ++at) {
    if (is_reading(cells[at], point)) return true;
  }
  return false;
}

struct Way {
  char separator;
  char point;
  std::size_t rows = 0;
  std::size_t width = 0;
};

// How many of the first lines are rows of samples when cut this way.
Way tried(const std::vector<std::string_view>& lines, char separator, char point) {
  Way way{separator, point};
  for (const std::string_view line : lines) {
    if (says_nothing(line)) continue;
    const auto cells = cells_of(line, separator);
    if (cells.size() < 2 || !is_sample_row(cells, point)) continue;
    ++way.rows;
    way.width = std::max(way.width, cells.size());
  }
  return way;
}

std::optional<Way> best_way(const std::vector<std::string_view>& lines) {
  std::optional<Way> best;
  // In the order in which a tie is settled; a decimal comma cannot stand with a separating comma.
  for (const auto& [separator, point] : std::vector<std::pair<char, char>>{
           {';', '.'}, {';', ','}, {'\t', '.'}, {'\t', ','}, {'|', '.'}, {',', '.'}}) {
    const Way way = tried(lines, separator, point);
    if (way.rows > 0 && (!best || way.rows > best->rows)) best = way;
  }
  return best;
}

// Where the samples begin, the heads above them, and a few rows to look at.
struct Layout {
  std::int64_t head_lines = 0;
  std::vector<std::string_view> heads;
  std::vector<std::vector<std::string_view>> rows;
};

Layout layout_of(const std::vector<std::string_view>& lines, const Way& way) {
  Layout layout;
  for (std::size_t i = 0; i < lines.size() && layout.rows.size() < 50; ++i) {
    std::string_view line = lines[i];
    auto cells = cells_of(line, way.separator);
    const bool row = !says_nothing(line) && cells.size() >= 2 && is_sample_row(cells, way.point);
    if (row) layout.rows.push_back(std::move(cells));
    if (row || !layout.rows.empty()) continue;
    layout.head_lines = static_cast<std::int64_t>(i) + 1;
    // Heads may stand in a comment line; the last line wide enough counts.
    while (!line.empty() && (line.front() == '#' || line.front() == '/' || line.front() == ' ')) {
      line.remove_prefix(1);
    }
    auto heads = cells_of(line, way.separator);
    if (heads.size() >= 2) layout.heads = std::move(heads);
  }
  return layout;
}

Problem dates_mean_two_days() {
  return {"date", "The dates of this record may mean the day or the month first.",
          "Say which for this kiln, or export dates as 2026-11-25."};
}

Outcome<DateOrder> date_order_of(const Layout& layout, std::size_t column, const ShapeHints& hints) {
  bool ambiguous = false;
  for (const auto& row : layout.rows) {
    const auto written = column < row.size() ? read_written_time(row[column]) : std::nullopt;
    if (!written || !written->has_date) continue;
    if (written->year_leads) return DateOrder::year_first;
    if (written->date_mark == '.' || written->first > 12) return DateOrder::day_first;
    if (written->second > 12) return DateOrder::month_first;
    ambiguous = true;
  }
  if (!ambiguous) return DateOrder::year_first;
  if (hints.date_order) return *hints.date_order;
  return dates_mean_two_days();
}

class Recognition {
 public:
  Recognition(const Way& way, Layout layout, const ShapeHints& hints)
      : layout_(std::move(layout)), hints_(hints) {
    found_.shape.separator = way.separator;
    found_.shape.point = way.point;
    found_.head_lines = layout_.head_lines;
    for (std::size_t i = 0; i < way.width; ++i) {
      heads_.push_back(read_head(i < layout_.heads.size() ? layout_.heads[i] : ""));
    }
  }

  Outcome<RecognisedShape> run() {
    if (auto refused = find_time()) return *refused;
    find_sensors();
    if (found_.shape.sensors.empty()) {
      return Problem{"record", "No column of temperatures was found in this record.",
                     "Export the time and at least one sensor."};
    }
    return std::move(found_);
  }

 private:
  std::string_view cell(std::size_t row, std::size_t column) const {
    const auto& cells = layout_.rows[row];
    return column < cells.size() ? cells[column] : std::string_view();
  }
  std::optional<WrittenTime> time_at(std::size_t column) const {
    return read_written_time(cell(0, column));
  }

  std::optional<Problem> find_time() {
    std::optional<std::size_t> clock, date, number;
    for (std::size_t i = 0; i < heads_.size(); ++i) {
      const auto written = time_at(i);
      if (written && written->has_clock && !clock) clock = i;
      if (written && written->has_date && !written->has_clock && !date) date = i;
      const bool counts = heads_[i].role == HeadRole::time || heads_[i].role == HeadRole::unknown;
      if (!written && counts && is_number(cell(0, i), found_.shape.point)) {
        const bool better = !number || (heads_[i].role == HeadRole::time &&
                                        heads_[*number].role != HeadRole::time);
        if (better) number = i;
      }
    }
    if (clock) return settle_written(*clock, date);
    if (number) return settle_number(*number);
    return Problem{"record", "No column of times was found in this record.",
                   "Export the time with each sample."};
  }

  std::optional<Problem> settle_written(std::size_t column, std::optional<std::size_t> date) {
    RecordShape& shape = found_.shape;
    const WrittenTime written = *time_at(column);
    shape.time_column = column;
    if (!written.has_date && date) shape.date_column = date;
    if (written.has_date || date) {
      const auto order = date_order_of(layout_, written.has_date ? column : *date, hints_);
      if (!order) return order.problem();
      shape.date_order = *order;
      shape.clock = written.offset_min ? RecordClock::instant : RecordClock::local_time;
      return std::nullopt;
    }
    settle_clock(written, heads_[column]);
    return std::nullopt;
  }

  void settle_clock(const WrittenTime& written, const Head& head) {
    constexpr std::int64_t minute_ms = 60'000, day_ms = 86'400'000;
    const bool from_nought = written.ms < minute_ms;
    const bool elapsed =
        head.elapsed || head.minutes_and_seconds || from_nought || written.ms >= day_ms;
    found_.shape.clock = elapsed ? RecordClock::elapsed : RecordClock::time_of_day;
    if (!elapsed) return;
    found_.shape.elapsed_unit =
        head.minutes_and_seconds ? ElapsedUnit::minute : ElapsedUnit::hour;
    if (!head.elapsed && !head.minutes_and_seconds) {
      assume("The times begin at nought, so they were taken as elapsed.");
    }
    if (!written.has_seconds && !head.minutes_and_seconds) {
      assume("Times of two figures were taken as hours and minutes.");
    }
  }

  std::optional<Problem> settle_number(std::size_t column) {
    RecordShape& shape = found_.shape;
    shape.time_column = column;
    std::string_view first = bare_cell(cell(0, column));
    const auto figure = take_decimal(first, shape.point);
    constexpr std::int64_t year_2001_s = 1'000'000'000;
    const std::int64_t whole = scaled(*figure, 1);
    if (whole >= year_2001_s) {
      shape.clock = RecordClock::instant;
      shape.elapsed_unit =
          whole >= year_2001_s * 1000 ? ElapsedUnit::millisecond : ElapsedUnit::second;
      return std::nullopt;
    }
    if (heads_[column].elapsed_unit) {
      shape.elapsed_unit = *heads_[column].elapsed_unit;
    } else {
      assume("The head names no unit of time, so the times were taken as seconds.");
    }
    return std::nullopt;
  }

  // A column is a sensor when its readings are numbers and its head does not say otherwise.
  void find_sensors() {
    for (std::size_t i = 0; i < heads_.size(); ++i) {
      if (i == found_.shape.time_column || i == found_.shape.date_column) continue;
      if (heads_[i].role == HeadRole::other || heads_[i].role == HeadRole::time) continue;
      if (!reads_as_sensor(i)) continue;
      found_.shape.sensors.push_back({i, name_of(i), unit_of(i)});
    }
  }

  bool reads_as_sensor(std::size_t column) const {
    bool any = false;
    for (std::size_t row = 0; row < layout_.rows.size(); ++row) {
      const auto read = read_reading(cell(row, column), TemperatureUnit::celsius, found_.shape.point);
      const bool named = heads_[column].role == HeadRole::sensor;
      if (read.kind == CellKind::malformed && !named) return false;
      any = any || read.kind == CellKind::reading;
    }
    return any;
  }

  std::string name_of(std::size_t column) const {
    const std::string_view head =
        column < layout_.heads.size() ? bare_cell(layout_.heads[column]) : std::string_view();
    return head.empty() ? "column " + std::to_string(column + 1) : std::string(head);
  }

  TemperatureUnit unit_of(std::size_t column) {
    if (heads_[column].unit) return *heads_[column].unit;
    if (hints_.unit) return *hints_.unit;
    if (const auto unit = unit_in_cells(column)) return *unit;
    assume("Neither head nor cells of " + name_of(column) +
           " name a unit of temperature, so C was taken.");
    return TemperatureUnit::celsius;
  }

  std::optional<TemperatureUnit> unit_in_cells(std::size_t column) const {
    const std::string_view text = bare_cell(cell(0, column));
    if (text.ends_with('C') || text.ends_with('c')) return TemperatureUnit::celsius;
    if (text.ends_with('F') || text.ends_with('f')) return TemperatureUnit::fahrenheit;
    if (text.ends_with('K')) return TemperatureUnit::kelvin;
    // Some loggers write the unit in the column behind the figure.
    const std::string_view next = bare_cell(cell(0, column + 1));
    if (next == "C" || next == "c" || next == "\xC2\xB0" "C") return TemperatureUnit::celsius;
    if (next == "F" || next == "f" || next == "\xC2\xB0" "F") return TemperatureUnit::fahrenheit;
    return std::nullopt;
  }

  void assume(std::string sentence) { found_.assumptions.push_back(std::move(sentence)); }

  Layout layout_;
  ShapeHints hints_;
  std::vector<Head> heads_;
  RecognisedShape found_;
};

}  // namespace

Outcome<RecognisedShape> recognise_shape(std::string_view beginning, const ShapeHints& hints) {
  if (beginning.empty()) {
    return Problem{"record", "The record is empty.", "Export it again from the logger."};
  }
  if (beginning.find('\0') != std::string_view::npos) {
    return Problem{"record", "This is not plain text.",
                   "Export the record as CSV in UTF-8."};
  }
  const auto lines = lines_of(beginning);
  const auto way = best_way(lines);
  if (!way) {
    return Problem{"record", "No line of this record holds a time and a temperature.",
                   "Export CSV with one sample a line: a time and a temperature."};
  }
  return Recognition(*way, layout_of(lines, *way), hints).run();
}

std::vector<std::string_view> cells_of(std::string_view line, char separator) {
  std::vector<std::string_view> cells;
  std::size_t start = 0;
  bool quoted = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '"') quoted = !quoted;
    if (line[i] != separator || quoted) continue;
    cells.push_back(line.substr(start, i - start));
    start = i + 1;
  }
  cells.push_back(line.substr(start));
  return cells;
}

bool says_nothing(std::string_view line) {
  const std::string_view text = bare_cell(line);
  return text.empty() || text.front() == '#' || text.starts_with("//");
}

}  // namespace tangmark::kiln
