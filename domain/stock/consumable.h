// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/blade/blade_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/share.h"
#include "domain/measure/when.h"
#include "domain/stock/lot.h"
#include "domain/stock/stock_id.h"

namespace tangmark::stock {

/// Use of a consumable lot: a belt binned, gas weighed, etchant poured.
struct ConsumableUse {
  LotId lot;
  Instant at{};
  Share quantity{};  ///< in the lot's unit, in millionths
  std::optional<blade::BladeId> blade{};
  std::optional<BilletId> billet{};  ///< gas, flux, can of its making; not with a blade
  std::optional<std::string> note{};
  friend bool operator==(const ConsumableUse&, const ConsumableUse&) = default;
};
using KeptConsumableUse = Kept<ConsumableUse, ConsumableUseId>;

/// What is left of one kind of consumable over all its lots, against the least to keep.
struct ConsumableLevel {
  LotKind kind = LotKind::other;
  std::string name{};
  std::string unit{};
  Share bought{}, used{}, left{};
  std::optional<Share> floor{};                ///< the highest floor of its lots
  std::optional<CalendarDate> expires_next{};  ///< of the lots with something left
  bool below_floor() const { return floor && left < *floor; }
  friend bool operator==(const ConsumableLevel&, const ConsumableLevel&) = default;
};

}  // namespace tangmark::stock
