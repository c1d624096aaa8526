// SPDX-License-Identifier: MIT
#include "domain/steel/data_table.h"

#include <algorithm>
#include <cassert>
#include <charconv>

namespace tangmark::steel {
namespace {

std::vector<std::string_view> fields_of(std::string_view line) {
  std::vector<std::string_view> fields;
  while (true) {
    if (!line.empty() && line.front() == '"') {
      const std::size_t close = line.find('"', 1);
      assert(close != std::string_view::npos && "a quoted field of a built-in table must close");
      fields.push_back(line.substr(1, close - 1));
      line.remove_prefix(close + 1);
    } else {
      const std::size_t comma = std::min(line.find(','), line.size());
      fields.push_back(line.substr(0, comma));
      line.remove_prefix(comma);
    }
    if (line.empty()) return fields;
    assert(line.front() == ',' && "a comma must follow a field of a built-in table");
    line.remove_prefix(1);
  }
}

}  // namespace

DataTable::DataTable(std::string_view csv) {
  while (!csv.empty()) {
    const std::size_t end = std::min(csv.find('\n'), csv.size());
    const std::string_view line = csv.substr(0, end);
    csv.remove_prefix(std::min(end + 1, csv.size()));
    if (line.empty()) continue;
    if (head_.empty()) {
      head_ = fields_of(line);
      continue;
    }
    rows_.push_back(fields_of(line));
    assert(rows_.back().size() == head_.size() && "a row of a built-in table misses a field");
  }
}

std::string_view DataTable::text(std::size_t row, std::string_view column) const {
  const auto at = std::find(head_.begin(), head_.end(), column);
  assert(at != head_.end() && "no such column in a built-in table");
  return rows_[row][static_cast<std::size_t>(at - head_.begin())];
}

double DataTable::number(std::size_t row, std::string_view column) const {
  const std::string_view cell = text(row, column);
  double value = 0;
  const auto [end, fault] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  assert(fault == std::errc{} && end == cell.data() + cell.size() && "not a number in a table");
  return value;
}

std::optional<double> DataTable::number_if_any(std::size_t row, std::string_view column) const {
  if (text(row, column).empty()) return std::nullopt;
  return number(row, column);
}

}  // namespace tangmark::steel
