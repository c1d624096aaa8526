// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/measure/outcome.h"

namespace tangmark::desk {

/// Problems are written for every way in and name actions and fields as a terminal knows them. In
/// the window an action is called by the words on its target, and `override` by its field.
Problems in_window_words(Problems problems);
/// The same for what is said after something was done.
std::string in_window_words(std::string sentence);

/// Whether one of them, as in_window_words gives it, may be set aside with a reason.
bool may_be_set_aside(const Problems& problems);

}  // namespace tangmark::desk
