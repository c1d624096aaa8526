// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade.h"

namespace tangmark::db {

/// What another blade shares with one that came out wrong.
struct Sibling {
  blade::KeptBlade blade;
  std::string shares;  ///< "firing 12", "medium oil, same week", "lot 3", "billet 2"
};

/// Blades that were in a firing with this one, were quenched in the same bath within a week of it
/// (a filling changes slowly; common practice, no source), or came from the same lot or billet. A
/// blade that shares several things is there once for each.
std::vector<Sibling> siblings_of(const ShopFile& shop, const blade::KeptBlade& blade);

}  // namespace tangmark::db
