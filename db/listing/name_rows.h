// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "db/shop_file.h"

namespace tangmark::db {

/// Something a form may refer to: how it is called, and words to tell it from the others.
struct NamedRow {
  std::string name;
  std::string words;
};
std::vector<NamedRow> bath_names(const ShopFile& shop);
std::vector<NamedRow> model_names(const ShopFile& shop);
std::vector<NamedRow> customer_names(const ShopFile& shop);
std::vector<NamedRow> item_names(const ShopFile& shop);         ///< neither delivered nor cancelled
std::vector<NamedRow> finding_names(const ShopFile& shop);      ///< open ones first
std::vector<NamedRow> certificate_names(const ShopFile& shop);

}  // namespace tangmark::db
