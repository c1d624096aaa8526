// SPDX-License-Identifier: MIT
#include "domain/steel/temper_table.h"

#include <map>

#include "domain/steel/built_in_data.h"
#include "domain/steel/data_table.h"
#include "domain/steel/figure_text.h"
#include "domain/steel/temper_parameter.h"

namespace tangmark::steel {
namespace {

constexpr double least_hrc = 20;
constexpr double most_hrc = 70;
constexpr std::string_view off_the_quench = "quench";

Temperature temperature_in(const DataTable& data, std::size_t row, std::string_view column) {
  return parse_temperature(data.text(row, column), TemperatureUnit::celsius, column).value();
}

TemperTable table_in(const DataTable& data, std::size_t row) {
  TemperTable table;
  table.hardened_at = temperature_in(data, row, "hardened_at");
  table.medium = data.text(row, "medium");
  table.hold = parse_duration(data.text(row, "hold"), "hold").value();
  table.times = static_cast<std::size_t>(data.number(row, "times"));
  table.source = data.text(row, "source");
  return table;
}

void add_row(const DataTable& data, std::size_t row, TemperTable& table) {
  const RockwellC hardness{data.number(row, "hrc")};
  if (data.text(row, "temper") == off_the_quench) {
    table.as_quenched = hardness;
    return;
  }
  const std::string source(data.text(row, "source"));
  table.rows.push_back({temperature_in(data, row, "temper"), hardness,
                        source == table.source ? std::string() : source});
}

using Published = std::map<std::string, std::vector<TemperTable>, std::less<>>;

// Rows of one table stand together in the file.
Published read_published() {
  const DataTable data(built_in::temper_tables);
  Published tables;
  std::string_view last;
  for (std::size_t row = 0; row < data.size(); ++row) {
    auto& of_grade = tables[std::string(data.text(row, "grade"))];
    if (data.text(row, "table") != last) of_grade.push_back(table_in(data, row));
    last = data.text(row, "table");
    add_row(data, row, of_grade.back());
  }
  return tables;
}

Outcome<TemperRow> read_row(std::string_view text, std::string_view field) {
  const std::size_t mark = text.find(':');
  if (mark == std::string_view::npos) {
    return Problem{std::string(field), "\"" + std::string(text) + "\" names no hardness.",
                   "Write each row as temperature: HRC, such as 200 C: 61."};
  }
  const std::string_view heat = trimmed(text.substr(0, mark));
  if (number_then_unit(heat).second.empty()) {
    return Problem{std::string(field), "\"" + std::string(heat) + "\" has no temperature unit.",
                   "Write C, F or K behind it."};
  }
  Gather form;
  TemperRow row;
  row.temper = form.take(parse_temperature(heat, TemperatureUnit::celsius, field));
  row.hardness = {form.take(parse_figure(text.substr(mark + 1), field))};
  if (form.refused()) return form.problems();
  if (!(row.hardness.points >= least_hrc && row.hardness.points <= most_hrc)) {
    return Problem{std::string(field), "A hardness of this table lies between 20 and 70 HRC.",
                   "Check the row \"" + std::string(trimmed(text)) + "\"."};
  }
  return row;
}

}  // namespace

std::vector<TemperTable> published_temper_tables(std::string_view grade_name) {
  static const Published tables = read_published();
  const auto found = tables.find(grade_name);
  return found == tables.end() ? std::vector<TemperTable>() : found->second;
}

Outcome<std::vector<TemperRow>> parse_temper_rows(std::string_view text, std::string_view field) {
  std::string one_line(text);
  for (char& c : one_line) {
    if (c == '\n' || c == '\r' || c == ';') c = ',';
  }
  std::vector<TemperRow> rows;
  Gather form;
  for (const std::string_view part : split_outside_brackets(one_line, ',')) {
    if (!part.empty()) rows.push_back(form.take(read_row(part, field)));
  }
  if (form.refused()) return form.problems();
  if (rows.size() < 2) {
    return Problem{std::string(field), "A temper table needs at least two rows.",
                   "Write them as 150 C: 63, 200 C: 61."};
  }
  for (std::size_t i = 1; i < rows.size(); ++i) {
    if (rows[i].temper > rows[i - 1].temper) continue;
    return Problem{std::string(field), "The temperatures of a temper table rise from row to row.",
                   "Write the coolest temper first, each only once."};
  }
  return rows;
}

double parameter_of(const TemperTable& table, const TemperRow& row) {
  const std::vector<TemperStep> steps(table.times, {row.temper, table.hold});
  return temper_sum(steps).value().parameter;
}

std::string conditions_of(const TemperTable& table, TemperatureUnit unit) {
  std::string words;
  const auto add = [&](const std::string& part) {
    if (!part.empty()) words += (words.empty() ? "" : ", ") + part;
  };
  if (table.hardened_at) add("hardened from " + to_text(*table.hardened_at, unit));
  add(table.medium);
  const std::string repeats = table.times == 1 ? "" : std::to_string(table.times) + " times ";
  add("tempered " + repeats + tangmark::to_text(table.hold));
  return words;
}

}  // namespace tangmark::steel
