// SPDX-License-Identifier: MIT
#include "domain/steel/temper_hardness.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

#include "domain/measure/when.h"
#include "domain/steel/built_in_data.h"
#include "domain/steel/data_table.h"
#include "domain/steel/figure_text.h"

namespace tangmark::steel {
namespace {

constexpr double beyond_several_tables = 1;
constexpr double beyond_single_table = 2;

TemperRow row_in(const DataTable& data, std::size_t i) {
  TemperRow row;
  row.temper = parse_temperature(data.text(i, "temper"), TemperatureUnit::celsius, "temper").value();
  const Duration hold = parse_duration(data.text(i, "hold"), "hold").value();
  const auto times = static_cast<std::size_t>(data.number(i, "times"));
  row.parameter = temper_sum(std::vector<TemperStep>(times, {row.temper, hold})).value().parameter;
  row.hardness = {data.number(i, "hrc")};
  row.source = data.text(i, "source");
  return row;
}

std::vector<TemperTable> read_tables() {
  const DataTable data(built_in::temper_tables);
  std::vector<TemperTable> tables;
  std::map<std::string, std::size_t, std::less<>> place;
  for (std::size_t i = 0; i < data.size(); ++i) {
    const auto [at, fresh] = place.emplace(std::string(data.text(i, "table")), tables.size());
    if (fresh) {
      tables.push_back({std::string(data.text(i, "grade")),
                        parse_temperature(data.text(i, "hardened_at"), TemperatureUnit::celsius,
                                          "hardened_at").value(),
                        std::string(data.text(i, "medium")), {}});
    }
    tables[at->second].rows.push_back(row_in(data, i));
  }
  return tables;
}

std::optional<double> hardness_in(const TemperTable& table, double parameter) {
  // A step typed as the table's own row must meet it, whatever the last digit of the logarithm.
  constexpr double same = 1e-6;
  const auto& rows = table.rows;
  if (parameter < rows.front().parameter - same || parameter > rows.back().parameter + same) {
    return std::nullopt;
  }
  std::size_t upper = 1;
  while (upper + 1 < rows.size() && rows[upper].parameter < parameter) ++upper;
  const TemperRow& a = rows[upper - 1];
  const TemperRow& b = rows[upper];
  return std::lerp(a.hardness.points, b.hardness.points,
                   (parameter - a.parameter) / (b.parameter - a.parameter));
}

std::string range_of(const TemperTable& table) {
  return to_text(table.rows.front().temper, TemperatureUnit::celsius) + " to " +
         to_text(table.rows.back().temper, TemperatureUnit::celsius);
}

}  // namespace

const std::vector<TemperTable>& temper_tables() {
  static const std::vector<TemperTable> tables = read_tables();
  return tables;
}

Outcome<ExpectedHardness> expected_hardness(std::string_view grade,
                                            const std::vector<TemperStep>& steps) {
  const auto sum = temper_sum(steps);
  if (!sum) return sum.problems();
  ExpectedHardness expected;
  std::vector<double> found;
  std::string ranges;
  for (const TemperTable& table : temper_tables()) {
    if (lower(table.grade) != lower(grade)) continue;
    ranges += (ranges.empty() ? "" : "; ") + range_of(table);
    const auto points = hardness_in(table, sum->parameter);
    if (!points) continue;
    found.push_back(*points);
    expected.sources.push_back(table.rows.front().source);
  }
  if (ranges.empty()) {
    return Problem{"grade", "No published temper table of " + std::string(grade) + " is on file.",
                   "Measure a coupon, or enter a table with its source."};
  }
  if (found.empty()) {
    return Problem{"steps", "These tempers lie outside the published tables (" + ranges + ").",
                   "Measure a coupon; the tables are not stretched."};
  }
  const auto [least, most] = std::minmax_element(found.begin(), found.end());
  const double wider = found.size() > 1 ? beyond_several_tables : beyond_single_table;
  expected.low = {std::floor(*least - wider)};
  expected.high = {std::ceil(*most + wider)};
  expected.band = found.size() > 1 ? "the spread of the published tables and one point either way"
                                   : "one published table and two points either way";
  return expected;
}

}  // namespace tangmark::steel
