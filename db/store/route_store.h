// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade.h"

namespace tangmark::db {

/// The planned operations of a blade, in their order.
std::vector<blade::KeptRouteStep> route_of(const ShopFile& shop, blade::BladeId blade);
std::optional<blade::KeptRouteStep> route_step_at(const ShopFile& shop, blade::BladeId blade,
                                                  std::int64_t position);
/// The first open step of this operation, or nothing.
std::optional<blade::KeptRouteStep> open_step(const ShopFile& shop, blade::BladeId blade,
                                              std::string_view operation);

blade::RouteStepId insert_route_step(const ShopFile& shop, const blade::RouteStep& step);
/// Ticks a step, or opens it again with nothing.
void store_step_done(const ShopFile& shop, blade::RouteStepId step, std::optional<Instant> done_at);
void store_step_skipped(const ShopFile& shop, blade::RouteStepId step, const std::string& why);
/// Moves the steps from this position on by one, so that there is room for a new one.
void make_room_on_route(const ShopFile& shop, blade::BladeId blade, std::int64_t position);

}  // namespace tangmark::db
