// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/certificate/dossier.h"

namespace tangmark::db {

/// Corrections outside the bench log of what the certificate of a blade prints: of the blade
/// itself, its findings and readings, the lots of its steel, its handle. Read from history, which
/// keeps every changed row with the reason.
std::vector<certificate::Correction> corrections_of(const ShopFile& shop, blade::BladeId blade,
                                                    const certificate::Dossier& dossier);

}  // namespace tangmark::db
