// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_knapsack.h"

#include <algorithm>

namespace tangmark::stock {

/// Row `to` is row `from` with one thing more to choose.
void CuttingKnapsack::add(const Thing& thing, const std::vector<double>& from,
                          std::vector<double>& to) {
  const std::size_t room = from.size();
  const auto size = std::min(static_cast<std::size_t>(thing.size), room);
  to.resize(room);
  std::copy_n(from.begin(), size, to.begin());
  const double* without = from.data() + size;
  const double* less = from.data();
  double* out = to.data() + size;
  for (std::size_t x = 0; x < room - size; ++x) {
    const double with = less[x] + thing.worth;
    out[x] = with > without[x] ? with : without[x];
  }
}

void CuttingKnapsack::fill(const std::vector<std::int64_t>& sizes, const std::vector<double>& worth,
                           const std::uint8_t* open, std::int64_t room) {
  used_.clear();
  for (std::size_t i = 0; i < sizes.size(); ++i)
    if (open[i] != 0 && worth[i] > 0 && sizes[i] <= room) used_.push_back({i, sizes[i], worth[i]});
  if (rows_.size() < used_.size() + 1) rows_.resize(used_.size() + 1);
  rows_[0].assign(static_cast<std::size_t>(room) + 1, 0.0);
  for (std::size_t k = 0; k < used_.size(); ++k) add(used_[k], rows_[k], rows_[k + 1]);
}

std::vector<std::uint16_t> CuttingKnapsack::choice(std::int64_t room) const {
  std::vector<std::uint16_t> chosen;
  auto x = static_cast<std::size_t>(room);
  for (std::size_t k = used_.size(); k-- > 0;) {
    if (rows_[k + 1][x] == rows_[k][x]) continue;
    chosen.push_back(static_cast<std::uint16_t>(used_[k].index));
    x -= static_cast<std::size_t>(used_[k].size);
  }
  std::reverse(chosen.begin(), chosen.end());
  return chosen;
}

/// Halves the things: each half is added to the row that the other half is then left out of, so all
/// rows together cost the logarithm of their number and not the number itself.
void CuttingKnapsack::without(std::size_t first, std::size_t last, const std::vector<double>& row,
                              const Without& tell) const {
  if (last - first == 1) return tell(used_[first].index, row);
  const std::size_t middle = first + (last - first) / 2;
  const auto with = [&](std::size_t from, std::size_t to) {
    std::vector<double> grown = row, next;
    for (std::size_t k = from; k < to; ++k) {
      add(used_[k], grown, next);
      std::swap(grown, next);
    }
    return grown;
  };
  without(first, middle, with(middle, last), tell);
  without(middle, last, with(first, middle), tell);
}

void CuttingKnapsack::without_each(const Without& tell) const {
  if (!used_.empty()) without(0, used_.size(), rows_[0], tell);
}

}  // namespace tangmark::stock
