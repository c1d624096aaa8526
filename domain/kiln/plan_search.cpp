// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_search.h"

#include <algorithm>
#include <cassert>
#include <memory>
#include <set>

#include "domain/kiln/plan_annealing.h"
#include "domain/kiln/plan_bound.h"
#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_clock.h"
#include "domain/kiln/plan_reasons.h"

namespace tangmark::kiln {

namespace {

// After so many steps for each operation a fresh start finds more than going on does; in a large
// plan each needs more.
constexpr double steps_per_operation = 400;
constexpr double many_operations = 130;
constexpr int most_starts = 12;
// The best of the starts is worked over once more in the last part of the time.
constexpr double polish_from_many = 0.8;
constexpr double polish_from_one = 0.9;
// To find out what stops the blades without a place takes time, too.
constexpr double reasons_from = 0.9;
constexpr double settled_warmth = 0.05;
constexpr double cold = 0.0035;
constexpr std::int64_t trial_steps = 512;

/// Several searches from different seeds share the time when there is enough for each to settle;
/// the best goes on.
class Starts {
 public:
  Starts(const PlanTables& tables, SearchClock& clock, std::uint64_t seed, std::int64_t bound_mc)
      : tables_(tables), clock_(clock), seed_(seed), bound_mc_(bound_mc) {}

  const PlanAnnealing& run() {
    best_ = begin(0);
    if (clock_.over()) return *best_;
    const int starts = count_starts();
    const double last = starts > 1 ? polish_from_many : polish_from_one;
    const double first = clock_.share();
    best_->run(clock_, {.until = first + (last - first) / starts}, bound_mc_);
    for (int i = 1; i < starts && !done(); ++i) {
      auto next = begin(i);
      next->run(clock_, {.until = first + (last - first) * (i + 1) / starts}, bound_mc_);
      if (next->best_cost_mc() < best_->best_cost_mc()) best_ = std::move(next);
    }
    const double until = best_->unplaced().empty() ? 1 : reasons_from;
    if (!done())
      best_->run(clock_, {.until = until, .warmest = settled_warmth, .coldest = cold}, bound_mc_);
    return *best_;
  }

 private:
  bool done() const { return clock_.over() || best_->best_cost_mc() <= bound_mc_; }

  std::unique_ptr<PlanAnnealing> begin(int i) const {
    auto search = std::make_unique<PlanAnnealing>(
        tables_, seed_ + 0x9e3779b9u * static_cast<std::uint64_t>(i));
    search->start();
    return search;
  }

  /// A few steps show how many the allowance holds.
  int count_starts() {
    const double before = clock_.share();
    const std::int64_t from = clock_.steps();
    best_->try_out(clock_, trial_steps, bound_mc_);
    const double used = clock_.share() - before;
    if (used <= 0) return 1;
    const double held = static_cast<double>(clock_.steps() - from) * (1 - before) / used;
    const auto ops = static_cast<double>(tables_.ops().size());
    const double needed = steps_per_operation * ops * std::max(1.0, ops / many_operations);
    return std::clamp(static_cast<int>(held / needed), 1, most_starts);
  }

  const PlanTables& tables_;
  SearchClock& clock_;
  std::uint64_t seed_;
  std::int64_t bound_mc_;
  std::unique_ptr<PlanAnnealing> best_;
};

}  // namespace

PlanAnswer plan_firings(const PlanCase& a_case, const SearchLimits& limits, std::uint64_t seed) {
  const PlanTables tables(a_case);
  SearchClock clock(limits);
  Starts starts(tables, clock, seed, least_cost_mc(tables));
  const PlanAnnealing& search = starts.run();
  PlanAnswer answer;
  answer.plan = search.best();
  answer.iterations = clock.steps();
  answer.bound_mc = least_cost_mc(
      tables, std::set<int>(search.unplaced().begin(), search.unplaced().end()));
  const std::function<bool()> in_time = [&] {
    return !limits.time_used || limits.time_used() < 1;
  };
  std::set<std::string> left_out;
  for (int b : search.unplaced()) {
    const std::string& id = a_case.blades[static_cast<std::size_t>(b)].id;
    left_out.insert(id);
    answer.unplaced.push_back(limits.reasons
                                  ? reason_unplaced(a_case, answer.plan, id, in_time, limits.words)
                                  : Unplaced{id, 0, 0, {}, {}});
  }
  const PlanCheck check = check_plan(a_case, answer.plan, left_out);

  assert(check.feasible() && "the planner keeps every rule");
  answer.cost = *check.cost;
  answer.proven = answer.unplaced.empty() && answer.cost.total_mc() == answer.bound_mc;
  return answer;
}

}  // namespace tangmark::kiln
