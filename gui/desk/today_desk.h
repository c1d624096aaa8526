// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// Today: what needs hands, the most urgent first. Quenched blades that wait for their temper, with
/// the clock running; firings to load and to empty; findings not decided; promises at risk;
/// deposits and balances awaited; stock below its floor.
PlaceList today_list(const Sight& sight);
PlaceView today_view(const Sight& sight, const std::string& id);

}  // namespace tangmark::desk
