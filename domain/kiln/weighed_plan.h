// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_search.h"

namespace tangmark::kiln {

struct BookedPlan;

/// A plan with what it costs when moves have a price. Fewer blades left out go before money.
struct WeighedPlan {
  FiringPlan plan;
  std::set<std::string> left_out;  ///< blades without a place
  PlanCost cost;                   ///< without the moves
  int moved = 0;                   ///< booked firings that do not stand
  std::int64_t total_mc = 0;
  bool known = false;              ///< false: nothing was weighed yet
  bool better_than(const WeighedPlan& other) const;
};

/// Weighs plans of one case against what is booked. Neither must change while it is used.
class Weighing {
 public:
  Weighing(const PlanCase& a_case, const BookedPlan& booked);
  /// The plan of a search, which keeps every rule.
  WeighedPlan weigh(FiringPlan plan, const std::vector<Unplaced>& unplaced) const;
  /// Empty when a rule is broken.
  std::optional<WeighedPlan> weigh(FiringPlan plan, const std::set<std::string>& left_out) const;
  /// Whether these firings beside the locked ones break no rule, whatever is still missing.
  bool keeps_rules_without_the_rest(const std::vector<PlanFiring>& firings) const;
  const PlanCase& the_case() const { return case_; }
  const BookedPlan& booked() const { return booked_; }

 private:
  const PlanCase& case_;
  const BookedPlan& booked_;
  std::set<std::string> all_;
};

/// A booked firing with those of its blades that may be in it at that minute; empty when none may,
/// or the firing itself breaks a rule beside the locked ones.
std::optional<PlanFiring> with_those_ready(const PlanCase& a_case, const PlanFiring& booked);

/// Puts booked firings back and lets blades join firings that are there, as long as that is better.
/// `over` ends it early.
void improve(const Weighing& weighing, WeighedPlan& plan, const std::function<bool()>& over);

}  // namespace tangmark::kiln
