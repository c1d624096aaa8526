// SPDX-License-Identifier: MIT
#pragma once

#include "gui/desk/sheet.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// The promises given, with their odds and their history, and a drafted letter to whom it concerns.
Sheet promises_sheet(const Sight& sight);
/// What the record would change in the models, each taken by one press; nothing changes before.
Sheet learning_sheet(const Sight& sight);
/// The year's totals, money held, what lies on the rack by age, rates of exchange, and what to buy.
Sheet money_sheet(const Sight& sight);
Sheet buying_sheet(const Sight& sight);

}  // namespace tangmark::desk
