// SPDX-License-Identifier: MIT
#include "domain/steel/temper_hardness.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "domain/steel/temper_table.h"

namespace tangmark::steel {
namespace {

constexpr double beyond_several_tables = 1;
constexpr double beyond_single_table = 2;

std::optional<double> hardness_in(const TemperTable& table, double parameter) {
  // A step typed as the table's own row must meet it, whatever the last digit of the logarithm.
  constexpr double same = 1e-6;
  const auto& rows = table.rows;
  const double first = parameter_of(table, rows.front());
  const double last = parameter_of(table, rows.back());
  if (parameter < first - same || parameter > last + same) return std::nullopt;
  std::size_t upper = 1;
  while (upper + 1 < rows.size() && parameter_of(table, rows[upper]) < parameter) ++upper;
  const double a = parameter_of(table, rows[upper - 1]);
  const double b = parameter_of(table, rows[upper]);
  return std::lerp(rows[upper - 1].hardness.points, rows[upper].hardness.points,
                   (parameter - a) / (b - a));
}

std::string range_of(const TemperTable& table) {
  return to_text(table.rows.front().temper, TemperatureUnit::celsius) + " to " +
         to_text(table.rows.back().temper, TemperatureUnit::celsius);
}

// The figures that several tables give for one and the same thing.
struct Found {
  std::vector<double> points;
  std::vector<std::string> sources;
  bool of_the_shop = false;

  void take(double hrc, const TemperTable& table) {
    points.push_back(hrc);
    sources.push_back(table.source);
    of_the_shop = of_the_shop || table.origin == GradeOrigin::entered_by_shop;
  }
  ExpectedHardness banded() const {
    const auto [least, most] = std::minmax_element(points.begin(), points.end());
    const bool several = points.size() > 1;
    const double wider = several ? beyond_several_tables : beyond_single_table;
    const std::string whose = of_the_shop ? "" : "published ";
    return {{std::floor(*least - wider)},
            {std::ceil(*most + wider)},
            several ? "the spread of the " + whose + "tables and one point either way"
                    : "one " + whose + "table and two points either way",
            sources};
  }
};

Problem no_table(const Grade& grade) {
  return {"grade", "No temper table of " + grade.name + " is on file.",
          "Measure a coupon, or enter a table with its source."};
}

}  // namespace

Outcome<ExpectedHardness> expected_hardness(const Grade& grade,
                                            const std::vector<TemperStep>& steps) {
  const auto sum = temper_sum(steps);
  if (!sum) return sum.problems();
  if (grade.tempers.empty()) return no_table(grade);
  Found found;
  std::string ranges;
  for (const TemperTable& table : grade.tempers) {
    ranges += (ranges.empty() ? "" : "; ") + range_of(table);
    if (const auto points = hardness_in(table, sum->parameter)) found.take(*points, table);
  }
  if (found.points.empty()) {
    return Problem{"steps", "These tempers lie outside the tables on file (" + ranges + ").",
                   "Measure a coupon; the tables are not stretched."};
  }
  return found.banded();
}

Outcome<ExpectedHardness> expected_as_quenched(const Grade& grade) {
  Found found;
  for (const TemperTable& table : grade.tempers) {
    if (table.as_quenched) found.take(table.as_quenched->points, table);
  }
  if (found.points.empty()) {
    return Problem{"grade", "No table of " + grade.name + " prints its hardness as quenched.",
                   "Measure a coupon before its temper."};
  }
  return found.banded();
}

}  // namespace tangmark::steel
