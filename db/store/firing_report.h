// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "db/store/record_store.h"
#include "domain/kiln/firing.h"
#include "domain/kiln/record_drift.h"
#include "domain/kiln/record_judgement.h"
#include "domain/kiln/record_soak.h"

namespace tangmark::db {

/// One blade of a firing against its own window, between its own time in and out.
struct ReportedBlade {
  std::int64_t number = 0;
  std::string operation;
  kiln::SoakWindow window;
  std::optional<Instant> in, out;
  std::optional<kiln::BladeSoak> soak;  ///< none: no times, or no record over them
  std::string why_not;                  ///< a sentence, when there is no soak
};

/// A firing judged by its records.
struct FiringReport {
  kiln::KeptFiring firing;
  std::string kiln;
  kiln::SoakWindow window;  ///< of the first blade's step; else the set point and 10 C either way
  std::vector<KeptRecord> records;
  std::size_t judged =
      0;  ///< which of them the blades are judged by: a check thermocouple before others
  kiln::RecordJudgement judgement;
  std::vector<kiln::DoorOpening> doors;
  std::optional<kiln::RecordDrift> drift;  ///< controller against check thermocouple
  std::vector<ReportedBlade> blades;
};

/// Reads and judges the records of a firing. Refuses a firing that is not there or has no record.
Outcome<FiringReport> firing_report(const ShopFile& shop, std::string_view number,
                                    std::string_view field);

/// By how much the controller's record is to go up (down when below nought) so that it agrees with
/// the check thermocouple, in tenths of a degree; it takes the place of a correction that stands.
/// None without a drift, or when the two agree within half a degree.
std::optional<TemperatureDifference> suggested_correction(const FiringReport& report);

/// The report in sentences: the soak, ramps, overshoot, when the charge went in, sensors against
/// each other, gaps, drift with the correction it suggests, and corrections applied.
std::vector<std::string> report_sentences(const FiringReport& report, const Zone& zone,
                                          TemperatureUnit unit);
/// The blades as a table: heads, and one row for each.
std::vector<std::string> report_heads();
std::vector<std::vector<std::string>> report_rows(const FiringReport& report, const Zone& zone,
                                                  TemperatureUnit unit);

}  // namespace tangmark::db
