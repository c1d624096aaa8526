// SPDX-License-Identifier: MIT
#include "domain/steel/heat_treat_window.h"

#include "domain/steel/built_in_data.h"
#include "domain/steel/data_table.h"

namespace tangmark::steel {
namespace {

Temperature temperature_in(const DataTable& table, std::size_t row, std::string_view column) {
  return parse_temperature(table.text(row, column), TemperatureUnit::celsius, column).value();
}

std::optional<Duration> hold_in(const DataTable& table, std::size_t row, std::string_view column) {
  if (table.text(row, column).empty()) return std::nullopt;
  return parse_duration(table.text(row, column), column).value();
}

HeatTreatWindow window_in(const DataTable& table, std::size_t row) {
  HeatTreatWindow window;
  window.operation = table.text(row, "operation");
  window.low = temperature_in(table, row, "low");
  window.high = temperature_in(table, row, "high");
  window.hold_least = hold_in(table, row, "hold_least");
  window.hold_most = hold_in(table, row, "hold_most");
  window.cooling = table.text(row, "cooling");
  if (const auto fall = table.text(row, "fall_per_h"); !fall.empty()) {
    window.most_fall_per_hour =
        parse_temperature_difference(fall, TemperatureUnit::celsius, "fall_per_h").value();
  }
  if (!table.text(row, "until").empty()) window.slow_until = temperature_in(table, row, "until");
  window.note = table.text(row, "note");
  window.source = table.text(row, "source");
  return window;
}

}  // namespace

std::vector<HeatTreatWindow> published_windows(std::string_view grade_name) {
  static const DataTable table(built_in::windows);
  std::vector<HeatTreatWindow> windows;
  for (std::size_t row = 0; row < table.size(); ++row) {
    if (table.text(row, "grade") == grade_name) windows.push_back(window_in(table, row));
  }
  return windows;
}

}  // namespace tangmark::steel
