// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "db/listing/blade_rows.h"
#include "db/listing/commission_rows.h"
#include "db/listing/stock_rows.h"
#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// What is done more rarely than the next step: one offer each, its form filled in as far as the
/// thing selected says. Offers that cannot be taken in its state are left out.

/// What a commission waits for, what is out of the shop, and what is reserved for it.
std::vector<Section> waits_of_commission(const Sight& sight, const db::CommissionRow& commission);
Section further_at_commission(const Sight& sight, const db::CommissionRow& commission);
Section further_at_blade(const db::BladeRow& blade);
std::vector<Offer> further_at_lot(const db::LotRow& lot);
std::vector<Offer> further_at_piece(const db::PieceRow& piece);
std::vector<Offer> further_at_billet(const db::BilletRow& billet);

}  // namespace tangmark::desk
