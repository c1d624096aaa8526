// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <unordered_set>
#include <utility>
#include <vector>

namespace tangmark::stock {

/// A way to cut one bar.
struct CuttingPattern {
  std::size_t bar = 0;
  std::vector<std::uint16_t> sizes;  ///< indices, ascending
  double cost = 0;
  bool keeps_rest = false;
};

/// The linear programme over patterns: every size is in at least one pattern, every bar takes at
/// most one, least cost. Solved by the revised simplex method with an explicit inverse, which suits
/// its few rows. The basis is kept from one node of the search to the next; what a node forbids is
/// made dear instead of being taken out, so the basis always stays feasible. It only guides: bounds
/// are computed from its dual prices by the knapsacks, so that rounding here can cost time and
/// never the proof.
class CuttingMaster {
 public:
  /// `missing` is the cost of leaving a size out, above that of any plan.
  CuttingMaster(std::size_t sizes, std::size_t bars, double missing);

  /// Adds a pattern unless it is there already.
  bool add(CuttingPattern pattern);
  /// Makes dear what the node forbids. `must` names the bars that have to be used.
  void restrict_to(const std::function<bool(const CuttingPattern&)>& allowed,
                   const std::vector<bool>& must);
  /// Solves it, or stops early when out of time; the prices are then merely less good.
  void solve(const std::function<bool()>& out_of_time);
  double value() const;
  double dual_of_size(std::size_t i) const { return duals_[i]; }
  double dual_of_bar(std::size_t b) const { return duals_[sizes_ + b]; }
  double reduced_cost(const CuttingPattern& pattern) const;
  /// The patterns in the solution and how much of each.
  std::vector<std::pair<const CuttingPattern*, double>> used() const;
  /// Forgets the patterns that are dearest by the dual prices, when there are very many. After it
  /// `restrict_to` must be called.
  void forget_some();

 private:
  struct Column {
    CuttingPattern pattern;
    double cost_now = 0;
  };
  // A basic variable: a column, the leaving out of a size, or the slack of a row.
  enum class Basic : std::uint8_t { column, missing, slack };
  struct BasisEntry {
    Basic what = Basic::slack;
    std::size_t index = 0;
  };

  double cost_of(const BasisEntry& entry) const;
  template <class Each>
  void each_entry(const BasisEntry& entry, Each each) const;
  void find_duals();
  double reduced_cost_now(const BasisEntry& entry) const;
  bool find_candidates();
  bool best_candidate(BasisEntry& entering, double& reduced);
  void pivot(const BasisEntry& entering, double reduced);
  void invert();
  std::string key_of(const CuttingPattern& pattern) const;

  std::size_t sizes_, rows_;
  double missing_;
  std::vector<Column> columns_;
  std::vector<std::size_t> allowed_;  ///< the columns the node allows
  std::vector<std::pair<double, BasisEntry>> candidates_;
  std::unordered_set<std::string> known_;
  std::vector<double> slack_cost_;
  std::vector<BasisEntry> basis_;
  std::vector<double> inverse_;  ///< row by row
  std::vector<double> right_, level_, duals_, direction_;
  int pivots_since_inversion_ = 0;
};

}  // namespace tangmark::stock
