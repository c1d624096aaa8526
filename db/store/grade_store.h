// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "db/shop_file.h"
#include "domain/steel/grade.h"

namespace tangmark::db {

/// The published grades together with those this shop entered, which stand first, each with the
/// windows and temper tables that the shop entered for it.
steel::GradeBook grade_book(const ShopFile& shop);

/// Keeps a window of a grade; one of the same step that the shop entered before is withdrawn.
void store_own_window(const ShopFile& shop, const std::string& grade,
                      const steel::HeatTreatWindow& window, Instant at);
/// Whether there was such a window to withdraw.
bool withdraw_own_window(const ShopFile& shop, const std::string& grade,
                         std::string_view operation, Instant at);

/// Keeps a temper table of a grade, its rows as typed; one of the same source that the shop entered
/// before is withdrawn.
void store_own_temper_table(const ShopFile& shop, const std::string& grade,
                            const steel::TemperTable& table, const std::string& rows, Instant at);
/// Whether there was such a table to withdraw.
bool withdraw_own_temper_table(const ShopFile& shop, const std::string& grade,
                               const std::string& source, Instant at);

}  // namespace tangmark::db
