// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

#include "domain/stock/cutting_master.h"
#include "domain/stock/cutting_plan.h"
#include "domain/stock/cutting_pricing.h"
#include "domain/stock/cutting_shape.h"

namespace tangmark::stock {

/// Branch and price over a shape whose sizes must all be placed.
class CuttingSearch {
 public:
  struct Limits {
    OutOfTime out_of_time;
    double beat =
        std::numeric_limits<double>::infinity();  ///< only plans below this cost are wanted
    std::int64_t nodes = std::numeric_limits<std::int64_t>::max();
  };
  struct Found {
    std::optional<Assignment> plan;  ///< the best below `beat`, if any was found
    bool proven = false;             ///< nothing better exists below `beat`
    double bound = 0;                ///< no plan uses less value than this
  };

  CuttingSearch(const CuttingShape& shape, Limits limits);
  /// A plan known beforehand, to start from.
  void offer(const Assignment& plan);
  Found run();

  /// What each bar cut costs above its value, so that fewer bars win among plans of like value.
  static double per_bar(const CuttingShape& shape);

 private:
  /// [bar * sizes + size]: the node's bound with the size in that bar, and with it elsewhere.
  struct Tried {
    double bound = 0;
    std::vector<double> with, without;
  };
  /// A way to part a node in two or more: by the bar of a size, or by how a bar is used.
  struct Parting {
    bool by_size = false;
    std::size_t size = 0, bar = 0;
    std::uint8_t ways = 0;
  };
  struct Branch {
    std::size_t bar = 0;
    std::uint8_t ways = 0;  ///< when parted by ways
    double bound = 0;
  };

  bool stopped() const { return limits_.out_of_time && limits_.out_of_time(); }
  double cost_of(const Assignment& plan) const;
  bool hopeless(double bound) const { return bound >= beat_ - tolerance_; }
  CuttingNode root() const;
  /// Raises the node's bound as far as the programme allows, or until it is hopeless.
  void bound(CuttingNode& node);
  void restrict_master(const CuttingNode& node);
  bool add_patterns(const CuttingNode& node);
  /// Takes out what cannot be in a better plan. The node becomes hopeless when nothing is left.
  void tighten(CuttingNode& node, Tried& tried);
  void fix(CuttingNode& node, std::size_t size, std::size_t bar) const;
  void dive(CuttingNode node);
  std::vector<CuttingNode> children(const CuttingNode& node, const Tried& tried);
  std::vector<Parting> partings(const CuttingNode& node) const;
  std::vector<Branch> branches(const CuttingNode& node, const Tried& tried, const Parting& p) const;
  double effort(double bound, const std::vector<Branch>& branches) const;
  CuttingNode part(const CuttingNode& node, const Parting& parting, const Branch& branch) const;
  std::size_t first_alike(const CuttingNode& node, std::size_t size) const;
  bool has_earlier_twin(const CuttingNode& node, std::size_t bar, std::size_t size) const;
  void offer_whole_solution();

  const CuttingShape& shape_;
  Limits limits_;
  double per_bar_, tolerance_, missing_;
  CuttingMaster master_;
  CuttingPricing pricing_;
  double beat_;
  std::optional<Assignment> best_;
  std::vector<double> worth_;  ///< the worths that gave the node's bound
  bool has_worth_ = false;
};

}  // namespace tangmark::stock
