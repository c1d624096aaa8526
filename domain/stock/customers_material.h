// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "domain/commission/commission_id.h"
#include "domain/measure/caught.h"
#include "domain/measure/mass.h"

namespace tangmark::stock {

/// Catch 25: a customer's own material is not the maker's stock. Using it for anybody else is
/// refused. `job_customer` is none for a stock knife.
Catch customers_material_elsewhere(std::optional<commission::CustomerId> owner,
                                   std::optional<commission::CustomerId> job_customer,
                                   std::string_view tag);

/// Catch 25, at delivery: what is left of the customer's material has been neither given back nor
/// accounted for. Asks, since a customer may leave it with the shop.
Catch remainder_not_returned(std::string_view lot, Mass left, MassUnit shown_in);

}  // namespace tangmark::stock
