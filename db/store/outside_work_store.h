// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/aftercare.h"
#include "domain/commission/outside_work.h"

namespace tangmark::db {

std::optional<commission::KeptOutsideWork> load_outside_work(const ShopFile& shop,
                                                             commission::OutsideWorkId id);
/// Work that is out of the shop now, what is due first at the head.
std::vector<commission::KeptOutsideWork> outside_now(const ShopFile& shop);
std::vector<commission::KeptOutsideWork> outside_work_of_item(const ShopFile& shop,
                                                              commission::ItemId item);
std::vector<commission::KeptOutsideWork> outside_work_of_blade(const ShopFile& shop,
                                                               blade::BladeId blade);
commission::OutsideWorkId insert_outside_work(const ShopFile& shop,
                                              const commission::OutsideWork& work);
void store_outside_work(const ShopFile& shop, const commission::KeptOutsideWork& work);

/// Returns, re-sharpening and warranty of a blade, oldest first.
std::vector<commission::KeptAftercare> aftercare_of_blade(const ShopFile& shop,
                                                          blade::BladeId blade);
commission::AftercareId insert_aftercare(const ShopFile& shop,
                                         const commission::Aftercare& aftercare);

}  // namespace tangmark::db
