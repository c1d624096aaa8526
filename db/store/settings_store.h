// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/shop_settings.h"

namespace tangmark::db {

/// One setting as a form shows it.
struct SettingText {
  std::string_view name;   ///< "hourly_rate"
  std::string_view label;  ///< "Your rate per hour"
  std::string value;       ///< as it would be typed
};

/// The shop's settings; what was never set has its default in the shop's currency.
commission::ShopSettings load_settings(const ShopFile& shop);
/// All settings with their present values, in the order a form shows them.
std::vector<SettingText> settings_as_text(const commission::ShopSettings& settings);
/// The settings with one of them read anew from text; refuses an unknown name or a bad value.
Outcome<commission::ShopSettings> with_setting(commission::ShopSettings settings,
                                               std::string_view name, std::string_view value);
/// Stores all settings. Call inside an action.
void store_settings(const ShopFile& shop, const commission::ShopSettings& settings);

}  // namespace tangmark::db
