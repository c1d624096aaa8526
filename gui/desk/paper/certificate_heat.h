// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade.h"
#include "domain/certificate/dossier.h"
#include "reports/build_certificate.h"

namespace tangmark::desk {

/// The heat-treatment table: every heat of the log that counts, with its evidence.
std::vector<reports::HeatLine> heat_lines(const certificate::Dossier& dossier);
/// The recorded curves of the hardening and of the tempers, each with its window and the blade's own
/// time out.
std::vector<reports::Curve> recorded_curves(const db::ShopFile& shop, const blade::KeptBlade& blade,
                                            const certificate::Dossier& dossier);

}  // namespace tangmark::desk
