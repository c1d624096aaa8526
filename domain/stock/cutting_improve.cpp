// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_improve.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <random>

#include "domain/stock/cutting_search.h"

namespace tangmark::stock {
namespace {

enum class Rule { tightest, cheapest };

std::optional<Assignment> plan_by(const CuttingShape& shape, Rule rule) {
  std::vector<std::int64_t> filled(shape.bars.size(), 0);
  Assignment plan(shape.sizes.size(), no_bar);
  for (std::size_t i = 0; i < shape.sizes.size(); ++i) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t b = 0; b < shape.bars.size(); ++b) {
      const std::int64_t after = filled[b] + shape.sizes[i];
      if (after > shape.bars[b].room) continue;
      const double cost = rule == Rule::tightest
                              ? static_cast<double>(shape.bars[b].room - after)
                              : shape.value(b, after) - shape.value(b, filled[b]);
      if (cost < least) least = cost, plan[i] = static_cast<int>(b);
    }
    if (plan[i] == no_bar) return std::nullopt;
    filled[static_cast<std::size_t>(plan[i])] += shape.sizes[i];
  }
  return plan;
}

/// Some bars of a shape with the sizes that lie in them.
struct Part {
  CuttingShape shape;
  std::vector<std::size_t> bars, sizes;  ///< their indices in the whole
  Assignment plan;
};

Part part_of(const CuttingShape& shape, const Assignment& plan, std::vector<std::size_t> bars) {
  Part part;
  part.bars = std::move(bars);
  for (const std::size_t b : part.bars) part.shape.bars.push_back(shape.bars[b]);
  for (std::size_t i = 0; i < plan.size(); ++i) {
    const auto at =
        std::find(part.bars.begin(), part.bars.end(), static_cast<std::size_t>(plan[i]));
    if (at == part.bars.end()) continue;
    part.sizes.push_back(i);
    part.shape.sizes.push_back(shape.sizes[i]);
    part.plan.push_back(static_cast<int>(at - part.bars.begin()));
  }
  return part;
}

/// A few bars: mostly cut ones, sometimes one that is not.
std::vector<std::size_t> some_bars(const CuttingShape& shape, const Assignment& plan,
                                   std::mt19937& chance) {
  std::vector<std::size_t> order(shape.bars.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  // Shuffled by hand: std::shuffle may differ between libraries, and a plan must not.
  for (std::size_t k = order.size(); k > 1; --k) std::swap(order[k - 1], order[chance() % k]);
  const std::vector<std::int64_t> fills = fills_of(shape, plan);
  const std::size_t wanted = 2 + chance() % 3;
  const bool with_unused = chance() % 2 == 0;
  std::vector<std::size_t> bars;
  std::size_t unused = 0;
  for (const std::size_t b : order) {
    if (bars.size() >= wanted) break;
    if (fills[b] == 0 && (!with_unused || unused++ > 0)) continue;
    bars.push_back(b);
  }
  return bars;
}

}  // namespace

std::optional<Assignment> quick_plan(const CuttingShape& shape) {
  std::optional<Assignment> best;
  for (const Rule rule : {Rule::tightest, Rule::cheapest}) {
    std::optional<Assignment> plan = plan_by(shape, rule);
    if (plan && (!best || is_better(shape, *plan, *best))) best = std::move(plan);
  }
  return best;
}

Assignment improved_plan(const CuttingShape& shape, Assignment plan, int patience,
                         const OutOfTime& out_of_time) {
  constexpr std::int64_t nodes_for_a_part = 40;
  std::mt19937 chance(20'011);
  for (int idle = 0; idle < patience && !out_of_time(); ++idle) {
    const Part part = part_of(shape, plan, some_bars(shape, plan, chance));
    if (part.sizes.empty()) continue;
    CuttingSearch search(part.shape,
                         {out_of_time, std::numeric_limits<double>::infinity(), nodes_for_a_part});
    search.offer(part.plan);
    const CuttingSearch::Found found = search.run();
    if (!found.plan || !is_better(part.shape, *found.plan, part.plan)) continue;
    for (std::size_t k = 0; k < part.sizes.size(); ++k)
      plan[part.sizes[k]] = static_cast<int>(part.bars[static_cast<std::size_t>((*found.plan)[k])]);
    idle = -1;
  }
  return plan;
}

}  // namespace tangmark::stock
