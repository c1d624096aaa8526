// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "domain/commission/promise_queue.h"
#include "domain/commission/promise_simulation.h"
#include "domain/measure/outcome.h"

namespace tangmark::commission {

/// Where the time of one commission went in one run: seconds, until it was ready.
struct TimeSpent {
  std::int64_t own_work = 0;      ///< bench time of its blades, first time through
  std::int64_t own_again = 0;     ///< bench time of beginning lost blades again
  std::int64_t others_work = 0;   ///< bench time of the other blades meanwhile
  std::int64_t others_again = 0;  ///< the part of it that went into their lost blades
  std::int64_t waits = 0;         ///< calendar time its last blade waited for cures, kilns, post
};

/// The days of many runs.
struct PlayedQueue {
  std::vector<CommissionId> commissions;         ///< in the order of their first blade
  std::vector<std::vector<std::int64_t>> ready;  ///< [commission][run], calendar seconds from now
  std::vector<TimeSpent> followed;               ///< [run], of the commission followed, if any
};

/// Plays the queue `runs.count` times. The queue must have passed `faults_of`.
PlayedQueue play(const PromiseQueue& queue, const BenchCalendar& calendar, Runs runs,
                 std::optional<CommissionId> follow);

/// All that is wrong with a queue or with the runs asked for.
Problems faults_of(const PromiseQueue& queue, Runs runs);

/// The forecast of one commission from its days.
Forecast forecast_of(CommissionId commission, std::vector<std::int64_t> ready,
                     const PromiseQueue& queue, const BenchCalendar& calendar);

}  // namespace tangmark::commission
