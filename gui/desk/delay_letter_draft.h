// SPDX-License-Identifier: MIT
#pragma once

#include "gui/desk/offer.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// What the form of tell_delay holds already: the letter as drafted, for the maker to edit, and the
/// day met in 80 of 100 runs. What was typed before stays; without a delay nothing is added.
Typed with_letter(const Sight& sight, const Typed& filled);

}  // namespace tangmark::desk
