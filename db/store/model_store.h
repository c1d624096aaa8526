// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/model.h"

namespace tangmark::db {

std::optional<commission::KeptModel> load_model(const ShopFile& shop, commission::ModelId id);
std::optional<commission::KeptModel> find_model(const ShopFile& shop, std::string_view name);
/// Models still made, by name.
std::vector<commission::KeptModel> list_models(const ShopFile& shop);
/// The usual route and the usual uses of a model, in their order.
std::vector<commission::KeptModelStep> steps_of_model(const ShopFile& shop,
                                                      commission::ModelId model);
std::vector<commission::KeptModelUse> uses_of_model(const ShopFile& shop,
                                                    commission::ModelId model);

commission::ModelId insert_model(const ShopFile& shop, const commission::Model& model);
commission::ModelStepId insert_model_step(const ShopFile& shop, const commission::ModelStep& step);
commission::ModelUseId insert_model_use(const ShopFile& shop, const commission::ModelUse& use);

}  // namespace tangmark::db
