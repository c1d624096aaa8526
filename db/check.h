// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "db/shop_file.h"

namespace tangmark::db {

/// What was looked at and what is wrong with it.
struct CheckReport {
  std::vector<std::string> looked_at;  ///< "History: 1,204 changes follow one another unbroken."
  std::vector<std::string> wrong;      ///< one sentence each; empty for a sound shop
};

/// Looks at the file's soundness, the history chain, and the balances of money and stock.
CheckReport check_shop(const ShopFile& shop);

}  // namespace tangmark::db
