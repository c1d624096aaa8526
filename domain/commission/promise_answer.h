// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/commission/promise_simulation.h"

namespace tangmark::commission {

/// A commission whose 80 % date moves later because of the one asked about.
struct Harm {
  CommissionId commission;
  CalendarDate before, after;  ///< its 80 % date without and with the commission asked about
  std::optional<CalendarDate> promised;
  bool breaks_promise = false;  ///< the promise held before and does not after
  friend bool operator==(const Harm&, const Harm&) = default;
};

enum class LateCause { own_work, own_losses, others_work, others_losses, waits };
/// "its own hours run over", "a blade of it is lost and begun again", ...
std::string_view sentence(LateCause cause);

/// How often each cause was the largest in the late runs.
struct LateShare {
  LateCause cause = LateCause::own_work;
  double part = 0;  ///< of the late runs
  friend bool operator==(const LateShare&, const LateShare&) = default;
};

struct PromiseAnswer {
  Forecast forecast;
  std::vector<Harm> harmed;       ///< in the order of the queue
  std::vector<LateShare> causes;  ///< most frequent first, none that never came first
  friend bool operator==(const PromiseAnswer&, const PromiseAnswer&) = default;
};

/// The honest answer to "when can I have it": the queue as given, with the commission's blades
/// where they would be worked on (last for an ordinary acceptance, further up for a rush), is
/// played with and without them, with the same luck for every other blade. Late runs are the fifth
/// that ends after the 80 % date; a run's cause is what exceeded its own median by the most
/// calendar time, bench time being counted at the week's average. Refuses what `forecast` refuses,
/// and a commission that has no blade in the queue.
Outcome<PromiseAnswer> promise_answer(const PromiseQueue& queue, CommissionId commission,
                                      Runs runs);

}  // namespace tangmark::commission
