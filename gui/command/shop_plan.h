// SPDX-License-Identifier: MIT
#pragma once

#include "gui/command/word.h"

namespace tangmark::command {

/// `plan FILE`: plans the shop's own kilns, shows what that changes and why, and books it when
/// asked.
Exit plan_shop(const Call& call);

}  // namespace tangmark::command
