// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <limits>

#include "domain/stock/cutting_search.h"

namespace tangmark::stock {
namespace {

constexpr double whole_number = 1e-4;  // nearer than this to 0 or 1 counts as whole
constexpr double effort_falls = 8;  // powers of e that work falls by when a branch closes the gap

bool is_fraction(double x) {
  return x > whole_number && x < 1 - whole_number;
}

}  // namespace

/// The first of the unfixed sizes of one length. Sizes of one length stand for each other, so they
/// are placed in the order of the bars; for that the first must be branched on first.
std::size_t CuttingSearch::first_alike(const CuttingNode& node, std::size_t size) const {
  std::size_t first = size;
  for (std::size_t j = size; j-- > 0 && shape_.sizes[j] == shape_.sizes[size];)
    if (node.fixed[j] == no_bar) first = j;
  return first;
}

/// Whether a bar before this one is the same in everything the search knows, so that putting the
/// size into it gives the same plans.
bool CuttingSearch::has_earlier_twin(const CuttingNode& node, std::size_t bar,
                                     std::size_t size) const {
  const std::size_t n = shape_.sizes.size();
  const auto holds_fixed = [&](std::size_t b) {
    return std::find(node.fixed.begin(), node.fixed.end(), static_cast<std::int16_t>(b)) !=
           node.fixed.end();
  };
  if (holds_fixed(bar)) return false;
  const auto row = [&](std::size_t b) {
    return node.open.begin() + static_cast<std::ptrdiff_t>(b * n);
  };
  for (std::size_t twin = 0; twin < bar; ++twin)
    if (shape_.bars[twin] == shape_.bars[bar] && node.ways[twin] == node.ways[bar] &&
        node.open[twin * n + size] != 0 &&
        std::equal(row(twin), row(twin) + static_cast<std::ptrdiff_t>(n), row(bar)) &&
        !holds_fixed(twin))
      return true;
  return false;
}

/// Everything the programme's solution is undecided about.
std::vector<CuttingSearch::Parting> CuttingSearch::partings(const CuttingNode& node) const {
  const std::size_t n = shape_.sizes.size(), m = shape_.bars.size();
  std::vector<double> used(m, 0.0), whole(m, 0.0), in(n * m, 0.0);
  for (const auto& [pattern, level] : master_.used()) {
    used[pattern->bar] += level;
    if (!pattern->keeps_rest) whole[pattern->bar] += level;
    for (const std::uint16_t i : pattern->sizes) in[pattern->bar * n + i] += level;
  }
  std::vector<Parting> found;
  for (std::size_t b = 0; b < m; ++b) {
    if (is_fraction(used[b])) found.push_back({false, 0, b, CuttingNode::unused});
    if (is_fraction(whole[b])) found.push_back({false, 0, b, CuttingNode::whole});
  }
  std::vector<bool> listed(n, false);
  for (std::size_t i = 0; i < n; ++i) {
    if (node.fixed[i] != no_bar) continue;
    double most = 0;
    for (std::size_t b = 0; b < m; ++b) most = std::max(most, in[b * n + i]);
    const std::size_t first = first_alike(node, i);
    if (most >= 1 - whole_number || listed[first]) continue;
    listed[first] = true;
    found.push_back({true, first, 0, 0});
  }
  // All decided, yet the bound is not met, by rounding or as a size stands in two patterns.
  for (std::size_t i = 0; i < n && found.empty(); ++i)
    if (node.fixed[i] == no_bar) found.push_back({true, first_alike(node, i), 0, 0});
  return found;
}

std::vector<CuttingSearch::Branch> CuttingSearch::branches(const CuttingNode& node,
                                                           const Tried& tried,
                                                           const Parting& parting) const {
  std::vector<Branch> found;
  if (!parting.by_size) {
    const std::uint8_t all = node.ways[parting.bar];
    for (const auto ways : {static_cast<std::uint8_t>(all & parting.ways),
                            static_cast<std::uint8_t>(all & ~parting.ways)}) {
      double best = -std::numeric_limits<double>::infinity();
      for (const std::uint8_t way : {CuttingNode::unused, CuttingNode::keeps, CuttingNode::whole})
        if ((ways & way) != 0) best = std::max(best, pricing_.of_way(parting.bar, way));
      const double bound = tried.bound + pricing_.bars()[parting.bar].best - best;
      if (ways != 0 && !hopeless(bound)) found.push_back({parting.bar, ways, bound});
    }
    return found;
  }
  const std::size_t n = shape_.sizes.size(), i = parting.size;
  double elsewhere = 0;
  for (std::size_t b = 0; b < shape_.bars.size(); ++b)
    if (node.open[b * n + i] != 0) elsewhere += tried.without[b * n + i] - tried.bound;
  for (std::size_t b = 0; b < shape_.bars.size(); ++b) {
    if (node.open[b * n + i] == 0 || has_earlier_twin(node, b, i)) continue;
    const double bound =
        tried.with[b * n + i] + elsewhere - (tried.without[b * n + i] - tried.bound);
    if (!hopeless(bound)) found.push_back({b, 0, bound});
  }
  return found;
}

/// An estimate of the work a parting leaves: each branch counts less the more of the gap it closes.
double CuttingSearch::effort(double bound, const std::vector<Branch>& branches) const {
  const double gap = std::max(beat_ - bound, tolerance_);
  double sum = 0;
  for (const Branch& branch : branches)
    sum += std::exp(-effort_falls * std::max(0.0, branch.bound - bound) / gap);
  return sum;
}

CuttingNode CuttingSearch::part(const CuttingNode& node, const Parting& parting,
                                const Branch& branch) const {
  const std::size_t n = shape_.sizes.size();
  CuttingNode child = node;
  child.bound = std::max(node.bound, branch.bound);
  if (!parting.by_size) {
    child.ways[branch.bar] = branch.ways;
    if (branch.ways == CuttingNode::unused)
      std::fill_n(child.open.begin() + static_cast<std::ptrdiff_t>(branch.bar * n), n,
                  std::uint8_t{0});
    return child;
  }
  fix(child, parting.size, branch.bar);
  for (std::size_t j = parting.size + 1; j < n && shape_.sizes[j] == shape_.sizes[parting.size];
       ++j)
    for (std::size_t b = 0; b < branch.bar; ++b) child.open[b * n + j] = 0;
  return child;
}

std::vector<CuttingNode> CuttingSearch::children(const CuttingNode& node, const Tried& tried) {
  // The ways to use a bar were narrowed after pricing; its figures are still those of `tried`.
  std::vector<Branch> best;
  Parting chosen;
  double least = std::numeric_limits<double>::infinity();
  for (const Parting& parting : partings(node)) {
    std::vector<Branch> found = branches(node, tried, parting);
    if (found.empty()) return {};
    const double work = effort(tried.bound, found);
    if (work < least) least = work, best = std::move(found), chosen = parting;
  }
  std::vector<CuttingNode> made;
  for (const Branch& branch : best) made.push_back(part(node, chosen, branch));
  return made;
}

void CuttingSearch::offer_whole_solution() {
  Assignment plan(shape_.sizes.size(), no_bar);
  for (const auto& [pattern, level] : master_.used()) {
    if (level < 1 - 1e-3) continue;
    for (const std::uint16_t i : pattern->sizes) plan[i] = static_cast<int>(pattern->bar);
  }
  offer(plan);
}

}  // namespace tangmark::stock
