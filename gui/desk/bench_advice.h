// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "gui/desk/offer.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// What the steel desk says about the step that a bench form is about to log, as the route plans it
/// and as the form is filled: to read before it is done. What is to be heeded stands first, then
/// the rest, then where it can hurt. Empty for other forms and where nothing is to say.
std::string advice_before(const Sight& sight, const std::string& action, const Typed& filled);

}  // namespace tangmark::desk
