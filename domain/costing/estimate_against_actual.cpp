// SPDX-License-Identifier: MIT
#include "domain/costing/estimate_against_actual.h"

#include <algorithm>
#include <cstdlib>

namespace tangmark::costing {
namespace {

LineCompared& paired(std::vector<LineCompared>& lines, const CostLine& line) {
  for (LineCompared& known : lines)
    if (known.kind == line.kind && known.text == line.text) return known;
  const Money none(0, line.amount.currency());
  lines.push_back({line.kind,
                   line.text,
                   {0, line.quantity.unit},
                   {0, line.quantity.unit},
                   none,
                   none,
                   none,
                   none});
  return lines.back();
}

void split_difference(LineCompared& line) {
  const Money difference = line.actual - line.quoted;
  const std::int64_t quoted = line.quoted_quantity.thousandths;
  const bool comparable = quoted > 0 && line.quoted_quantity.unit == line.actual_quantity.unit;
  line.by_quantity =
      comparable ? scaled_half_even(line.quoted, line.actual_quantity.thousandths - quoted, quoted)
                 : difference;
  line.by_price = difference - line.by_quantity;
}

std::int64_t size_of_difference(const LineCompared& line) {
  return std::llabs((line.actual - line.quoted).minor());
}

}  // namespace

Outcome<Comparison> compare(const CostSheet& quoted, const CostSheet& actual) {
  if (quoted.price.cost.currency() != actual.price.cost.currency())
    return Problem{"currency", "The quote and the actual costs are in two currencies.",
                   "Compare them in one currency."};
  Comparison c;
  for (const CostLine& line : quoted.lines) {
    LineCompared& pair = paired(c.lines, line);
    pair.quoted += line.amount;
    pair.quoted_quantity.thousandths += line.quantity.thousandths;
  }
  for (const CostLine& line : actual.lines) {
    LineCompared& pair = paired(c.lines, line);
    pair.actual += line.amount;
    pair.actual_quantity.unit = line.quantity.unit;
    pair.actual_quantity.thousandths += line.quantity.thousandths;
  }
  c.quoted = c.actual = Money(0, quoted.price.cost.currency());
  for (LineCompared& line : c.lines) {
    split_difference(line);
    c.quoted += line.quoted;
    c.actual += line.actual;
  }
  c.quoted_per_hour = quoted.earned_per_hour;
  c.actual_per_hour = actual.earned_per_hour;
  return c;
}

std::vector<LineCompared> why_they_differ(const Comparison& comparison) {
  constexpr std::size_t shown = 3;
  std::vector<LineCompared> lines = comparison.lines;
  std::erase_if(lines, [](const LineCompared& l) { return size_of_difference(l) == 0; });
  std::stable_sort(lines.begin(), lines.end(), [](const LineCompared& a, const LineCompared& b) {
    return size_of_difference(a) > size_of_difference(b);
  });
  if (lines.size() > shown) lines.resize(shown);
  return lines;
}

}  // namespace tangmark::costing
