// SPDX-License-Identifier: MIT
#include "domain/kiln/record_shape.h"

#include <algorithm>

#include "domain/kiln/record_cell.h"
#include "domain/kiln/record_heads.h"
#include "domain/kiln/record_layout.h"
#include "domain/kiln/record_time.h"

namespace tangmark::kiln {
namespace {

Problem dates_mean_two_days() {
  return {"date", "The dates of this record may mean the day or the month first.",
          "Say which for this kiln, or export dates as 2026-11-25."};
}

Outcome<DateOrder> date_order_of(const RecordLayout& layout, std::size_t column,
                                 const ShapeHints& hints) {
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
  Recognition(const RecordCut& cut, RecordLayout layout, NamedColumns named,
              const ShapeHints& hints)
      : layout_(std::move(layout)), named_(std::move(named)), hints_(hints) {
    found_.shape.separator = cut.separator;
    found_.shape.point = cut.point;
    found_.shape.zone = hints.zone;
    found_.head_lines = layout_.head_lines;
    std::size_t width = cut.width;
    for (const auto& row : layout_.rows) width = std::max(width, row.size());
    for (std::size_t i = 0; i < width; ++i) {
      heads_.push_back(read_head(i < layout_.heads.size() ? layout_.heads[i] : ""));
    }
  }

  Outcome<RecognisedShape> run() {
    if (auto refused = named_.time ? settle_named() : find_time()) return *refused;
    settle_counts();
    if (named_.sensors.empty()) {
      find_sensors();
    } else {
      for (const std::size_t column : named_.sensors) add_sensor(column);
    }
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

  // A column of times that was named is one, whatever its head says.
  std::optional<Problem> settle_named() {
    const std::size_t column = *named_.time;
    if (time_at(column)) return settle_written(column, named_.date);
    if (column < heads_.size() && is_number(cell(0, column))) return settle_number(column);
    return Problem{"time", "\"" + std::string(bare_cell(cell(0, column))) + "\" in the column of "
                   "times is no time.", "Name another column."};
  }

  // What the maker says of the count outranks what the first row looks like.
  void settle_counts() {
    if (hints_.clock) found_.shape.clock = *hints_.clock;
    if (hints_.elapsed_unit) found_.shape.elapsed_unit = *hints_.elapsed_unit;
  }

  bool is_number(std::string_view text) const {
    text = bare_cell(text);
    return take_decimal(text, found_.shape.point) && text.empty();
  }

  std::optional<Problem> find_time() {
    std::optional<std::size_t> clock, date, number;
    for (std::size_t i = 0; i < heads_.size(); ++i) {
      const auto written = time_at(i);
      if (written && written->has_clock && !clock) clock = i;
      if (written && written->has_date && !written->has_clock && !date) date = i;
      if (named_.date) date = named_.date;
      const bool counts = heads_[i].role == HeadRole::time || heads_[i].role == HeadRole::unknown;
      if (!written && counts && is_number(cell(0, i))) {
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
    const bool says_elapsed = hints_.clock == RecordClock::elapsed;
    if (!says_elapsed && (written.has_date || date)) {
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
      if (heads_[i].role == HeadRole::unknown && counts_rows(i)) continue;
      if (reads_as_sensor(i)) add_sensor(i);
    }
  }

  void add_sensor(std::size_t column) {
    const bool twice = std::any_of(found_.shape.sensors.begin(), found_.shape.sensors.end(),
                                   [&](const auto& known) { return known.column == column; });
    if (!twice && column != found_.shape.time_column && column != found_.shape.date_column)
      found_.shape.sensors.push_back({column, name_of(column), unit_of(column)});
  }

  // A number in front of the times that grows by one with each row is the row's.
  bool counts_rows(std::size_t column) const {
    if (column > found_.shape.time_column || layout_.rows.size() < 3) return false;
    for (std::size_t row = 0; row + 1 < layout_.rows.size(); ++row) {
      const auto whole = [&](std::size_t of) {
        std::string_view text = bare_cell(cell(of, column));
        const auto figure = take_decimal(text, found_.shape.point);
        return figure && text.empty() && figure->decimals == 0 ? std::optional(figure->digits)
                                                               : std::nullopt;
      };
      const auto here = whole(row), next = whole(row + 1);
      if (!here || !next || *next != *here + 1) return false;
    }
    return true;
  }

  bool reads_as_sensor(std::size_t column) const {
    bool any = false;
    for (std::size_t row = 0; row < layout_.rows.size(); ++row) {
      const auto read =
          read_reading(cell(row, column), TemperatureUnit::celsius, found_.shape.point);
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
    if (hints_.unit) return *hints_.unit;
    if (column < heads_.size() && heads_[column].unit) return *heads_[column].unit;
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

  RecordLayout layout_;
  NamedColumns named_;
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
  const auto lines = first_lines(beginning);
  const auto cut = best_cut(lines, hints);
  if (!cut) {
    return Problem{"record", "No line of this record holds a time and a temperature.",
                   "Export CSV with one sample a line: a time and a temperature; or say how it is "
                   "to be read."};
  }
  auto named = named_columns(lines, cut->separator, hints);
  if (!named) return named.problems();
  RecordLayout layout = layout_of(lines, *cut, *named);
  if (layout.rows.empty()) {
    return Problem{named->time ? "time" : "sensors",
                   "No line has a time and a temperature in the columns that were named.",
                   "Look at the first rows again, and name other columns."};
  }
  return Recognition(*cut, std::move(layout), *std::move(named), hints).run();
}

Zone zone_of(const RecordShape& shape, const Zone& shop) {
  return shape.zone.empty() ? shop : Zone::of(shape.zone).value_or(shop);
}

}  // namespace tangmark::kiln
