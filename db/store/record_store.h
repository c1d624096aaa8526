// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/kiln/kiln_id.h"
#include "domain/kiln/record.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// A correction that the maker applied to one sensor of a record. The attached file stays as it is.
struct RecordCorrection {
  std::int64_t id = 0;
  std::size_t sensor = 0;  ///< in the order of the record's shape
  TemperatureDifference by;
  std::string why;
  Instant at{};
};

/// A kiln record as attached to a firing.
struct KeptRecord {
  std::int64_t id = 0;
  kiln::KilnId kiln;
  std::string name;  ///< of the file
  bool independent = false;
  std::vector<RecordCorrection> corrections;
  kiln::KilnRecord
      record;  ///< on the clock of 1970, read by the kiln's mapping, corrections applied
};

/// The records of a firing, controllers' first, in the order they were attached. One whose file can
/// no longer be read is left out.
std::vector<KeptRecord> records_of_firing(const ShopFile& shop, kiln::FiringId firing);

/// The file of a record, read by the mapping kept with it (`settings`), or recognised when there is
/// none; uncorrected, on its own clock.
Outcome<kiln::KilnRecord> read_kept_record(std::string_view bytes, const std::string& settings,
                                           const Zone& zone);

/// Whose logger wrote a record: the controller's, or that of a thermocouple of its own.
enum class Logger { controller, check };

/// Whether the firing of a number has a record attached.
bool has_record(const ShopFile& shop, std::int64_t firing_number);

/// How a logger of a kiln writes, as the maker settled it with its first record.
std::optional<kiln::RecordShape> record_shape_of(const ShopFile& shop, kiln::KilnId kiln,
                                                 Logger logger);
void store_record_shape(const ShopFile& shop, kiln::KilnId kiln, Logger logger,
                        const kiln::RecordShape& shape);

void insert_correction(const ShopFile& shop, std::int64_t record,
                       const RecordCorrection& correction);
void withdraw_corrections(const ShopFile& shop, std::int64_t record, std::size_t sensor,
                          Instant at);

}  // namespace tangmark::db
