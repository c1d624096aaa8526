// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/outcome.h"

namespace tangmark::db {

/// An operation of the trade or of this shop.
struct ShopOperation {
  std::string name;
  bool hot = false;           ///< in a kiln, oven or forge
  bool after_temper = false;  ///< only once the blade has had all its tempers
};

/// The operation of that name, in small or capital letters; refuses one that neither the trade nor
/// the shop knows.
Outcome<ShopOperation> operation_named(const ShopFile& shop, std::string_view text,
                                       std::string_view field);
/// All operations, those of the trade in the order of a job, then the shop's own by name.
std::vector<ShopOperation> all_operations(const ShopFile& shop);

}  // namespace tangmark::db
