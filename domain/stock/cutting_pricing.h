// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "domain/stock/cutting_knapsack.h"
#include "domain/stock/cutting_master.h"
#include "domain/stock/cutting_shape.h"

namespace tangmark::stock {

/// A part of all plans: what the search still allows.
struct CuttingNode {
  static constexpr std::uint8_t unused = 1, keeps = 2, whole = 4;  ///< ways to use a bar
  double bound = 0;                 ///< no plan of this part costs less
  std::vector<std::uint8_t> open;   ///< [bar][size]: may this size, not yet fixed, come from it
  std::vector<std::int16_t> fixed;  ///< [size]: the bar it is fixed to, or no_bar
  std::vector<std::uint8_t> ways;   ///< [bar]: ways still allowed
};

/// Prices the bars of a node at given worths of the sizes, and with that bounds the node from
/// below: the sum of the worths less what the best pattern of each bar is worth above its cost.
/// This holds for any worths of zero or more (Lagrange's bound), so it may be trusted whatever they
/// come from.
class CuttingPricing {
 public:
  /// `per_bar` is added to the cost of each bar cut, to prefer fewer bars.
  CuttingPricing(const CuttingShape& shape, double per_bar);

  /// The bound; infinite when some bar cannot be used as the node demands.
  double price(const CuttingNode& node, const std::vector<double>& worth);

  /// What a bar's best pattern is worth above its cost, by the way it is used; after `price`.
  struct Bar {
    double best = 0, keeps = 0, whole = 0;        ///< minus infinity when not allowed
    std::int64_t keeps_room = 0, whole_room = 0;  ///< room left for open sizes at that best
    std::int64_t fixed_size = 0;
    double fixed_worth = 0;
    bool has_fixed = false;
    std::size_t sack = 0;
  };
  const std::vector<Bar>& bars() const { return bars_; }
  double of_way(std::size_t bar, std::uint8_t way) const;
  CuttingPattern pattern(const CuttingNode& node, std::size_t bar, std::uint8_t way) const;
  double cost(std::size_t bar, std::int64_t filled) const {
    return shape_.value(bar, filled) + (filled > 0 ? per_bar_ : 0);
  }

  /// For every bar and every size open to it: the best worth with that size in the bar for certain,
  /// and with it never in the bar. After `price`, at the same node and worths.
  using Tell = std::function<void(std::size_t bar, std::size_t size, double with, double without)>;
  void try_each(const CuttingNode& node, const std::vector<double>& worth, const Tell& tell) const;

 private:
  /// Best worth above cost of a bar over a row of best worths by room, `extra` being in it already.
  double best_over(const CuttingNode& node, std::size_t bar, const std::vector<double>& row,
                   std::int64_t extra_size, double extra_worth, Bar* where) const;

  const CuttingShape& shape_;
  double per_bar_;
  std::vector<Bar> bars_;
  std::vector<CuttingKnapsack> sacks_;
  std::vector<std::vector<std::size_t>> bars_of_sack_;
};

}  // namespace tangmark::stock
