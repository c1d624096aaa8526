// SPDX-License-Identifier: MIT
#include "domain/stock/cutting_plan.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <optional>
#include <set>
#include <string>

#include "domain/stock/cutting_improve.h"
#include "domain/stock/cutting_search.h"

namespace tangmark::stock {
namespace {

constexpr std::int64_t longest_mm = 100'000;
constexpr std::int64_t dearest_minor = 1'000'000'000'000;
constexpr std::size_t most_things = 1'000;
constexpr int patience = 60;           // tries of the improvement without gain
constexpr int patience_alone = 3'000;  // where nothing follows it
constexpr std::int64_t first_look_nodes = 300;
constexpr double most_rows = 4e7;      // knapsack cells; above, memory would not do

template <class Things>
void check_ids(Problems& found, const Things& things, const std::string& name) {
  std::set<std::string> seen;
  for (const auto& thing : things)
    if (!seen.insert(thing.id).second)
      found.push_back({name + " " + thing.id, "This id is given twice.", "Give each its own id."});
}

void check_length(Problems& found, const std::string& field, std::int64_t mm) {
  if (mm < 1 || mm > longest_mm)
    found.push_back({field, "A length must be from 1 mm to 100 m.", "Check the length."});
}

Problems faults(const CuttingCase& cutting) {
  Problems found;
  if (cutting.kerf_mm < 0 || cutting.kerf_mm > longest_mm)
    found.push_back({"kerf_mm", "The kerf cannot be negative or above 100 m.", "Check the kerf."});
  if (cutting.keep_mm < 0 || cutting.keep_mm > longest_mm)
    found.push_back({"keep_mm", "The length to keep cannot be negative or above 100 m.",
                     "Check the length."});
  if (cutting.bars.size() > most_things || cutting.blanks.size() > most_things)
    found.push_back({"case", "More than 1,000 bars or blanks cannot be planned at once.",
                     "Leave some out."});
  for (const CuttingBar& bar : cutting.bars) {
    check_length(found, "bar " + bar.id, bar.length_mm);
    if (bar.price_minor < 0 || bar.price_minor > dearest_minor)
      found.push_back({"bar " + bar.id, "The price is negative or too large.", "Check the price."});
  }
  for (const CuttingBlank& blank : cutting.blanks)
    check_length(found, "blank " + blank.id, blank.length_mm);
  check_ids(found, cutting.bars, "bar");
  check_ids(found, cutting.blanks, "blank");
  return found;
}

/// Blanks by falling length, in the order of the case among alike ones.
std::vector<std::size_t> by_length(const CuttingCase& cutting) {
  std::vector<std::size_t> order(cutting.blanks.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return cutting.blanks[a].length_mm > cutting.blanks[b].length_mm;
  });
  return order;
}

/// The shape of the case with only its shortest blanks.
CuttingShape shape_of(const CuttingCase& cutting, const std::vector<std::size_t>& order,
                      std::size_t placed) {
  CuttingShape shape;
  for (const CuttingBar& bar : cutting.bars)
    shape.bars.push_back({bar.length_mm, bar.length_mm + cutting.kerf_mm,
                          bar.length_mm - cutting.keep_mm, bar.price_minor});
  for (std::size_t k = order.size() - placed; k < order.size(); ++k)
    shape.sizes.push_back(cutting.blanks[order[k]].length_mm + cutting.kerf_mm);
  return shape;
}

/// More than this many of the shortest blanks cannot fit, by length alone.
std::size_t most_that_fit(const CuttingShape& all) {
  std::int64_t room = 0, longest = 0;
  for (const CuttingShape::Bar& bar : all.bars)
    room += bar.room, longest = std::max(longest, bar.room);
  std::size_t count = 0;
  for (auto size = all.sizes.rbegin(); size != all.sizes.rend(); ++size) {
    room -= *size;
    if (*size > longest || room < 0) break;
    ++count;
  }
  return count;
}

struct Solved {
  std::optional<Assignment> plan;
  bool proven = false;
  double bound = 0;
};

bool is_small_enough(const CuttingShape& shape) {
  double room = 0;
  for (const CuttingShape::Bar& bar : shape.bars) room += static_cast<double>(bar.room);
  return room * static_cast<double>(shape.sizes.size()) <= most_rows;
}

/// Places every size of the shape, as well as time allows.
Solved solve(const CuttingShape& shape, std::int64_t nodes, const OutOfTime& out_of_time) {
  if (shape.sizes.empty()) return {Assignment{}, true, 0};
  std::optional<Assignment> plan = quick_plan(shape);
  const bool small = is_small_enough(shape);
  if (plan) plan = improved_plan(shape, *plan, small ? patience : patience_alone, out_of_time);
  if (!small) return {plan, false, 0};
  CuttingSearch search(shape, {out_of_time, std::numeric_limits<double>::infinity(), nodes});
  if (plan) search.offer(*plan);
  const CuttingSearch::Found found = search.run();
  return {found.plan, found.proven, std::max(0.0, found.bound)};
}

CuttingPlan written_out(const CuttingCase& cutting, const std::vector<std::size_t>& order,
                        const CuttingShape& shape, const Solved& solved) {
  const std::size_t left_out = order.size() - shape.sizes.size();
  std::vector<CutBar> cuts(cutting.bars.size());
  for (std::size_t k = 0; k < shape.sizes.size(); ++k)
    cuts[static_cast<std::size_t>((*solved.plan)[k])].blanks.push_back(order[left_out + k]);
  CuttingPlan plan;
  plan.unplaced.assign(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(left_out));
  std::sort(plan.unplaced.begin(), plan.unplaced.end());
  plan.value_used = value_of(shape, *solved.plan);
  plan.proven = solved.proven;
  plan.value_at_least = solved.proven ? plan.value_used : std::min(solved.bound, plan.value_used);
  for (std::size_t b = 0; b < cuts.size(); ++b) {
    CutBar& cut = cuts[b];
    if (cut.blanks.empty()) continue;
    cut.bar = b;
    std::sort(cut.blanks.begin(), cut.blanks.end());
    std::int64_t filled = 0;
    for (const std::size_t i : cut.blanks) filled += cutting.blanks[i].length_mm + cutting.kerf_mm;
    cut.left_mm = std::max<std::int64_t>(0, cutting.bars[b].length_mm - filled);
    cut.kept = cut.left_mm >= cutting.keep_mm;
    plan.cuts.push_back(std::move(cut));
  }
  return plan;
}

}  // namespace

