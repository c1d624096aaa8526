// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>

#include "db/actions/action.h"
#include "db/shop_file.h"

namespace tangmark::db {

/// Begins a shop in a new file with its first settings (shop_name, zone, currency and others that
/// change_setting knows). When one is refused no file is left, and the problem names the setting. A
/// path where something already is stays untouched and is refused.
Outcome<ShopFile> begin_shop(const std::filesystem::path& path, const Given& settings, Instant now);

/// Takes away a shop that was not begun whole: the file and what SQLite keeps beside it. The shop
/// must be closed.
void remove_shop_files(const std::filesystem::path& path);

}  // namespace tangmark::db
