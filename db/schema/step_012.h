// SPDX-License-Identifier: MIT
#pragma once

namespace tangmark::db {

extern const char* const step_012;

}  // namespace tangmark::db
