// SPDX-License-Identifier: MIT
#include "domain/kiln/record_preview.h"

#include <algorithm>

#include "domain/kiln/record_cell.h"
#include "domain/kiln/record.h"
#include "domain/kiln/record_layout.h"
#include "domain/kiln/record_reader.h"

namespace tangmark::kiln {
namespace {

constexpr std::size_t rows_shown = 6;

std::vector<std::string> as_written(const std::vector<std::string_view>& cells) {
  std::vector<std::string> row;
  for (const std::string_view cell : cells) row.emplace_back(bare_cell(cell));
  return row;
}

std::string sign(TemperatureUnit unit) {
  if (unit == TemperatureUnit::kelvin) return "K";
  return unit == TemperatureUnit::fahrenheit ? "°F" : "°C";
}

std::string use_of(std::size_t column, const RecordShape& shape) {
  if (column == shape.time_column) return "time";
  if (column == shape.date_column) return "date";
  for (std::size_t i = 0; i < shape.sensors.size(); ++i) {
    if (shape.sensors[i].column != column) continue;
    return (i == 0 ? "judged, " : "sensor, ") + sign(shape.sensors[i].unit);
  }
  return "left aside";
}

std::vector<PreviewColumn> columns_of(const RecordLayout& layout, std::size_t width,
                                      const std::optional<RecordShape>& shape) {
  std::vector<PreviewColumn> columns;
  for (std::size_t i = 0; i < width; ++i) {
    std::string head = i < layout.heads.size() ? std::string(bare_cell(layout.heads[i])) : "";
    if (head.empty()) head = "column " + std::to_string(i + 1);
    columns.push_back({std::move(head), shape ? use_of(i, *shape) : "?"});
  }
  return columns;
}

// The first rows as the reader hands them on.
class FirstRows final : public RecordSink {
 public:
  FirstRows(RecordClock clock, Zone zone, TemperatureUnit unit)
      : clock_(clock), zone_(std::move(zone)), unit_(unit) {}
  void take(const RecordRow& row) override {
    if (said_.size() >= rows_shown) return;
    const Reading& judged = row.readings.front();
    said_.push_back(stamp_text(clock_, row.ms, zone_) +
                    (clock_ == RecordClock::elapsed ? " s: " : ": ") +
                    (judged ? to_text(*judged, unit_) : std::string("no reading")));
  }
  std::vector<std::string> said() { return std::move(said_); }

 private:
  RecordClock clock_;
  Zone zone_;
  TemperatureUnit unit_;
  std::vector<std::string> said_;
};

// A guess for eyes alone: the sign that cuts most lines into more than one cell.
char usual_separator(const std::vector<std::string_view>& lines) {
  char best = ',';
  std::size_t most = 0;
  for (const char separator : {';', '\t', '|', ',', ' '}) {
    const auto cut = static_cast<std::size_t>(
        std::count_if(lines.begin(), lines.end(), [&](std::string_view line) {
          return !says_nothing(line) && cells_of(line, separator).size() > 1;
        }));
    if (cut <= most) continue;
    most = cut;
    best = separator;
  }
  return best;
}

RecordLayout raw_layout(const std::vector<std::string_view>& lines, char separator) {
  RecordLayout layout;
  for (const std::string_view line : lines) {
    if (says_nothing(line) || layout.rows.size() == rows_shown) continue;
    layout.rows.push_back(cells_of(line, separator));
  }
  return layout;
}

void show_layout(RecordPreview& preview, const RecordLayout& layout) {
  std::size_t width = layout.heads.size();
  for (const auto& row : layout.rows) width = std::max(width, row.size());
  preview.columns = columns_of(layout, width, preview.shape);
  for (std::size_t i = 0; i < std::min(layout.rows.size(), rows_shown); ++i)
    preview.rows.push_back(as_written(layout.rows[i]));
}

RecordPreview read_as(std::string_view beginning, const Zone& shop, const RecognisedShape& found,
                      TemperatureUnit unit) {
  RecordPreview preview;
  preview.shape = found.shape;
  preview.assumptions = found.assumptions;
  NamedColumns named{found.shape.time_column, found.shape.date_column, {}};
  for (const SensorColumn& sensor : found.shape.sensors) named.sensors.push_back(sensor.column);
  const RecordCut cut{found.shape.separator, found.shape.point};
  show_layout(preview, layout_of(first_lines(beginning), cut, named));
  const Zone zone = zone_of(found.shape, shop);
  FirstRows rows(found.shape.clock, zone, unit);
  RecordReader reader(found.shape, found.head_lines, zone, rows);
  // Only whole lines: the beginning of a long record ends within one.
  const std::size_t last = beginning.rfind('\n');
  reader.feed(last == std::string_view::npos ? beginning : beginning.substr(0, last + 1));
  if (const auto read = reader.finish(); !read) preview.why_not = read.problems();
  preview.read_as = rows.said();
  return preview;
}

}  // namespace

RecordPreview preview_record(std::string_view beginning, const Zone& shop, const ShapeHints& hints,
                             TemperatureUnit unit) {
  const auto found = recognise_shape(beginning, hints);
  if (found) return read_as(beginning, shop, *found, unit);
  RecordPreview preview;
  preview.why_not = found.problems();
  const auto lines = first_lines(beginning);
  show_layout(preview, raw_layout(lines, hints.separator.value_or(usual_separator(lines))));
  return preview;
}

RecordPreview preview_record(std::string_view beginning, const Zone& shop,
                             const RecordShape& known, TemperatureUnit unit) {
  return read_as(beginning, shop, {known, head_lines_of(beginning, known), {}}, unit);
}

}  // namespace tangmark::kiln
