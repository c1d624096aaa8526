// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <set>
#include <vector>

#include "domain/kiln/plan_fitting.h"
#include "domain/kiln/plan_search.h"

namespace tangmark::kiln {

/// The search for a better plan: takes a few blades or one firing out, puts them back elsewhere, and
/// keeps what is better; what is worse it keeps less and less often (simulated annealing).
/// Source: Kirkpatrick, Gelatt, Vecchi, Science 220 (1983) 671.
class PlanAnnealing {
 public:
  PlanAnnealing(const PlanTables& tables, std::uint64_t seed);

  /// A first plan: blades by their due date, each put in where it costs least.
  void start();
  /// Improves the plan until the limits are reached or the cost has met `bound_mc`.
  void run(const SearchLimits& limits, std::int64_t bound_mc);

  const FiringPlan& best() const { return best_; }
  std::int64_t best_cost_mc() const { return best_cost_; }
  /// Blades that the best plan has no place for.
  const std::vector<int>& unplaced() const { return best_unplaced_; }
  std::int64_t iterations() const { return iterations_; }

 private:
  using Stretch = std::pair<int, int>;  ///< first and last operation

  void lock_firings();
  void step();
  void retry_unplaced();
  bool try_step();
  bool try_insert(int blade, int attempt);
  bool insert_blade(int blade);
  bool remake();
  void take_blades(int count);
  void take_firing();
  void take_day();
  bool shift_firing();
  bool hold_firing();
  bool change_temp();
  bool take_out(Stretch s);
  void join_stretches();
  bool put_back();
  bool movable(int op) const;
  void note_best();
  void write_best();
  std::int64_t cost() const;
  int random_firing();
  int random_blade();

  const PlanTables& tables_;
  PlanChance chance_;
  Timetable table_;
  ChainFitting fitting_;
  std::vector<Stretch> taken_;
  std::vector<int> unplaced_;
  std::vector<int> saved_unplaced_;
  double warmth_ = 0;  ///< millicents by which a step may be worse, about once in e times
  std::int64_t limit_ = 0;  ///< what the plan may cost after this step
  std::int64_t iterations_ = 0;
  FiringPlan best_;
  std::int64_t best_cost_ = 0;
  bool best_pending_ = false;
  std::vector<int> best_unplaced_;
};

}  // namespace tangmark::kiln
