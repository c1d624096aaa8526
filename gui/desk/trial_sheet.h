// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// A trial: its question, what it shows so far with n and plain words, the next blade, and the plot
/// as the very page that would be printed.
PlaceView trial_view(const Sight& sight, const std::string& number);

}  // namespace tangmark::desk
