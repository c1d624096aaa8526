// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>
#include <vector>

namespace tangmark::stock {

/// A cutting case as its figures alone. The size of a blank is its length and one kerf, so n blanks
/// fill a bar by the sum of their sizes and fit when that is at most length + kerf. All millimetres
/// and minor units.
struct CuttingShape {
  struct Bar {
    std::int64_t length = 0;
    std::int64_t room = 0;        ///< length + kerf: the most that fits
    std::int64_t keeps_room = 0;  ///< length - keep: filled up to here, the rest is kept
    std::int64_t price = 0;
    friend bool operator==(const Bar&, const Bar&) = default;
  };
  std::vector<std::int64_t> sizes;  ///< the longest first
  std::vector<Bar> bars;

  /// Value used of a bar filled this far: in proportion up to keeps_room, the whole price beyond.
  double value(std::size_t bar, std::int64_t filled) const {
    const Bar& b = bars[bar];
    if (filled == 0) return 0;
    if (filled > b.keeps_room) return static_cast<double>(b.price);
    return static_cast<double>(b.price) * static_cast<double>(filled) /
           static_cast<double>(b.length);
  }
};

/// The bar of each size, none for a size not placed.
inline constexpr int no_bar = -1;
using Assignment = std::vector<int>;

/// How far each bar is filled; nothing is checked.
std::vector<std::int64_t> fills_of(const CuttingShape& shape, const Assignment& assignment);
/// Every size has a bar and no bar is over-filled.
bool is_whole_plan(const CuttingShape& shape, const Assignment& assignment);
double value_of(const CuttingShape& shape, const Assignment& assignment);
int bars_cut(const CuttingShape& shape, const Assignment& assignment);
/// Less value first, then fewer bars; values are compared exactly, as sums of fractions.
bool is_better(const CuttingShape& shape, const Assignment& a, const Assignment& b);

}  // namespace tangmark::stock
