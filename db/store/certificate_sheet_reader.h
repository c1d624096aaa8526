// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "db/shop_file.h"
#include "domain/certificate/certificate_sheet.h"

namespace tangmark::db {

/// What the shop itself gives to a certificate: its paper and how it is reached. Number and day are
/// the issue's.
certificate::IssueFacts issue_facts(const ShopFile& shop);

/// The JPEG of the newest picture of the blade, which the page shows; empty without one.
std::string shown_photo(const ShopFile& shop, const certificate::Dossier& dossier);

}  // namespace tangmark::db
