// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/log_entry.h"

namespace tangmark::db {

/// The entries of a blade's log that count, corrections applied, in the order of the work. An entry
/// that was struck out is superseded by one whose operation is "struck out", and neither counts.
std::vector<blade::KeptLogEntry> log_of(const ShopFile& shop, blade::BladeId blade);
/// Every entry ever made, superseded ones too, in the order of the work.
std::vector<blade::KeptLogEntry> whole_log_of(const ShopFile& shop, blade::BladeId blade);
/// Entries of all blades that one firing made, corrections applied.
std::vector<blade::KeptLogEntry> log_of_firing(const ShopFile& shop, kiln::FiringId firing);
std::optional<blade::KeptLogEntry> load_log_entry(const ShopFile& shop, blade::LogEntryId id);
/// Whether a correction stands in place of this entry.
bool is_superseded(const ShopFile& shop, blade::LogEntryId id);
/// When the newest entry of a blade was typed in; nothing in an empty log.
std::optional<Instant> newest_entry_typed_at(const ShopFile& shop, blade::BladeId blade);

/// Appends an entry; there is no way to change one.
blade::LogEntryId insert_log_entry(const ShopFile& shop, const blade::LogEntry& entry);

}  // namespace tangmark::db
