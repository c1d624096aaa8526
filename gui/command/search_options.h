// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "domain/kiln/plan_search.h"
#include "domain/measure/outcome.h"
#include "gui/command/word.h"

namespace tangmark::command {

/// The whole process is bounded: what starting and writing take is left over.
inline constexpr double kept_back_s = 0.05;

/// --seconds, or what is usual. Refuses what is no number of seconds above zero.
Outcome<double> seconds_of(const Call& call, double usual);

struct Search {
  kiln::SearchLimits limits;
  std::uint64_t seed = 1;
};
/// --seconds, --iterations and --seed; the time runs from now.
Outcome<Search> search_of(const Call& call, double usual_seconds);

}  // namespace tangmark::command
