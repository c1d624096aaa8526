// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade.h"
#include "domain/blade/blocks.h"
#include "domain/blade/finding.h"
#include "domain/blade/hardness.h"
#include "domain/blade/log_entry.h"
#include "domain/blade/next_step.h"
#include "domain/blade/state.h"
#include "domain/commission/shop_settings.h"

namespace tangmark::db {

/// All that the bench knows about one blade.
struct BladeOnRecord {
  blade::KeptBlade blade;
  std::vector<blade::KeptRouteStep> route;
  std::vector<blade::KeptLogEntry> log;  ///< corrections applied
  std::vector<blade::KeptReading> readings;
  std::vector<blade::KeptFinding> findings;
  blade::BladeState state;
};

BladeOnRecord load_record(const ShopFile& shop, const blade::KeptBlade& blade);
std::optional<BladeOnRecord> load_record(const ShopFile& shop, blade::BladeId blade);

/// The state alone; a handle counts as fitted when its item says so or the log does.
blade::BladeState load_state(const ShopFile& shop, const blade::KeptBlade& blade);

/// What stands in the way of handle, certificate or delivery: hard states and open findings.
Catches blocks(const ShopFile& shop, const blade::KeptBlade& blade, blade::Stage stage,
               Instant now);

/// The shop's rule for the wait between quench and temper.
blade::TemperClock temper_clock(const commission::ShopSettings& settings);

/// A quenched blade that waits for its temper, and until when it may.
struct WaitingBlade {
  blade::KeptBlade blade;
  blade::BladeState state;
  std::optional<Instant> due;  ///< none: snap tempered or held warm
};
/// All of them, the longest quenched first.
std::vector<WaitingBlade> blades_waiting_for_temper(const ShopFile& shop);

}  // namespace tangmark::db
