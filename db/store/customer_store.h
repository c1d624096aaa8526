// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/customer.h"

namespace tangmark::db {

std::optional<commission::KeptCustomer> load_customer(const ShopFile& shop,
                                                      commission::CustomerId id);
/// Customers of exactly this name, case not counting.
std::vector<commission::KeptCustomer> customers_named(const ShopFile& shop, std::string_view name);
/// All customers, the newest first.
std::vector<commission::KeptCustomer> list_customers(const ShopFile& shop);
commission::CustomerId insert_customer(const ShopFile& shop, const commission::Customer& customer);
/// Drops name, contact, address, note and the salt: nothing is left in the file or its history that
/// tells who it was, and the history chain stays whole.
void erase_person(const ShopFile& shop, commission::CustomerId id, Instant at);

}  // namespace tangmark::db
