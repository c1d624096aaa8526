// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/commission.h"
#include "domain/commission/contact.h"

namespace tangmark::db {

std::optional<commission::KeptCommission> load_commission(const ShopFile& shop,
                                                          commission::CommissionId id);
std::optional<commission::KeptCommission> find_commission(const ShopFile& shop,
                                                          std::int64_t number);
/// All commissions, the newest first.
std::vector<commission::KeptCommission> list_commissions(const ShopFile& shop);
std::vector<commission::KeptCommission> commissions_of_customer(const ShopFile& shop,
                                                                commission::CustomerId customer);

commission::CommissionId insert_commission(const ShopFile& shop,
                                           const commission::Commission& commission);
/// Stores every field anew. The number and the customer must be the ones it has.
void store_commission(const ShopFile& shop, const commission::KeptCommission& commission);

/// What was said, oldest first.
std::vector<commission::KeptContact> contacts_of(const ShopFile& shop,
                                                 commission::CommissionId commission);
commission::ContactId insert_contact(const ShopFile& shop, const commission::Contact& contact);
/// The day of the latest word between shop and buyer: a contact, a quote sent, a payment, a promise
/// told or a delay notice; at the least the day it was opened.
CalendarDate last_contact_day(const ShopFile& shop, const commission::KeptCommission& commission,
                              const Zone& zone);

}  // namespace tangmark::db
