// SPDX-License-Identifier: MIT
#include "domain/kiln/record_layout.h"

#include <algorithm>
#include <charconv>

#include "domain/kiln/record_cell.h"
#include "domain/kiln/record_time.h"
#include "domain/steel/figure_text.h"

namespace tangmark::kiln {
namespace {

constexpr std::size_t lines_looked_at = 400;
constexpr std::size_t rows_looked_at = 50;
constexpr std::size_t most_columns = 1000;

bool is_number(std::string_view cell, char point) {
  cell = bare_cell(cell);
  return take_decimal(cell, point) && cell.empty();
}

bool is_time(std::string_view cell, char point) {
  return read_written_time(cell) || is_number(cell, point);
}

// "1,475" within quotation marks may be a thousand and more, so it shows no decimal comma.
bool may_be_thousands(std::string_view cell) {
  const std::string_view bare = bare_cell(cell);
  const std::size_t comma = bare.find(',');
  return comma != std::string_view::npos && bare.size() - comma == 4;
}

bool is_reading(std::string_view cell, const RecordCut& cut) {
  if (cut.separator == cut.point && may_be_thousands(cell)) return false;
  return read_reading(cell, TemperatureUnit::celsius, cut.point).kind == CellKind::reading;
}

// Cut at blanks, "7:51 PM" would fall apart and be read as the morning.
bool is_half_of_day(std::string_view cell) {
  const std::string word = steel::lower(bare_cell(cell));
  return word == "am" || word == "pm";
}

// A row of samples has a time or a number in front and a reading behind it.
bool is_sample_row(const std::vector<std::string_view>& cells, const RecordCut& cut) {
  if (cut.separator == ' ' && std::any_of(cells.begin(), cells.end(), is_half_of_day)) return false;
  std::size_t at = 0;
  while (at < cells.size() && !is_time(cells[at], cut.point)) ++at;
  for (++at; at < cells.size(); ++at) {
    if (is_reading(cells[at], cut)) return true;
  }
  return false;
}

// Where columns are named, the row has a time and a reading in just those.
bool is_named_row(const std::vector<std::string_view>& cells, const RecordCut& cut,
                  const NamedColumns& named) {
  if (!named.time && named.sensors.empty()) return is_sample_row(cells, cut);
  if (named.time && (*named.time >= cells.size() || !is_time(cells[*named.time], cut.point)))
    return false;
  if (named.sensors.empty()) return is_sample_row(cells, cut);
  return std::any_of(named.sensors.begin(), named.sensors.end(), [&](std::size_t column) {
    return column < cells.size() && is_reading(cells[column], cut);
  });
}

// How many of the first lines are rows of samples when cut this way.
RecordCut tried(const std::vector<std::string_view>& lines, char separator, char point) {
  RecordCut cut{separator, point};
  for (const std::string_view line : lines) {
    if (says_nothing(line)) continue;
    const auto cells = cells_of(line, separator);
    if (cells.size() < 2 || !is_sample_row(cells, cut)) continue;
    ++cut.rows;
    cut.readings += static_cast<std::size_t>(std::count_if(
        cells.begin(), cells.end(), [&](std::string_view cell) { return is_reading(cell, cut); }));
    cut.width = std::max(cut.width, cells.size());
  }
  return cut;
}

std::string names_in(const std::vector<std::string_view>& cells) {
  std::string names;
  for (const std::string_view cell : cells) {
    names += (names.empty() ? "" : ", ") + std::string(bare_cell(cell));
  }
  return names;
}

// The widest line above the first row of samples; the heads of a record without any are its
// numbers.
std::string columns_there_are(const std::vector<std::string_view>& lines, char separator) {
  std::vector<std::string_view> widest;
  for (const std::string_view line : lines) {
    auto cells = cells_of(line, separator);
    if (cells.size() > widest.size()) widest = std::move(cells);
  }
  return names_in(widest);
}

Outcome<std::size_t> column_named(const std::vector<std::string_view>& lines, char separator,
                                  std::string_view name, const char* field) {
  std::size_t number = 0;
  const auto [end, fault] = std::from_chars(name.data(), name.data() + name.size(), number);
  if (fault == std::errc{} && end == name.data() + name.size()) {
    if (number >= 1 && number <= most_columns) return number - 1;
    return Problem{field, "A record has no column " + std::string(name) + ".",
                   "Count its columns from 1."};
  }
  for (std::string_view line : lines) {
    while (!line.empty() && (line.front() == '#' || line.front() == ' ')) line.remove_prefix(1);
    const auto cells = cells_of(line, separator);
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (steel::lower(bare_cell(cells[i])) == steel::lower(name)) return i;
    }
  }
  return Problem{
      field, "The record has no column \"" + std::string(name) + "\".",
      "Give its head or its number; it has: " + columns_there_are(lines, separator) + "."};
}

}  // namespace

