// SPDX-License-Identifier: MIT
#pragma once

#include "db/listing/blade_rows.h"
#include "gui/desk/life_line.h"
#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// All that is known of one blade, and what can be done with it.
Sheet blade_sheet(const Sight& sight, const db::BladeRow& blade);
/// Its life on one line: where it came from, what was logged and found, what the route still plans.
LifeLine life_of(const Sight& sight, const db::BladeRow& blade);
/// The fields that settle the oldest open finding of a blade.
Typed open_finding_filled(const Sight& sight, std::int64_t blade_number);

}  // namespace tangmark::desk
