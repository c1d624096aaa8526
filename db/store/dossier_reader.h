// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/certificate/dossier.h"

namespace tangmark::db {

/// Everything the shop's record says about one blade, gathered from all its tables. Decides
/// nothing: what may be said of it is the certificate room's affair. Refuses an unknown blade
/// number.
Outcome<certificate::Dossier> read_dossier(const ShopFile& shop, std::string_view blade_number);

}  // namespace tangmark::db
