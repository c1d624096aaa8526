// SPDX-License-Identifier: MIT
#pragma once

#include "db/shop_file.h"
#include "domain/commission/commission.h"
#include "domain/commission/delay_letter.h"
#include "domain/measure/outcome.h"

namespace tangmark::db {

/// The letter for a commission whose promise does not hold: the new day is the one met in 80 of 100
/// runs of the queue. Refuses a commission without a promise, one that is over, and a promise that
/// holds.
Outcome<commission::DelayLetter> delay_letter_of(const ShopFile& shop,
                                                 const commission::KeptCommission& commission,
                                                 Instant now);

}  // namespace tangmark::db
