// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/kiln/firing.h"
#include "domain/kiln/kiln.h"
#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_search.h"
#include "domain/kiln/replanning.h"

namespace tangmark::db {

/// The shop's own planning case, and the way back from its plain integers to blades and kilns.
///
/// Assumes: a blade's heat steps that are still open are its chain; the bench work between two of
/// them keeps them that far apart; work before the first is done in bench hours from `origin` on;
/// work after the last is taken off the promised day; a temper after a quench starts within the
/// step's own limit, else the shop's; the last firing of each kiln says how hot it still is; a
/// firing still marked as running after its end ends now; a kiln whose next firing should be
/// heating is heating; a kiln whose load effect is known is back at heat as late as when it is
/// full, at the hottest of the heats ahead, its loading takes so much longer, and each blade draws
/// its own heat; a firing that runs is unloaded (or its blades are quenched) in its last minutes,
/// by the same hands; a quench tank with volume, band and time constant is not taken above its band
/// (domain/kiln/ plan_bath.h); a blade that is out of the shop is back at the end of the day it is
/// due. What the maker keeps in place although it breaks a rule stands: the rule is eased for it
/// (the maker stays late, the blade waits longer).
struct ShopCase {
  Instant origin;  ///< minute 0
  kiln::PlanCase a_case;
  struct Chain {
    blade::BladeId blade;
    std::vector<blade::RouteStepId> steps;  ///< by operation of the case
    std::vector<std::string> names;         ///< "temper", by operation of the case
  };
  std::map<std::string, Chain> chains;        ///< by blade id of the case: its number
  std::map<std::string, kiln::KilnId> kilns;  ///< by kiln id of the case: its name
  std::map<std::string, kiln::Kiln> models;   ///< likewise: its own values
  /// A booked firing that a new plan may move.
  struct Movable {
    kiln::KeptFiring firing;
    std::string kiln;
    std::optional<kiln::PlanFiring> planned;  ///< with the blades that still need it; empty: none
    std::vector<std::string> gone;            ///< sentences: who was in it and why no longer
    std::string cannot;                       ///< why it cannot stay; empty while it can
  };
  std::vector<Movable> movable;
  std::vector<std::int64_t> locked_numbers;  ///< of the locked firings, in their order
  std::int64_t moved_mc = 0;                 ///< what the maker says a move costs
  std::vector<std::string> left_aside;       ///< sentences: blades that cannot be planned yet
  std::vector<std::string> plate_kilns;      ///< kilns planned by their plate values
  Zone zone;
  TemperatureUnit unit = TemperatureUnit::celsius;
  Instant at(int minute) const { return origin + std::chrono::minutes(minute); }
  int minute(Instant at) const;
  /// What is booked, for planning around it.
  kiln::BookedPlan booked() const;
  /// Minutes and degrees as this shop writes them.
  kiln::PlanWords words() const;
};

/// Which booked firings the case holds as locked.
enum class Keep { locked_only, all_booked };

/// The case from a moment on, over so many days.
ShopCase shop_case(const ShopFile& shop, Instant from, Keep keep, int days = 14);

/// A firing of a plan as the shop stores it. Its number is not given yet.
kiln::Firing as_firing(const ShopCase& from, const kiln::PlanFiring& planned,
                       const kiln::TimedFiring& timed);
/// A stored firing in the integers of the case, with those of its blades that still need it;
/// nothing when none does.
std::optional<kiln::PlanFiring> as_planned(const ShopCase& from, const kiln::KeptFiring& firing);

/// Adds the quench tanks whose figures are known, and which blade goes into which: the one that the
/// step's medium names, by its own name or by what it holds.
void add_baths(const ShopFile& shop, ShopCase& made);
/// Adds what is booked to a case that has its kilns and blades.
void add_booked(const ShopFile& shop, Keep keep, ShopCase& made);

}  // namespace tangmark::db
