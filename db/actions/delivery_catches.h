// SPDX-License-Identifier: MIT
#pragma once

#include "db/actions/work.h"
#include "domain/commission/commission.h"

namespace tangmark::db {

/// What is caught when a commission is about to leave the shop: a blade in a hard state or
/// with an open finding (8, 9, 17), balance unpaid (20), a customer's remainder still here (25), a
/// watched species going abroad (18).
Catches catches_at_delivery(Work& work, const commission::KeptCommission& commission);

/// Why a commission cannot leave: a blade of it is not finished, an item has no blade, work is
/// still out of the shop.
Problems problems_at_delivery(Work& work, const commission::KeptCommission& commission);

}  // namespace tangmark::db
