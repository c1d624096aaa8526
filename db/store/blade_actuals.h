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
  Money used_up;   ///< what was noted as used for it, at what the lots cost; else the belts binned
                   ///< by its log, at the price of the newest lot
  Money energy;    ///< its slots of its firings, and gas noted for it or weighed by its log
  Money outside;   ///< work done elsewhere
  Money overhead;  ///< of the paid hours
  Money selling;   ///< its part of box, post and payment fee, as the accepted quote counted them
  Money lost;      ///< all that went into blades scrapped for the same item at the job's cost
  std::optional<Money> price;  ///< without tax, of the accepted quote; none for a stock knife
  std::optional<Money> earned_per_hour;  ///< (price - all but own labour) / paid hours
  Money cost_but_labour() const {
    return steel + used_up + energy + outside + overhead + selling + lost;
  }
};

/// Amounts that were paid in another currency than the shop's are left out.
BladeActuals actuals_of(const ShopFile& shop, blade::BladeId blade,
                        const commission::ShopSettings& settings);
/// The newest finished blades of a model, newest first.
std::vector<BladeActuals> latest_actuals(const ShopFile& shop, commission::ModelId model, int most,
                                         const commission::ShopSettings& settings);

}  // namespace tangmark::db
