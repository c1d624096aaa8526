// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/stock/billet.h"
#include "domain/stock/melt.h"

namespace tangmark::db {

std::optional<stock::KeptBillet> load_billet(const ShopFile& shop, stock::BilletId id);
std::optional<stock::KeptBillet> find_billet(const ShopFile& shop, std::int64_t number);
/// All billets, the newest first.
std::vector<stock::KeptBillet> list_billets(const ShopFile& shop);
std::vector<stock::KeptBilletPart> parts_of_billet(const ShopFile& shop, stock::BilletId billet);
std::vector<stock::KeptWeldStage> stages_of_billet(const ShopFile& shop, stock::BilletId billet);
std::optional<stock::KeptMelt> melt_of_billet(const ShopFile& shop, stock::BilletId billet);

stock::BilletId insert_billet(const ShopFile& shop, const stock::Billet& billet);
stock::BilletPartId insert_billet_part(const ShopFile& shop, const stock::BilletPart& part);
stock::WeldStageId insert_weld_stage(const ShopFile& shop, const stock::WeldStage& stage);
stock::MeltId insert_melt(const ShopFile& shop, const stock::Melt& melt);
void store_billet_layers(const ShopFile& shop, stock::BilletId id, std::int64_t layers);
void store_billet_finish(const ShopFile& shop, stock::BilletId id, Instant at,
                         const std::optional<std::string>& pattern);

/// What a billet weighs now: after its last stage, or the sum of its parts before the first.
Mass mass_of_billet(const ShopFile& shop, stock::BilletId billet);
/// Layers by the arithmetic of the parts and the logged folds and cuts; none for an ingot.
std::optional<std::int64_t> layers_by_stages(const ShopFile& shop, const stock::KeptBillet& billet);

}  // namespace tangmark::db