Outcome<CuttingPlan> cutting_plan(const CuttingCase& cutting, const OutOfTime& out_of_time) {
  if (Problems found = faults(cutting); !found.empty()) return found;
  const std::vector<std::size_t> order = by_length(cutting);
  const OutOfTime stop = out_of_time ? out_of_time : [] { return false; };
  std::size_t placed = most_that_fit(shape_of(cutting, order, order.size()));
  std::vector<std::size_t> undecided;  // counts that were neither placed nor shown impossible
  for (;; --placed) {
    CuttingShape shape = shape_of(cutting, order, placed);
    const bool easy = quick_plan(shape).has_value();
    Solved solved = solve(shape, easy ? std::numeric_limits<std::int64_t>::max() : first_look_nodes,
                          stop);
    if (!solved.plan) {
      if (!solved.proven) undecided.push_back(placed);
      continue;
    }
    if (!easy && !solved.proven)
      solved = solve(shape, std::numeric_limits<std::int64_t>::max(), stop);
    // With the rest of the time, a second look at what could not be decided, fewest first.
    while (!undecided.empty() && !stop()) {
      const CuttingShape more = shape_of(cutting, order, undecided.back());
      const Solved again = solve(more, std::numeric_limits<std::int64_t>::max(), stop);
      if (!again.plan && !again.proven) break;
      undecided.pop_back();
      if (again.plan) shape = more, solved = again;
    }
    solved.proven = solved.proven && undecided.empty();
    return written_out(cutting, order, shape, solved);
  }
}

}  // namespace tangmark::stock
