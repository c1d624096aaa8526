// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "db/shop_file.h"

namespace tangmark::db {

/// Copies the whole shop file as it is at this moment, while other windows go on. The copy stands
/// alone. Refuses a path where something already is.
Outcome<Done> back_up(const ShopFile& shop, const std::filesystem::path& copy);

/// Puts a backup back as a new file. Refuses a backup that is no sound shop file, and a path where
/// something already is: the maker moves the old file away first.
Outcome<Done> restore(const std::filesystem::path& backup, const std::filesystem::path& file,
                      Instant now);

/// Saves what can still be read of a damaged file, table by table, as comma separated tables into a
/// new folder. The damaged file stays untouched. Returns one sentence for each table.
Outcome<std::vector<std::string>> rescue(const std::filesystem::path& damaged,
                                         const std::filesystem::path& folder);

}  // namespace tangmark::db
