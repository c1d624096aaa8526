// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/trial.h"
#include "domain/measure/kept.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// A question asked across blades, as it is kept.
struct Trial {
  std::int64_t number = 0;
  std::string question;
  std::vector<blade::TrialVariable> variables;  ///< the first is the one asked about
  blade::TrialOutcome outcome = blade::TrialOutcome::hardness;
  Instant started_at{};
  std::optional<Instant> ended_at;
  std::string conclusion;
};
using KeptTrial = Kept<Trial, blade::TrialId>;

std::vector<KeptTrial> all_trials(const ShopFile& shop);
Outcome<KeptTrial> trial_named(const ShopFile& shop, std::string_view text, std::string_view field);
blade::TrialId insert_trial(const ShopFile& shop, const Trial& trial);
void store_trial_end(const ShopFile& shop, blade::TrialId id, Instant at,
                     const std::string& conclusion);
/// False when the blade is in the trial already.
bool put_in_trial(const ShopFile& shop, blade::TrialId trial, blade::BladeId blade, Instant at);

/// What the record says of the blades of a trial, in the order of their numbers. Heat counts from
/// the last hardening on; hardness is the mean of the readings in HRC after the last heat, voided
/// ones left out; warp the largest logged since; contrast that of the last etch. Temperatures in the
/// degrees that the shop reads.
std::vector<blade::TrialBlade> blades_of_trial(const ShopFile& shop, const KeptTrial& trial);

/// "soak,temper temperature" as variables. Refuses an unknown word and one named twice.
Outcome<std::vector<blade::TrialVariable>> parse_trial_variables(std::string_view text,
                                                                 std::string_view field);

}  // namespace tangmark::db
