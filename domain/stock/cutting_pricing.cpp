// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_pricing.h"

#include <algorithm>
#include <limits>

namespace tangmark::stock {
namespace {

constexpr double never = -std::numeric_limits<double>::infinity();

}  // namespace

CuttingPricing::CuttingPricing(const CuttingShape& shape, double per_bar)
    : shape_(shape), per_bar_(per_bar), bars_(shape.bars.size()) {}

double CuttingPricing::best_over(const CuttingNode& node, std::size_t b,
                                 const std::vector<double>& row, std::int64_t extra_size,
                                 double extra_worth, Bar* where) const {
  const CuttingShape::Bar& bar = shape_.bars[b];
  const std::int64_t taken = bars_[b].fixed_size + extra_size;
  const double worth = bars_[b].fixed_worth + extra_worth;
  const bool has_something = bars_[b].has_fixed || extra_size > 0;
  double keeps = never, whole = never;
  std::int64_t keeps_at = 0;
  if ((node.ways[b] & CuttingNode::keeps) != 0 && taken <= bar.keeps_room) {
    const double rate = static_cast<double>(bar.price) / static_cast<double>(bar.length);
    const auto last = static_cast<std::size_t>(bar.keeps_room - taken);
    double highest = never;
    std::size_t at = 0;
    for (std::size_t x = 0; x <= last; ++x) {
      const double above = row[x] - rate * static_cast<double>(x);
      if (above > highest) highest = above, at = x;
    }
    keeps = highest + worth - rate * static_cast<double>(taken) - per_bar_;
    keeps_at = static_cast<std::int64_t>(at);
  }
  if ((node.ways[b] & CuttingNode::whole) != 0 && taken <= bar.room)
    whole = row[static_cast<std::size_t>(bar.room - taken)] + worth -
            static_cast<double>(bar.price) - per_bar_;
  const bool may_rest = (node.ways[b] & CuttingNode::unused) != 0 && !has_something;
  const double best = std::max({keeps, whole, may_rest ? 0.0 : never});
  if (where != nullptr) {
    where->best = best;
    where->keeps = keeps;
    where->whole = whole;
    where->keeps_room = keeps_at;
    where->whole_room = bar.room - taken;
  }
  return best;
}

double CuttingPricing::price(const CuttingNode& node, const std::vector<double>& worth) {
  const std::size_t n = shape_.sizes.size();
  for (Bar& bar : bars_) bar.fixed_size = 0, bar.fixed_worth = 0, bar.has_fixed = false;
  double bound = 0;
  for (std::size_t i = 0; i < n; ++i) {
    bound += worth[i];
    if (node.fixed[i] == no_bar) continue;
    Bar& bar = bars_[static_cast<std::size_t>(node.fixed[i])];
    bar.fixed_size += shape_.sizes[i];
    bar.fixed_worth += worth[i];
    bar.has_fixed = true;
  }
  // Bars that may hold the same sizes share one knapsack, filled as far as the largest needs.
  bars_of_sack_.clear();
  for (std::size_t b = 0; b < bars_.size(); ++b) {
    const std::uint8_t* row = &node.open[b * n];
    std::size_t sack = 0;
    while (sack < bars_of_sack_.size() &&
           !std::equal(row, row + n, &node.open[bars_of_sack_[sack].front() * n]))
      ++sack;
    if (sack == bars_of_sack_.size()) bars_of_sack_.emplace_back();
    bars_of_sack_[sack].push_back(b);
    bars_[b].sack = sack;
  }
  if (sacks_.size() < bars_of_sack_.size()) sacks_.resize(bars_of_sack_.size());
  for (std::size_t s = 0; s < bars_of_sack_.size(); ++s) {
    std::int64_t room = 0;
    for (const std::size_t b : bars_of_sack_[s])
      room = std::max(room, shape_.bars[b].room - bars_[b].fixed_size);
    sacks_[s].fill(shape_.sizes, worth, &node.open[bars_of_sack_[s].front() * n], room);
    for (const std::size_t b : bars_of_sack_[s]) {
      bound -= best_over(node, b, sacks_[s].whole_row(), 0, 0, &bars_[b]);
    }
  }
  return bound;
}

double CuttingPricing::of_way(std::size_t b, std::uint8_t way) const {
  if (way == CuttingNode::keeps) return bars_[b].keeps;
  if (way == CuttingNode::whole) return bars_[b].whole;
  return bars_[b].has_fixed ? never : 0.0;
}

CuttingPattern CuttingPricing::pattern(const CuttingNode& node, std::size_t b,
                                       std::uint8_t way) const {
  const Bar& bar = bars_[b];
  CuttingPattern made;
  made.bar = b;
  made.sizes = sacks_[bar.sack].choice(way == CuttingNode::keeps ? bar.keeps_room : bar.whole_room);
  if (bar.has_fixed) {
    for (std::size_t i = 0; i < node.fixed.size(); ++i)
      if (node.fixed[i] == static_cast<int>(b)) made.sizes.push_back(static_cast<std::uint16_t>(i));
    std::sort(made.sizes.begin(), made.sizes.end());
  }
  std::int64_t filled = 0;
  for (const std::uint16_t i : made.sizes) filled += shape_.sizes[i];
  made.cost = cost(b, filled);
  made.keeps_rest = filled <= shape_.bars[b].keeps_room;
  return made;
}

void CuttingPricing::try_each(const CuttingNode& node, const std::vector<double>& worth,
                              const Tell& tell) const {
  const std::size_t n = shape_.sizes.size();
  for (std::size_t s = 0; s < bars_of_sack_.size(); ++s) {
    const std::vector<std::size_t>& members = bars_of_sack_[s];
    std::vector<bool> told(n, false);
    const auto tell_all = [&](std::size_t i, const std::vector<double>& row) {
      told[i] = true;
      for (const std::size_t b : members)
        tell(b, i, best_over(node, b, row, shape_.sizes[i], worth[i], nullptr),
             best_over(node, b, row, 0, 0, nullptr));
    };
    sacks_[s].without_each(tell_all);
    for (std::size_t i = 0; i < n; ++i)
      if (node.open[members.front() * n + i] != 0 && !told[i]) tell_all(i, sacks_[s].whole_row());
  }
}

}  // namespace tangmark::stock
