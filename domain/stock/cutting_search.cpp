// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_search.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <queue>

namespace tangmark::stock {
namespace {

constexpr int most_rounds = 300;   // of pricing at one node
constexpr double smoothing = 0.6;  // how far the worths lean to the best so far
constexpr int nodes_between_dives = 40;

double dearest_plan(const CuttingShape& shape) {
  double sum = 0;
  for (const CuttingShape::Bar& bar : shape.bars) sum += static_cast<double>(bar.price);
  return sum;
}

struct DearerBound {
  bool operator()(const CuttingNode& a, const CuttingNode& b) const { return a.bound > b.bound; }
};

}  // namespace

double CuttingSearch::per_bar(const CuttingShape& shape) {
  return std::max(1e-4, 1e-9 * dearest_plan(shape));
}

CuttingSearch::CuttingSearch(const CuttingShape& shape, Limits limits)
    : shape_(shape),
      limits_(std::move(limits)),
      per_bar_(per_bar(shape)),
      tolerance_(per_bar_ / 10),
      missing_(dearest_plan(shape) + per_bar_ * static_cast<double>(shape.bars.size()) + 1),
      master_(shape.sizes.size(), shape.bars.size(), missing_),
      pricing_(shape, per_bar_),
      beat_(std::min(limits_.beat, missing_)),
      worth_(shape.sizes.size(), 0.0) {}

double CuttingSearch::cost_of(const Assignment& plan) const {
  return value_of(shape_, plan) + per_bar_ * bars_cut(shape_, plan);
}

void CuttingSearch::offer(const Assignment& plan) {
  if (!is_whole_plan(shape_, plan)) return;
  const double cost = cost_of(plan);
  if (best_ ? !is_better(shape_, plan, *best_) : cost >= beat_) return;
  best_ = plan;
  beat_ = std::min(beat_, cost);
}

CuttingNode CuttingSearch::root() const {
  const std::size_t n = shape_.sizes.size(), m = shape_.bars.size();
  CuttingNode node;
  node.open.assign(n * m, 0);
  node.fixed.assign(n, no_bar);
  node.ways.assign(m, CuttingNode::unused | CuttingNode::keeps | CuttingNode::whole);
  for (std::size_t b = 0; b < m; ++b)
    for (std::size_t i = 0; i < n; ++i)
      node.open[b * n + i] = shape_.sizes[i] <= shape_.bars[b].room;
  return node;
}

void CuttingSearch::restrict_master(const CuttingNode& node) {
  const std::size_t n = shape_.sizes.size();
  std::vector<int> fixed_in(shape_.bars.size(), 0);
  for (const std::int16_t b : node.fixed)
    if (b != no_bar) ++fixed_in[static_cast<std::size_t>(b)];
  std::vector<bool> must(shape_.bars.size());
  for (std::size_t b = 0; b < must.size(); ++b)
    must[b] = (node.ways[b] & CuttingNode::unused) == 0 || fixed_in[b] > 0;
  const auto allowed = [&](const CuttingPattern& pattern) {
    const std::uint8_t way = pattern.keeps_rest ? CuttingNode::keeps : CuttingNode::whole;
    if ((node.ways[pattern.bar] & way) == 0) return false;
    int fixed = 0;
    for (const std::uint16_t i : pattern.sizes) {
      if (node.fixed[i] == static_cast<int>(pattern.bar))
        ++fixed;
      else if (node.open[pattern.bar * n + i] == 0)
        return false;
    }
    return fixed == fixed_in[pattern.bar];
  };
  master_.restrict_to(allowed, must);
}

/// Adds the best patterns of every bar at the worths just priced, where they would lower the cost.
bool CuttingSearch::add_patterns(const CuttingNode& node) {
  bool added = false;
  for (std::size_t b = 0; b < shape_.bars.size(); ++b) {
    for (const std::uint8_t way : {CuttingNode::keeps, CuttingNode::whole}) {
      if (!std::isfinite(pricing_.of_way(b, way))) continue;
      CuttingPattern pattern = pricing_.pattern(node, b, way);
      if (pattern.sizes.empty() || master_.reduced_cost(pattern) > -1e-7) continue;
      // A bar that may not keep its rest may still be priced with little in it; such a pattern is
      // never one of the node's.
      if (pattern.keeps_rest && (node.ways[b] & CuttingNode::keeps) == 0) continue;
      added = master_.add(std::move(pattern)) || added;
    }
  }
  return added;
}

void CuttingSearch::bound(CuttingNode& node) {
  master_.forget_some();
  restrict_master(node);
  has_worth_ = false;
  const std::size_t n = shape_.sizes.size();
  std::vector<double> tried(n);
  for (int round = 0; round < most_rounds && !stopped(); ++round) {
    master_.solve(limits_.out_of_time);
    bool added = false;
    for (const double lean : {has_worth_ ? smoothing : 0.0, 0.0}) {
      for (std::size_t i = 0; i < n; ++i)
        tried[i] = std::max(0.0, lean * worth_[i] + (1 - lean) * master_.dual_of_size(i));
      const double bound = pricing_.price(node, tried);
      if (!has_worth_ || bound > node.bound) {
        worth_ = tried;
        has_worth_ = true;
        node.bound = std::max(node.bound, bound);
      }
      if (hopeless(node.bound)) return;
      added = add_patterns(node);
      if (added || lean == 0) break;
    }
    if (!added) return;
  }
}

void CuttingSearch::fix(CuttingNode& node, std::size_t size, std::size_t bar) const {
  const std::size_t n = shape_.sizes.size();
  node.fixed[size] = static_cast<std::int16_t>(bar);
  for (std::size_t b = 0; b < shape_.bars.size(); ++b) node.open[b * n + size] = 0;
  node.ways[bar] = static_cast<std::uint8_t>(node.ways[bar] & ~CuttingNode::unused);
}

void CuttingSearch::tighten(CuttingNode& node, Tried& tried) {
  const std::size_t n = shape_.sizes.size(), m = shape_.bars.size();
  const double bound = pricing_.price(node, worth_);
  tried.bound = bound;
  tried.with.assign(n * m, std::numeric_limits<double>::infinity());
  tried.without.assign(n * m, bound);
  pricing_.try_each(node, worth_, [&](std::size_t b, std::size_t i, double with, double without) {
    tried.with[b * n + i] = bound + pricing_.bars()[b].best - with;
    tried.without[b * n + i] = bound + pricing_.bars()[b].best - without;
  });
  for (std::size_t b = 0; b < m; ++b)
    for (const std::uint8_t way : {CuttingNode::unused, CuttingNode::keeps, CuttingNode::whole})
      if ((node.ways[b] & way) != 0 &&
          hopeless(bound + pricing_.bars()[b].best - pricing_.of_way(b, way)))
        node.ways[b] = static_cast<std::uint8_t>(node.ways[b] & ~way);
  for (std::size_t i = 0; i < n; ++i) {
    if (node.fixed[i] != no_bar) continue;
    std::vector<std::size_t> bars;
    for (std::size_t b = 0; b < m; ++b) {
      std::uint8_t& open = node.open[b * n + i];
      if (open != 0 && (hopeless(tried.with[b * n + i]) || node.ways[b] <= CuttingNode::unused))
        open = 0;
      if (open != 0) bars.push_back(b);
    }
    if (bars.empty()) node.bound = std::numeric_limits<double>::infinity();
    if (bars.size() == 1) fix(node, i, bars.front());
  }
  for (const std::uint8_t ways : node.ways)
    if (ways == 0) node.bound = std::numeric_limits<double>::infinity();
}

/// Fixes the strongest pattern of the programme's solution again and again: a plan, quickly.
void CuttingSearch::dive(CuttingNode node) {
  const std::size_t n = shape_.sizes.size();
  for (std::size_t step = 0; step <= n && !stopped(); ++step) {
    bound(node);
    if (hopeless(node.bound)) return;
    const CuttingPattern* strongest = nullptr;
    double most = 0;
    for (const auto& [pattern, level] : master_.used()) {
      const bool settled = std::all_of(pattern->sizes.begin(), pattern->sizes.end(),
                                       [&](std::uint16_t i) { return node.fixed[i] != no_bar; });
      const double strength =
          std::min(1.0, level) + 1e-3 * static_cast<double>(pattern->sizes.size());
      if (!settled && strength > most) most = strength, strongest = pattern;
    }
    if (strongest == nullptr) return offer({node.fixed.begin(), node.fixed.end()});
    const CuttingPattern chosen = *strongest;
    for (const std::uint16_t i : chosen.sizes) fix(node, i, chosen.bar);
    for (std::size_t i = 0; i < n; ++i) node.open[chosen.bar * n + i] = 0;
  }
}

CuttingSearch::Found CuttingSearch::run() {
  std::priority_queue<CuttingNode, std::vector<CuttingNode>, DearerBound> waiting;
  dive(root());
  waiting.push(root());
  CuttingNode node;
  bool plunging = false;
  std::int64_t seen = 0;
  while ((plunging || !waiting.empty()) && seen < limits_.nodes && !stopped()) {
    if (!plunging) {
      node = waiting.top();
      waiting.pop();
    }
    plunging = false;
    if (hopeless(node.bound)) continue;
    ++seen;
    bound(node);
    if (hopeless(node.bound) || stopped()) {
      if (stopped()) waiting.push(node);
      continue;
    }
    if (seen % nodes_between_dives == 0) {
      dive(node);
      bound(node);
      if (hopeless(node.bound)) continue;
    }
    offer_whole_solution();
    Tried tried;
    tighten(node, tried);
    if (hopeless(node.bound)) continue;
    std::vector<CuttingNode> next = children(node, tried);
    std::sort(next.begin(), next.end(),
              [](const CuttingNode& a, const CuttingNode& b) { return a.bound < b.bound; });
    for (std::size_t k = next.size(); k-- > 1;) waiting.push(std::move(next[k]));
    if (!next.empty()) {
      node = std::move(next.front());
      plunging = true;
    }
  }
  Found found{best_, waiting.empty() && !plunging, beat_};
  if (plunging) found.bound = std::min(found.bound, node.bound);
  if (!waiting.empty()) found.bound = std::min(found.bound, waiting.top().bound);
  found.bound -= per_bar_ * static_cast<double>(shape_.bars.size());
  return found;
}

}  // namespace tangmark::stock
