// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/commission/commission_id.h"
#include "domain/commission/shop_settings.h"
#include "domain/measure/money.h"

namespace tangmark::db {

/// What a finished blade really cost, as far as it is on record, and what it earned.
struct BladeActuals {
  blade::BladeId id;
  std::int64_t number;
  std::string title;
  Duration hands_on{}, attended{};  ///< of the bench log, corrections applied; aftercare counts in
  Money steel;                      ///< mass taken from the rack at what its lots cost
  Money used_up;  ///< belts and the like noted for this blade, at what their lots cost
  Money energy;   ///< its slots of its firings, at today's price of electricity
  Money outside;  ///< work done elsewhere
  Money lost;     ///< hands-on hours of blades scrapped for the same item, at the shop's rate
  std::optional<Money> price;  ///< without tax, of the accepted quote; none for a stock knife
  std::optional<Money> earned_per_hour;  ///< (price - all but own labour) / paid hours
  Money cost_but_labour() const { return steel + used_up + energy + outside + lost; }
};

/// Amounts that were paid in another currency than the shop's are left out.
BladeActuals actuals_of(const ShopFile& shop, blade::BladeId blade,
                        const commission::ShopSettings& settings);
/// The newest finished blades of a model, newest first.
std::vector<BladeActuals> latest_actuals(const ShopFile& shop, commission::ModelId model, int most,
                                         const commission::ShopSettings& settings);

}  // namespace tangmark::db
