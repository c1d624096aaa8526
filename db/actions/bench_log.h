// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "db/actions/work.h"
#include "db/store/blade_state.h"
#include "domain/blade/log_entry.h"

namespace tangmark::db {

/// Writes one line into a blade's bench log, the only way anything gets there: what an operation
/// must not do is caught first (6, 8, 9, 10, 13, 23, 24), then the route step is ticked, and a heat
/// that undoes the hardening opens its tempers and voids its readings again (12).
///
/// The entry needs its blade, operation and times. When it was typed, how it was timed, which open
/// step it ticks and the number of a temper are filled in here. Nothing when it was refused; then
/// work.problems() says why.
std::optional<blade::LogEntryId> write_log(Work& work, const blade::KeptBlade& blade,
                                           blade::LogEntry entry);

/// What is caught before an entry is written, without the writing.
Catches catches_of_entry(const Work& work, const BladeOnRecord& record,
                         const blade::LogEntry& entry);

}  // namespace tangmark::db
