// SPDX-License-Identifier: MIT
#pragma once

#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// The shop's keys, what a lost or changed one means, and what can be done with them.
Sheet seal_sheet(const Sight& sight);

}  // namespace tangmark::desk
