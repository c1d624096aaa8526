// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "db/store/blade_state.h"
#include "domain/steel/hardness_bias.h"
#include "domain/steel/temper_hardness.h"

namespace tangmark::db {

/// What one blade was expected to come out at, and what was read.
struct HardnessRecord {
  std::int64_t number = 0;
  std::string grade;
  std::string kiln;  ///< of its last hardening; empty when no firing was logged
  std::optional<steel::ExpectedHardness> expected;  ///< after all tempers since the last quench
  std::string why_not;                              ///< a sentence, when nothing can be expected
  /// Mean of the HRC readings after the last heat, none voided.
  std::optional<double> measured_hrc;
};

HardnessRecord hardness_record_of(const ShopFile& shop, const BladeOnRecord& record);

/// Of every blade that was tempered, optionally of one grade, by number.
std::vector<HardnessRecord> hardness_records(const ShopFile& shop, const std::string& grade = {});

/// How the blades of one grade from one kiln come out against the published tables.
struct KilnBias {
  std::string grade, kiln;
  steel::HardnessBias bias;
};
/// One for each grade and kiln that has a blade with both figures.
std::vector<KilnBias> biases_of(const std::vector<HardnessRecord>& records);
/// "O1 from the Long kiln: 1.2 HRC above the middle of the tables in 4 blades, 1 outside the band."
std::string bias_sentence(const KilnBias& bias);

/// The mean of the readings in HRC after the last heat, voided ones left out; none without one.
std::optional<double> mean_hrc_after_heat(const BladeOnRecord& record);

}  // namespace tangmark::db
