// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_shape.h"

#include <algorithm>
#include <boost/multiprecision/cpp_int.hpp>
#include <cmath>

namespace tangmark::stock {
namespace {

using Fraction = boost::multiprecision::cpp_rational;

Fraction exact_value(const CuttingShape& shape, const std::vector<std::int64_t>& fills) {
  Fraction sum = 0;
  for (std::size_t b = 0; b < fills.size(); ++b) {
    const CuttingShape::Bar& bar = shape.bars[b];
    if (fills[b] == 0) continue;
    if (fills[b] > bar.keeps_room)
      sum += bar.price;
    else
      sum += Fraction(boost::multiprecision::cpp_int(bar.price) * fills[b], bar.length);
  }
  return sum;
}

}  // namespace

std::vector<std::int64_t> fills_of(const CuttingShape& shape, const Assignment& assignment) {
  std::vector<std::int64_t> fills(shape.bars.size(), 0);
  for (std::size_t i = 0; i < assignment.size(); ++i)
    if (assignment[i] != no_bar) fills[static_cast<std::size_t>(assignment[i])] += shape.sizes[i];
  return fills;
}

bool is_whole_plan(const CuttingShape& shape, const Assignment& assignment) {
  if (std::find(assignment.begin(), assignment.end(), no_bar) != assignment.end()) return false;
  const std::vector<std::int64_t> fills = fills_of(shape, assignment);
  for (std::size_t b = 0; b < fills.size(); ++b)
    if (fills[b] > shape.bars[b].room) return false;
  return true;
}

double value_of(const CuttingShape& shape, const Assignment& assignment) {
  const std::vector<std::int64_t> fills = fills_of(shape, assignment);
  double sum = 0;
  for (std::size_t b = 0; b < fills.size(); ++b) sum += shape.value(b, fills[b]);
  return sum;
}

int bars_cut(const CuttingShape& shape, const Assignment& assignment) {
  const std::vector<std::int64_t> fills = fills_of(shape, assignment);
  return static_cast<int>(fills.size() - static_cast<std::size_t>(std::count(
                                             fills.begin(), fills.end(), std::int64_t{0})));
}

bool is_better(const CuttingShape& shape, const Assignment& a, const Assignment& b) {
  const double va = value_of(shape, a), vb = value_of(shape, b);
  // Far from the rounding of a double there is no need for fractions.
  if (std::abs(va - vb) > 1e-9 * (1 + std::abs(va) + std::abs(vb))) return va < vb;
  const Fraction fa = exact_value(shape, fills_of(shape, a));
  const Fraction fb = exact_value(shape, fills_of(shape, b));
  return fa != fb ? fa < fb : bars_cut(shape, a) < bars_cut(shape, b);
}

}  // namespace tangmark::stock
