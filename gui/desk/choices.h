// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "db/actions/action.h"
#include "gui/desk/form.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// What a field may refer to in this shop: blades still here, pieces on hand, kilns in use ... None
/// for a field that refers to nothing, or to so many that a number is typed faster than chosen.
std::vector<Choice> choices_of(db::FieldKind kind, const Sight& sight);

}  // namespace tangmark::desk
