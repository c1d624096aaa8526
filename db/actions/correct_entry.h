// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "db/actions/work.h"
#include "domain/blade/log_entry.h"

namespace tangmark::db {

/// Writes a new entry that takes the place of one, with one field set right; the old one stays in
/// the log, superseded. The field "all" strikes the entry out and opens its step again. The id of
/// the new entry, or why it does not read.
Outcome<blade::LogEntryId> correct_log_entry(Work& work, const blade::KeptLogEntry& entry,
                                             std::string_view field, const std::string& value,
                                             const std::string& reason);

/// The fields of a log entry that may be corrected, as "a, b, c".
std::string correctable_entry_fields();

}  // namespace tangmark::db
