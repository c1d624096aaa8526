// SPDX-License-Identifier: MIT
#pragma once

namespace tangmark::db {

extern const char* const step_011;

}  // namespace tangmark::db
