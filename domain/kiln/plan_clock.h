// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <cstdint>

#include "domain/kiln/plan_search.h"

namespace tangmark::kiln {

/// How much of a search's allowance is used up, over all its spells, and who is told of it. Steps
/// are counted; the caller's measure of time is asked only now and then.
class SearchClock {
 public:
  explicit SearchClock(const SearchLimits& limits) : limits_(limits) { read(); }

  /// From 0 to 1, as last read.
  double share() const { return share_; }
  bool over() const { return share_ >= 1; }
  std::int64_t steps() const { return steps_; }
  void count() { ++steps_; }

  /// True every few steps, when `share` has been read anew.
  bool looks_up() {
    if (steps_ % steps_between != 0 && steps_ != limits_.iterations) return false;
    read();
    return true;
  }

  /// Reports the best plan so far if it is better than what was last reported.
  void tell(std::int64_t best_mc, std::int64_t bound_mc, int unplaced) {
    const bool better = unplaced < told_.unplaced ||
                        (unplaced == told_.unplaced && best_mc < told_.best_mc);
    if (!limits_.progress || (told_once_ && (!better || share_ < told_at_ + share_between))) return;
    told_ = {steps_, best_mc, bound_mc, unplaced};
    told_once_ = true;
    told_at_ = share_;
    limits_.progress(told_);
  }

 private:
  static constexpr std::int64_t steps_between = 32;
  static constexpr double share_between = 0.02;

  void read() {
    const bool unlimited = limits_.iterations <= 0 && !limits_.time_used;
    share_ = unlimited ? 1 : limits_.time_used ? limits_.time_used() : 0;
    if (limits_.iterations > 0)
      share_ = std::max(share_, static_cast<double>(steps_) /
                                    static_cast<double>(limits_.iterations));
  }

  const SearchLimits& limits_;
  std::int64_t steps_ = 0;
  double share_ = 0;
  SearchProgress told_;
  bool told_once_ = false;
  double told_at_ = 0;
};

}  // namespace tangmark::kiln
