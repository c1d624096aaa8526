// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "db/listing/blade_rows.h"
#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// Blades: every blade of the shop, and for one of them its life on one line, its log, findings and
/// readings, with the next step of its route ready to be logged.
PlaceList blades_list(const Sight& sight);
PlaceView blade_view(const Sight& sight, const std::string& number);

/// Where a blade stands, in words: "quenched, not tempered, since 55 min".
std::string standing(const Sight& sight, const db::BladeRow& blade);
/// Whether it is held warm since its last quench or temper: in the oven now, by the log.
bool in_the_oven(const db::BladeRow& blade);
/// When it may come out of the oven by its route; none when the route says no time.
std::optional<Instant> out_of_the_oven(const db::BladeRow& blade);
/// The offer of the next temper: put it in, at one press; or, when it is in, log what it had.
Offer temper_offer(const Sight& sight, const db::BladeRow& blade);
/// What would be filled in to log the next step: the operation and what the route says of it.
Typed next_step_filled(const db::BladeRow& blade);
/// The action that logs an operation: quench, temper and hardness have forms of their own.
std::string log_action_for(const std::string& operation);

}  // namespace tangmark::desk
