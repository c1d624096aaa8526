// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "db/shop_file.h"
#include "domain/stock/label_stock.h"

namespace tangmark::db {

/// The sheet of labels that the shop prints on; none when the maker chose none.
std::optional<stock::LabelStock> label_stock(const ShopFile& shop);
void store_label_stock(const ShopFile& shop, const stock::LabelStock& stock);

}  // namespace tangmark::db
