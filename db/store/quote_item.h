// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/item.h"
#include "domain/commission/model.h"
#include "domain/commission/shop_settings.h"
#include "domain/costing/cost_inputs.h"

namespace tangmark::db {

/// One item as the costing sees it.
struct ItemCosts {
  costing::CostedItem item;
  Money packing;  ///< of its own, beside the shop's usual box
  std::vector<std::string> assumptions;
};

/// Refuses an item with neither a model nor a blade that has a route: its hours are not known.
Outcome<ItemCosts> costed_item(const ShopFile& shop, const commission::KeptItem& item,
                               const commission::ShopSettings& settings);

/// The route an item will take: its blade's own, else its model's. Empty when there is neither.
std::vector<commission::ModelStep> route_of_item(const ShopFile& shop,
                                                 const commission::KeptItem& item);

/// The steel line of an item: a reserved piece of a billet made here, or the blank's mass from the
/// newest lot of its grade. None, and a sentence in `assumptions`, when neither is on record.
std::optional<costing::Ingredient> steel_of_item(const ShopFile& shop,
                                                 const commission::KeptItem& item,
                                                 const std::optional<commission::KeptModel>& model,
                                                 const commission::ShopSettings& settings,
                                                 std::vector<std::string>& assumptions);

/// One blade's part of the firing a step needs, by the first kiln that can hold its temperature (an
/// oven before a kiln). None when no kiln can; said in `assumptions`. Its minutes count only when
/// the step itself states no time.
std::optional<costing::FiringPart> firing_of_step(const ShopFile& shop,
                                                  const commission::ModelStep& step,
                                                  const commission::ShopSettings& settings,
                                                  std::vector<std::string>& assumptions);

/// Hours on record of one operation of finished blades of a model, one figure for each blade.
std::vector<double> hours_on_record(const ShopFile& shop, commission::ModelId model,
                                    std::string_view operation);

}  // namespace tangmark::db
