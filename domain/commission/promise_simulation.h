// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "domain/commission/promise_queue.h"
#include "domain/measure/outcome.h"

namespace tangmark::commission {

/// How often the queue is played through, and the seed of chance. The same seed and runs give the
/// same answer.
struct Runs {
  int count = 1000;
  std::uint64_t seed = 1;
};

/// When a commission is ready: its last blade has passed its last operation and its last wait.
struct Forecast {
  CommissionId commission;
  Instant at50, at80, at95;     ///< the instants met in 50, 80 and 95 of 100 runs
  CalendarDate p50, p80, p95;   ///< their days in the shop's zone
  std::optional<CalendarDate> promised;
  double late_part = 0;         ///< part of the runs that end after the promised day
  int days_late = 0;            ///< days the 80 % date lies after the promised day; 0 when not late
  friend bool operator==(const Forecast&, const Forecast&) = default;
};

/// Plays the queue through many times. Assumptions:
/// - one maker, one thing at a time, each operation worked to its end; whenever one ends, the maker
///   takes the first blade of the queue that is ready, so waits are filled with other work;
/// - bench hours of the week as given; nothing is done on days off; waits run day and night;
/// - times of operations are independent of each other but for the shop's pace;
/// - a blade lost at an operation has cost its time and begins again from its first steel work;
/// - each blade's luck comes from its own key, so that two queues differ only by what was changed.
/// Commissions come in the order of their first blade.
/// Refuses a week without bench hours, no runs or more than 100,000, a survival below 5 % or above
/// 100 %, and positions outside a route.
Outcome<std::vector<Forecast>> forecast(const PromiseQueue& queue, Runs runs);

}  // namespace tangmark::commission
