// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <set>
#include <vector>

#include "domain/kiln/plan_clock.h"
#include "domain/kiln/plan_fitting.h"

namespace tangmark::kiln {

/// The search for a better plan: takes a few blades or one firing out, puts them back elsewhere,
/// and keeps what is better; what is worse it keeps less and less often (simulated annealing).
/// Source: Kirkpatrick, Gelatt, Vecchi, Science 220 (1983) 671.
class PlanAnnealing {
 public:
  PlanAnnealing(const PlanTables& tables, std::uint64_t seed);

  /// A first plan: blades by their due date, each put in where it costs least.
  void start();
  /// Improves the plan from where it stands until the clock shows `until` or the cost has met
  /// `bound_mc`. Warmth falls from the first to the second share of what a firing costs.
  struct Spell {
    double until = 1;
    double warmest = 0.7, coldest = 0.05;
  };
  void run(SearchClock& clock, const Spell& spell, std::int64_t bound_mc);
  /// So many steps without cooling down.
  void try_out(SearchClock& clock, std::int64_t steps, std::int64_t bound_mc);

  const FiringPlan& best() const { return best_; }
  std::int64_t best_cost_mc() const { return best_cost_; }
  /// Blades that the best plan has no place for.
  const std::vector<int>& unplaced() const { return best_unplaced_; }

 private:
  using Stretch = std::pair<int, int>;  ///< first and last operation

  /// A blade without a place weighs more than anything a plan may cost to have it.
  static constexpr std::int64_t unplaced_mc = 1'000'000'000'000;

  void lock_firings();
  void weigh();
  void step();
  bool any_step(SearchClock& clock);
  void retry_unplaced();
  void take_unplaced();
  bool try_step();
  bool try_insert(int blade, int attempt);
  bool insert_blade(int blade);
  bool remake();
  void take_blades(int count);
  void take_firing();
  void take_day();
  bool shift_firing();
  bool shift_block();
  bool merge_firings();
  int random_like(int firing);
  bool follow(int op, int guide);
  bool follow_guide();
  bool swap_blades();
  bool swap_kilns();
  bool hold_firing();
  bool change_temp();
  bool take_out(Stretch s);
  void join_stretches();
  void begin_late(Stretch s);
  bool put_back();
  bool movable(int op) const;
  void note_best();
  void write_best();
  std::int64_t cost() const;
  int random_firing();
  int sparse_firing();
  int random_blade();

  const PlanTables& tables_;
  PlanChance chance_;
  Timetable table_;
  ChainFitting fitting_;
  std::vector<Stretch> taken_;
  std::vector<int> unplaced_;
  std::vector<int> block_;  ///< firings or operations that this step moves together
  int trying_ = -1;  ///< the blade without a place that this step tries to put in
  std::int64_t firing_mc_ = 1;  ///< what a firing of this case costs, about
  std::int64_t slack_mc_ = 1;  ///< by how much the estimate of a change may be too high
  double warmth_ = 0;  ///< millicents by which a step may be worse, about once in e times
  std::int64_t limit_ = 0;  ///< what the plan may cost after this step
  std::int64_t steps_ = 0;
  FiringPlan best_;
  std::int64_t best_cost_ = 0;
  bool best_pending_ = false;
  std::vector<int> best_unplaced_;
};

}  // namespace tangmark::kiln
