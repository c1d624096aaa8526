// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

namespace tangmark::db {

/// Marks a file as a shop file ("Tang" in ASCII) in SQLite's application_id.
inline constexpr int shop_application_id = 0x54616e67;

/// SQL of every schema step in order; step n brings a file from user_version n-1 to n.
std::span<const char* const> schema_steps();

}  // namespace tangmark::db
