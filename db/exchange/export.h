// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "db/shop_file.h"

namespace tangmark::db {

/// Writes everything a shop file holds as open formats into a folder that must not exist or be
/// empty: one table NAME.csv each (RFC 4180, column names in the first record), photos, documents
/// and kiln records as files of their own, all of it again as shop.json, and contents.csv naming
/// each file with its SHA-256.
///
/// In a table an empty cell is "none"; an empty text where none is possible too is a single
/// backslash, and a text that begins with a backslash gets another before it.
Outcome<Done> export_shop(const ShopFile& shop, const std::filesystem::path& folder);

/// Makes a new shop file from such a folder; exporting that gives the same bytes again. Refuses a
/// folder whose tables do not fit, naming file and line, and then leaves no file behind. Sentences
/// returned are breaks of the history chain, if a table was edited on the way.
Outcome<std::vector<std::string>> import_shop(const std::filesystem::path& folder,
                                              const std::filesystem::path& new_file, Instant now);

}  // namespace tangmark::db
