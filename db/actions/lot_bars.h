// SPDX-License-Identifier: MIT
#pragma once

#include "db/actions/form.h"
#include "db/shop_file.h"
#include "domain/stock/lot.h"

namespace tangmark::db {

/// Adds to the form what a lot of steel lacks to become bars: a section with its sizes, or a mass
/// for lumps of no section. The weighed mass must agree with the sizes within a quarter (mill
/// tolerance and scale are a few per cent; a quarter is a slip of the pen; common practice, no
/// source).
void check_bars(Form& form, const stock::Lot& lot);

/// Makes the bars of a received lot: tags "17-1", "17-2"... carrying the mark when there is one on
/// them, tagged otherwise. A weighed mass is split over the bars to the microgram.
void insert_bars(const ShopFile& shop, const stock::KeptLot& lot);

}  // namespace tangmark::db
