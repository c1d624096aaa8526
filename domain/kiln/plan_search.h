// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "domain/kiln/plan_case.h"

namespace tangmark::kiln {

/// How far a search has come.
struct SearchProgress {
  std::int64_t iterations = 0;
  std::int64_t best_mc = 0;    ///< cost of the best plan so far
  std::int64_t bound_mc = 0;   ///< no plan costs less
  int unplaced = 0;            ///< blades not yet in the plan
};

/// How minutes of the plan and degrees C are written in sentences. Empty: "day 2, 09:30 from the
/// plan's start" and "805 C"; a shop writes "Fri 27 Nov, 09:30" and its own degrees.
struct PlanWords {
  std::function<std::string(int minute)> minute;
  std::function<std::string(int celsius)> degrees;
};

/// How long to search. With `iterations` the same seed gives the same plan on every machine, unless
/// time runs out first. With neither, only the first plan is made.
struct SearchLimits {
  /// The share of the allowed time that is used up, from 0 to 1; the search ends at 1. The domain
  /// has no clock: the caller measures. Called every few hundred steps, on the searching thread;
  /// also the way to stop a search early. Empty: no limit of time.
  std::function<double()> time_used;
  std::int64_t iterations = 0;  ///< steps of the search; 0: no limit of steps
  /// Called on the searching thread when a better plan was found, at most a few times a second.
  std::function<void(const SearchProgress&)> progress;
  bool reasons = true;  ///< false: blades that find no place are named, without why
  PlanWords words;      ///< for the sentences about them
};

/// A blade that is not in the plan, and why.
struct Unplaced {
  std::string blade;
  int operation = 0;   ///< the first operation that finds no place, from 0
  int rule = 0;        ///< as in plan_check.h
  std::string why;     ///< a plain sentence
  std::string change;  ///< the nearest change that would free it
};

struct PlanAnswer {
  FiringPlan plan;                 ///< keeps every rule, always
  PlanCost cost;                   ///< of the blades that are in the plan
  std::int64_t bound_mc = 0;       ///< no plan of these blades costs less
  std::vector<Unplaced> unplaced;  ///< empty: every blade is in the plan
  std::int64_t iterations = 0;     ///< steps made
  bool proven = false;             ///< the cost equals the bound
};

/// Plans the firings of a case: decides which operations share a firing, where, when and how hot,
/// so that late blades, electricity and the maker's hands together cost little. Blades that cannot
/// be placed are left out and explained. Needs a case that read_plan_case would accept.
PlanAnswer plan_firings(const PlanCase& a_case, const SearchLimits& limits, std::uint64_t seed);

}  // namespace tangmark::kiln
