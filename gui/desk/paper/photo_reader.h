// SPDX-License-Identifier: MIT
#pragma once

namespace tangmark::desk {

/// Hands the actions the reader of photographs. Called once at the start of each program.
void lend_photo_reader();

}  // namespace tangmark::desk
