// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/id.h"

namespace tangmark::kiln {

using KilnId = Id<struct KilnTag>;
using RecipeId = Id<struct RecipeTag>;
using FiringId = Id<struct FiringTag>;
using RecordId = Id<struct RecordTag>;

}  // namespace tangmark::kiln
