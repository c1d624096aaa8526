// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/kiln/firing.h"
#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_check.h"

namespace tangmark::db {

/// The shop's own planning case, and the way back from its plain integers to blades and kilns.
///
/// Assumes: a blade's heat steps that are still open are its chain; the bench work between two of
/// them keeps them that far apart; work before the first is done in bench hours from `origin` on;
/// work after the last is taken off the promised day; a temper after a quench starts within the
/// step's own limit, else the shop's; the last firing of each kiln says how hot it still is.
struct ShopCase {
  Instant origin;  ///< minute 0
  kiln::PlanCase a_case;
  struct Chain {
    blade::BladeId blade;
    std::vector<blade::RouteStepId> steps;  ///< by operation of the case
    std::vector<std::string> names;         ///< "temper", by operation of the case
  };
  std::map<std::string, Chain> chains;              ///< by blade id of the case: its number
  std::map<std::string, kiln::KilnId> kilns;        ///< by kiln id of the case: its name
  std::vector<kiln::KeptFiring> movable;            ///< booked, not locked: a new plan replaces them
  std::vector<std::string> left_aside;              ///< sentences: blades that cannot be planned yet
  Instant at(int minute) const { return origin + std::chrono::minutes(minute); }
  int minute(Instant at) const;
};

/// Which booked firings the case holds as locked.
enum class Keep { locked_only, all_booked };

/// The case from a moment on, over so many days.
ShopCase shop_case(const ShopFile& shop, Instant from, Keep keep, int days = 14);

/// A firing of a plan as the shop stores it. Its number is not given yet.
kiln::Firing as_firing(const ShopCase& from, const kiln::PlanFiring& planned,
                       const kiln::TimedFiring& timed);
/// A stored firing in the integers of the case; nothing when one of its blades has no such open step.
std::optional<kiln::PlanFiring> as_planned(const ShopCase& from, const kiln::KeptFiring& firing);

/// What a plan changes against what is booked.
struct PlanDifference {
  enum class What { kept, moved, added, dropped };
  struct Change {
    What what;
    kiln::Firing firing;                        ///< as it would be; as it was when dropped
    std::optional<kiln::KeptFiring> before;     ///< when moved, kept or dropped
  };
  /// After the due day; zero: in time. `before` is empty when nothing was booked for the blade.
  struct Lateness { std::string blade; std::optional<Duration> before; Duration after; };
  std::vector<Change> changes;
  std::vector<Lateness> lateness;  ///< blades whose lateness changes
  Energy energy_before, energy_after;
  Duration hands_on_before{}, hands_on_after{};
};

/// "blade 12 becomes later: in time as booked, 3 h late by the plan".
std::string in_words(const PlanDifference::Lateness& late);

PlanDifference difference(const ShopCase& from, const kiln::FiringPlan& plan);

/// Books a plan: adds, moves and drops firings as the difference says. Inside an action.
class Work;
void book(Work& work, const PlanDifference& difference);

}  // namespace tangmark::db
