// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "db/listing/commission_rows.h"
#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// Commissions: from enquiry to aftercare, with the money held for unfinished work always in sight.
PlaceList commissions_list(const Sight& sight);
PlaceView commission_view(const Sight& sight, const std::string& number);

/// What a commission waits for, as the next line says it.
NextLine next_for(const Sight& sight, const db::CommissionRow& commission);
/// "Held for unfinished work: 1 290.00 EUR."
std::string held_words(const Sight& sight);
/// What the buyer still owes; zero before a quote.
Money balance_of(const db::CommissionRow& commission);

}  // namespace tangmark::desk
