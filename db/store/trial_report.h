// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "db/store/trial_store.h"

namespace tangmark::db {

/// What a trial shows, in sentences: each variable against the outcome, the next blade while it
/// runs, its end. `degrees` are those the blades were read in: the shop's.
std::vector<std::string> trial_sentences(const Trial& trial,
                                         const std::vector<blade::TrialBlade>& blades,
                                         TemperatureUnit degrees);
/// Its blades as a table: heads with units, and one row for each.
std::vector<std::string> trial_heads(const Trial& trial, TemperatureUnit degrees);
std::vector<std::vector<std::string>> trial_rows(const Trial& trial,
                                                 const std::vector<blade::TrialBlade>& blades);

/// "soak, min"; a count has no unit.
std::string measure_title(std::string_view word, std::string_view unit);

}  // namespace tangmark::db
