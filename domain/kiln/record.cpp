// SPDX-License-Identifier: MIT
#include "domain/kiln/record.h"

#include <algorithm>

#include "domain/kiln/record_cell.h"

namespace tangmark::kiln {
namespace {

constexpr std::size_t beginning_bytes = 64 * 1024;

class Keep final : public RecordSink {
 public:
  explicit Keep(KilnRecord& record) : record_(record) {}
  void take(const RecordRow& row) override {
    record_.ms.push_back(row.ms);
    for (std::size_t i = 0; i < row.readings.size(); ++i) {
      record_.readings[i].push_back(row.readings[i]);
    }
  }

 private:
  KilnRecord& record_;
};

Outcome<KilnRecord> read_as(std::string_view text, const Zone& zone, RecognisedShape known) {
  KilnRecord record;
  record.shape = std::move(known.shape);
  record.assumptions = std::move(known.assumptions);
  record.readings.resize(record.shape.sensors.size());
  Keep keep(record);
  RecordReader reader(record.shape, known.head_lines, zone_of(record.shape, zone), keep);
  reader.feed(text);
  auto remarks = reader.finish();
  if (!remarks) return remarks.problems();
  record.remarks = *std::move(remarks);
  return record;
}

bool reads_as_row(std::string_view line, const RecordShape& shape) {
  if (says_nothing(line)) return false;
  const auto cells = cells_of(line, shape.separator);
  const std::size_t last = std::max(shape.time_column, shape.date_column.value_or(0));
  if (cells.size() <= last) return false;
  RecordTimes times(shape, Zone());
  return times.read(cells[shape.time_column], shape.date_column ? cells[*shape.date_column] : "")
      .has_value();
}

}  // namespace

Outcome<KilnRecord> read_kiln_record(std::string_view text, const Zone& zone,
                                     const ShapeHints& hints) {
  auto shape = recognise_shape(text.substr(0, beginning_bytes), hints);
  if (!shape) return shape.problems();
  return read_as(text, zone, *std::move(shape));
}

Outcome<KilnRecord> read_kiln_record(std::string_view text, const Zone& zone,
                                     const RecordShape& known) {
  return read_as(text, zone, {known, head_lines_of(text.substr(0, beginning_bytes), known), {}});
}

std::int64_t head_lines_of(std::string_view beginning, const RecordShape& shape) {
  std::int64_t lines = 0;
  while (!beginning.empty()) {
    const std::size_t end = std::min(beginning.find('\n'), beginning.size());
    if (reads_as_row(beginning.substr(0, end), shape)) return lines;
    beginning.remove_prefix(std::min(end + 1, beginning.size()));
    ++lines;
  }
  return lines;
}

void replay(const KilnRecord& record, RecordSink& sink) {
  std::vector<Reading> readings(record.readings.size());
  for (std::size_t row = 0; row < record.rows(); ++row) {
    for (std::size_t i = 0; i < readings.size(); ++i) readings[i] = record.readings[i][row];
    sink.take({static_cast<std::int64_t>(row) + 1, record.ms[row], readings});
  }
}

}  // namespace tangmark::kiln
