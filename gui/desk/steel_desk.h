// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "gui/desk/cut_search.h"
#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// Steel: lots with their pieces, billets, and all that is used up; for one of them what there is,
/// what is promised, and its family in both directions. Ids are "lot 17", "piece 17-2", "billet
/// 31".
PlaceList steel_list(const Sight& sight);
/// `searched` is a cutting plan that was searched for longer, if any.
PlaceView steel_view(const Sight& sight, const std::string& id,
                     const std::optional<SearchedCuts>& searched = std::nullopt);

}  // namespace tangmark::desk
