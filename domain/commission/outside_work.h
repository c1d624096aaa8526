// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/blade/blade_id.h"
#include "domain/commission/commission_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/money.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

/// Work sent out of the shop; named on the certificate as such.
struct OutsideWork {
  std::optional<ItemId> item{};
  std::optional<blade::BladeId> blade{};
  std::string operation{};  ///< "sheath", "engraving", "harden"
  std::string who{};
  Instant sent_at{};
  std::optional<CalendarDate> due_back{};
  std::optional<Instant> back_at{};
  std::optional<std::string> their_words{};  ///< from their slip
  std::optional<Money> cost{};
  friend bool operator==(const OutsideWork&, const OutsideWork&) = default;
};
using KeptOutsideWork = Kept<OutsideWork, OutsideWorkId>;

}  // namespace tangmark::commission
