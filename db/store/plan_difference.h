// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/store/plan_case.h"

namespace tangmark::db {

/// What a plan changes against what is booked, and what that does.
struct PlanDifference {
  enum class What {
    kept,      ///< stands where it was, with the same blades
    reloaded,  ///< stands where it was, with other blades or another soak
    moved,     ///< the same work at another time, in another kiln or at another temperature
    added,
    dropped
  };
  struct Change {
    What what = What::added;
    kiln::Firing firing;                     ///< as it would be; as it was when dropped
    std::optional<kiln::KeptFiring> before;  ///< but for one that is added
    std::string why;                         ///< sentences; empty when it is kept
  };
  /// A blade whose last firing ends at another time, or is late otherwise, than as booked.
  struct Shift {
    std::string blade;
    std::optional<Instant> before, after;  ///< end of its last firing; empty: none booked, no place
    Duration late_before{}, late_after{};  ///< after its due time; zero: in time
  };
  std::vector<Change> changes;
  std::vector<Shift> shifts;
  Energy energy_before, energy_after;
  Duration hands_on_before{}, hands_on_after{};
  int moved = 0;  ///< booked firings that no longer stand, whose blades still need one
};

PlanDifference difference(const ShopCase& from, const kiln::FiringPlan& plan);

/// "moved", and for a firing that stays with another load "kept, other load".
std::string in_words(PlanDifference::What what);
/// "Blade 12 becomes late: done Thu 26 Nov 18:00 instead of 15:00, 2 h late, in time as booked."
std::string in_words(const PlanDifference::Shift& shift, const Zone& zone);
/// "3 firings added, 1 moved"; "nothing changes".
std::string counted_changes(const PlanDifference& difference);

/// Why each change is made, filled in by `difference`.
std::string reason_for(const ShopCase& from, const kiln::FiringPlan& plan,
                       const PlanDifference::Change& change);

/// Books a plan: adds, moves and drops firings as the difference says. Inside an action.
class Work;
void book(Work& work, const PlanDifference& difference);

}  // namespace tangmark::db
