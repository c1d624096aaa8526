// SPDX-License-Identifier: MIT
#pragma once

#include "db/shop_file.h"
#include "domain/commission/refund_terms.h"

namespace tangmark::db {

/// What goes back to a buyer who withdraws, as a commission freezes it when nothing else is agreed:
/// less the material used, until the shop says otherwise.
commission::RefundTerms usual_refund_terms(const ShopFile& shop);
void store_usual_refund_terms(const ShopFile& shop, commission::RefundTerms terms);

}  // namespace tangmark::db
