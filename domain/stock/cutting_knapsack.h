// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

namespace tangmark::stock {

/// The most worth that fits into each room up to a limit, each size used once at most. Dynamic
/// programming over the room; one row is kept for each size, to read the choice back.
class CuttingKnapsack {
 public:
  /// `open` tells which sizes may be used; those worth nothing are left out.
  void fill(const std::vector<std::int64_t>& sizes, const std::vector<double>& worth,
            const std::uint8_t* open, std::int64_t room);
  /// Best worth with at most this room. Within the limit filled to.
  double best(std::int64_t room) const {
    return rows_[used_.size()][static_cast<std::size_t>(room)];
  }
  /// The sizes of that best choice, ascending by index.
  std::vector<std::uint16_t> choice(std::int64_t room) const;

  /// For each size used here: the row of best worths, by room, if that size were not to be had.
  using Without = std::function<void(std::size_t size, const std::vector<double>& row)>;
  void without_each(const Without& tell) const;
  /// The row with everything in it: what `without_each` would tell for a size that is worth
  /// nothing.
  const std::vector<double>& whole_row() const { return rows_[used_.size()]; }

 private:
  struct Thing {
    std::size_t index;
    std::int64_t size;
    double worth;
  };
  static void add(const Thing& thing, const std::vector<double>& from, std::vector<double>& to);
  void without(std::size_t first, std::size_t last, const std::vector<double>& row,
               const Without& tell) const;

  std::vector<Thing> used_;
  std::vector<std::vector<double>> rows_;
};

}  // namespace tangmark::stock