std::vector<std::string_view> first_lines(std::string_view text) {
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

std::optional<RecordCut> best_cut(const std::vector<std::string_view>& lines,
                                  const ShapeHints& hints) {
  std::optional<RecordCut> best;
  for (const auto& [separator, point] : std::vector<std::pair<char, char>>{
           {';', '.'}, {';', ','}, {'\t', '.'}, {'\t', ','}, {'|', '.'}, {'|', ','}, {',', '.'},
           {',', ','}, {' ', '.'}, {' ', ','}}) {
    if (hints.separator && separator != *hints.separator) continue;
    if (hints.point && point != *hints.point) continue;
    const RecordCut cut = tried(lines, separator, point);
    const bool better = !best || cut.rows > best->rows ||
                        (cut.rows == best->rows && cut.readings > best->readings);
    if (cut.rows > 0 && better) best = cut;
  }
  return best;
}

Outcome<NamedColumns> named_columns(const std::vector<std::string_view>& lines, char separator,
                                    const ShapeHints& hints) {
  NamedColumns named;
  Gather form;
  const auto find = [&](const std::string& name, const char* field) {
    return form.take(column_named(lines, separator, name, field));
  };
  if (!hints.time.empty()) named.time = find(hints.time, "time");
  if (!hints.date.empty()) named.date = find(hints.date, "date");
  for (const std::string& name : hints.sensors) named.sensors.push_back(find(name, "sensors"));
  if (form.refused()) return form.problems();
  return named;
}

RecordLayout layout_of(const std::vector<std::string_view>& lines, const RecordCut& cut,
                       const NamedColumns& named) {
  RecordLayout layout;
  for (std::size_t i = 0; i < lines.size() && layout.rows.size() < rows_looked_at; ++i) {
    std::string_view line = lines[i];
    auto cells = cells_of(line, cut.separator);
    const bool row = !says_nothing(line) && cells.size() >= 2 && is_named_row(cells, cut, named);
    if (row) layout.rows.push_back(std::move(cells));
    if (row || !layout.rows.empty()) continue;
    layout.head_lines = static_cast<std::int64_t>(i) + 1;
    // Heads may stand in a comment line; the last line wide enough counts.
    while (!line.empty() && (line.front() == '#' || line.front() == '/' || line.front() == ' ')) {
      line.remove_prefix(1);
    }
    auto heads = cells_of(line, cut.separator);
    if (heads.size() >= 2) layout.heads = std::move(heads);
  }
  return layout;
}

std::vector<std::string_view> cells_of(std::string_view line, char separator) {
  std::vector<std::string_view> cells;
  std::size_t start = 0;
  bool quoted = false;
  const bool blanks = separator == ' ';
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '"') quoted = !quoted;
    if (line[i] != separator || quoted) continue;
    if (!blanks || i > start) cells.push_back(line.substr(start, i - start));
    start = i + 1;
  }
  if (!blanks || start < line.size()) cells.push_back(line.substr(start));
  return cells;
}

bool says_nothing(std::string_view line) {
  const std::string_view text = bare_cell(line);
  return text.empty() || text.front() == '#' || text.starts_with("//");
}

}  // namespace tangmark::kiln
