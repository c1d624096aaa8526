// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/hardness.h"

namespace tangmark::db {

/// Every hardness reading of a blade, void ones too, in the order they were taken.
std::vector<blade::KeptReading> readings_of(const ShopFile& shop, blade::BladeId blade);
std::optional<blade::KeptReading> load_reading(const ShopFile& shop, blade::ReadingId id);
blade::ReadingId insert_reading(const ShopFile& shop, const blade::HardnessReading& reading);
void store_reading_void(const ShopFile& shop, blade::ReadingId id, const std::string& why);

}  // namespace tangmark::db
