// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"
#include "domain/steel/grade_origin.h"
#include "domain/steel/hardness_scale.h"

namespace tangmark::steel {

/// One row: the hardness after a temper.
struct TemperRow {
  Temperature temper;
  RockwellC hardness;
  std::string source;  ///< of this row, where it differs from the table's; else empty
  friend bool operator==(const TemperRow&, const TemperRow&) = default;
};

/// One temper table of one grade: what a quench from one heat came to after tempers of one length.
/// The rows rise in temperature and are at least two.
struct TemperTable {
  std::optional<Temperature> hardened_at;
  std::string medium;  ///< "oil"; empty when the source does not say
  Duration hold{0};    ///< of each temper
  std::size_t times = 1;
  std::optional<RockwellC> as_quenched;
  std::vector<TemperRow> rows;
  std::string source;
  GradeOrigin origin = GradeOrigin::published;
  friend bool operator==(const TemperTable&, const TemperTable&) = default;
};

/// The tables of a grade compiled in (temper_tables.csv), by its main name.
std::vector<TemperTable> published_temper_tables(std::string_view grade_name);

/// Reads rows as typed: "150 C: 63, 200 C: 61.5", also one a line; temperatures in C, F or K with
/// the unit written, hardness in HRC. Refuses fewer than two rows, temperatures that do not rise,
/// and a hardness outside 20 to 70 HRC.
Outcome<std::vector<TemperRow>> parse_temper_rows(std::string_view text, std::string_view field);

/// The temper parameter of a row of a table: its hold, all its repeats, c 20.
double parameter_of(const TemperTable& table, const TemperRow& row);

/// "1475 °F, oil, twice 2 h" as far as the table says.
std::string conditions_of(const TemperTable& table, TemperatureUnit unit);

}  // namespace tangmark::steel
