// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/commission/commission_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

/// What an item waits for: glue, post, wood, the engraver, the buyer's answer.
struct Hold {
  ItemId item;
  std::string what{};
  Instant since{};
  std::optional<CalendarDate> until{};  ///< when it is expected to end
  std::optional<Instant> ended_at{};
  friend bool operator==(const Hold&, const Hold&) = default;
};
using KeptHold = Kept<Hold, HoldId>;

}  // namespace tangmark::commission
