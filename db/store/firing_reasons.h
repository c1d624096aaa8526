// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "db/store/plan_case.h"
#include "domain/kiln/plan_check.h"
#include "domain/measure/caught.h"

namespace tangmark::db {

/// A broken rule of a plan as the maker would say it, with the shop's own times and degrees: "It
/// needs you from Thu 26 Nov 18:00 until 18:40, and you are not at the bench all that time."
std::string reason_in_words(const ShopCase& from, const kiln::FiringPlan& plan,
                            const kiln::PlanViolation& violation);

/// The catches of broken rules, each with its reason in words.
Catches catches_in_words(const ShopCase& from, const kiln::FiringPlan& plan,
                         const std::vector<kiln::PlanViolation>& violations);

/// Where what is booked breaks a rule, or can no longer be run as booked.
struct BookedConflict {
  std::int64_t firing = 0;
  std::optional<std::pair<Instant, Instant>> span;
  std::string sentence;
};
/// In the order of the firings. `from` is a case with only what is locked held in place; what the
/// maker set aside for a firing kept in place is no conflict any more.
std::vector<BookedConflict> booked_conflicts(const ShopCase& from);

/// What was set aside for a firing and why: "I stay late: Loading ... falls outside your hours."
std::vector<std::string> set_aside_for_firing(const ShopFile& shop, std::int64_t number);

/// One firing beside all that is booked, judged by the rules of a plan.
struct JudgedFiring {
  std::vector<kiln::PlanViolation> violations;  ///< what it would break; not what is broken anyway
  std::vector<std::string> reasons;             ///< the same in words
  kiln::FiringPlan plan;                        ///< the firing is the last of its firings
  std::optional<kiln::Firing> firing;           ///< as it would be stored
};

/// What is already out of order elsewhere (a blade that is late for its own firing) is not held
/// against this one.
JudgedFiring judge_firing(const ShopCase& from, const kiln::PlanFiring& candidate);

}  // namespace tangmark::db
