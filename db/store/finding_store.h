// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/finding.h"
#include "domain/measure/outcome.h"

namespace tangmark::db {

/// Every finding of a blade, oldest first.
std::vector<blade::KeptFinding> findings_of(const ShopFile& shop, blade::BladeId blade);
std::optional<blade::KeptFinding> find_finding(const ShopFile& shop, std::int64_t number);
/// The finding whose number was typed into `field`; refuses one that is not in the shop.
Outcome<blade::KeptFinding> finding_named(const ShopFile& shop, std::string_view text,
                                          std::string_view field);
blade::FindingId insert_finding(const ShopFile& shop, const blade::Finding& finding);
/// Stores every field anew. The number and the blade must be the ones it has.
void store_finding(const ShopFile& shop, const blade::KeptFinding& finding);

}  // namespace tangmark::db
