// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "db/listing/blade_rows.h"
#include "domain/blade/timer.h"
#include "gui/desk/offer.h"
#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// "Timer 4: rough grind 23 and 24, running, 47 min so far." A forgotten one says so.
std::string timer_words(const Sight& sight, const blade::KeptTimer& timer);
/// Stop, or stop as of the proposed time when it was forgotten; pause or go on; throw away.
std::vector<Offer> timer_offers(const Sight& sight, const blade::KeptTimer& timer);
/// The part of a blade's sheet about its timer: the one it is on, or the offer to start one.
Section timer_section(const Sight& sight, const db::BladeRow& blade);

}  // namespace tangmark::desk
