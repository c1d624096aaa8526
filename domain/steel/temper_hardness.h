// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"
#include "domain/steel/hardness_scale.h"
#include "domain/steel/temper_parameter.h"

namespace tangmark::steel {

/// One published row: the hardness after a temper.
struct TemperRow {
  Temperature temper;
  double parameter = 0;  ///< of the row's hold, all its repeats, c 20
  RockwellC hardness;
  std::string source;
};

/// One published temper table of one grade, softening downwards.
struct TemperTable {
  std::string grade;
  Temperature hardened_at;
  std::string medium;
  std::vector<TemperRow> rows;
};

/// All tables compiled in (temper_tables.csv).
const std::vector<TemperTable>& temper_tables();

/// What a published table lets one expect: a band, never one figure.
struct ExpectedHardness {
  RockwellC low;
  RockwellC high;
  std::string band;  ///< how the band was made, for printing beside it
  std::vector<std::string> sources;
};

/// The hardness after tempers, linear in the temper parameter between the rows of each of the grade's
/// tables. The band is one point wider than the tables' spread, or 2 points either way of a single
/// table, since published tables of one steel differ by 1 to 4 points (common practice, no source).
/// An estimate: the same quench as the table's is taken for granted. **Valid** between the first and
/// the last row. **Outside**, for a grade without a table, and for no steps: refused.
Outcome<ExpectedHardness> expected_hardness(std::string_view grade,
                                            const std::vector<TemperStep>& steps);

}  // namespace tangmark::steel
