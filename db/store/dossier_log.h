// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/certificate/bench_entry.h"
#include "domain/certificate/observation.h"

namespace tangmark::db {

/// The bench log of a blade as a certificate reads it: every entry in the order of the work,
/// superseded ones marked, heats with what the kiln record shows of them.
std::vector<certificate::BenchEntry> dossier_log(const ShopFile& shop, blade::BladeId blade);
/// Its hardness readings; void ones marked as superseded.
std::vector<certificate::HardnessReading> dossier_hardness(const ShopFile& shop,
                                                           blade::BladeId blade);
/// Its findings with what was decided.
std::vector<certificate::Finding> dossier_findings(const ShopFile& shop, blade::BladeId blade);

}  // namespace tangmark::db
