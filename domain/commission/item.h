// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "domain/commission/commission_id.h"
#include "domain/commission/construction.h"
#include "domain/measure/kept.h"
#include "domain/measure/length.h"
#include "domain/measure/money.h"
#include "domain/measure/when.h"
#include "domain/stock/stock_id.h"

namespace tangmark::commission {

/// A knife, usually. One without a commission is a stock knife.
struct Item {
  std::optional<CommissionId> commission{};
  std::int64_t position = 0;  ///< within its commission, or among the stock knives
  std::optional<ModelId> model{};
  std::string title{};
  std::optional<std::string> description{};
  Construction construction = Construction::monosteel;
  std::optional<std::string> grade{};
  Length blade_length{};
  std::optional<std::string> hand{};  ///< of the user, or of the sheath: "left", "right"
  std::optional<std::string> handle{};
  std::optional<stock::LotId> handle_lot{};
  std::optional<std::string> sheath{};
  std::optional<std::string> hardness_aim{};
  bool dishwasher = false;        ///< the buyer wants to wash it in one
  std::optional<Money> asking{};  ///< price fixed by hand
  Currency currency{};
  /// Whether the buyer really specified it; choosing among a maker's options may not count. Matters
  /// for withdrawal from distance sales; the tax or consumer office decides.
  bool made_to_specification = false;
  std::optional<Instant> handle_fitted_at{};
  std::optional<CalendarDate> cancelled_on{};
  friend bool operator==(const Item&, const Item&) = default;
};
using KeptItem = Kept<Item, ItemId>;

/// A numbered change agreed after the specification, with what it adds to the price.
struct ItemChange {
  ItemId item;
  std::int64_t number = 0;  ///< within the item
  Instant at{};
  std::string words{};
  std::optional<Money> price{};
  Currency currency{};
  friend bool operator==(const ItemChange&, const ItemChange&) = default;
};
using KeptItemChange = Kept<ItemChange, ItemChangeId>;

}  // namespace tangmark::commission
