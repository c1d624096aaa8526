// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// Certificates: every blade that has one or may get one; for one of them the page as it would be
/// printed, each sentence with its evidence, and what is missing, in words. Ids are blade numbers.
PlaceList certificates_list(const Sight& sight);
PlaceView certificate_view(const Sight& sight, const std::string& blade_number);

}  // namespace tangmark::desk
