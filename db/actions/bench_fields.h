// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/actions/form.h"
#include "db/actions/work.h"
#include "domain/blade/blade.h"
#include "domain/blade/log_entry.h"

namespace tangmark::db {

/// The number on the tang; refuses one that is not in the shop.
Field blade_field();
std::optional<blade::KeptBlade> asked_blade(Work& work, Form& form);

/// Fields that every line of the bench log has: started, hands_on, attended, who, estimated, note.
std::vector<Field> time_fields();
/// Fields of a heat: read, time_in, time_out, cooling, protection, firing.
std::vector<Field> heat_fields();
/// Several groups of fields as one list, in this order.
std::vector<Field> joined(std::initializer_list<std::vector<Field>> groups);

/// A new line of the log with what time_fields hold. Without `started` the step is a moment: its
/// start is `at` and its end is not known; with it, it ends at `at`, and bench work without hours
/// of its own took that long.
blade::LogEntry read_entry(Work& work, Form& form, blade::BladeId blade, std::string operation);
void read_heat(Work& work, Form& form, blade::LogEntry& entry);

}  // namespace tangmark::db
