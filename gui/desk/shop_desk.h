// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// Shop: settings, kilns and baths, bench hours, models, customers, and keeping the file safe. Ids
/// are the names of its chapters: "settings", "hours", "kilns", "models", "customers", "file".
PlaceList shop_list(const Sight& sight);
PlaceView shop_view(const Sight& sight, const std::string& id);

}  // namespace tangmark::desk
