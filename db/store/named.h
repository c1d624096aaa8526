// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/commission/commission.h"
#include "domain/commission/customer.h"
#include "domain/commission/item.h"
#include "domain/commission/model.h"
#include "domain/measure/outcome.h"
#include "domain/stock/bath.h"
#include "domain/stock/billet.h"
#include "domain/stock/lot.h"
#include "domain/stock/piece.h"

namespace tangmark::db {

/// What a maker means by a number, tag or name typed into `field`; refuses one that is not in the
/// shop. Commissions, items, lots, billets and blades go by number, pieces by tag, models and baths
/// by name, customers by number or by a name that only one of them has.
Outcome<commission::KeptCommission> commission_named(const ShopFile& shop, std::string_view text,
                                                     std::string_view field);
Outcome<commission::KeptItem> item_named(const ShopFile& shop, std::string_view text,
                                         std::string_view field);
Outcome<commission::KeptCustomer> customer_named(const ShopFile& shop, std::string_view text,
                                                 std::string_view field);
Outcome<commission::KeptModel> model_named(const ShopFile& shop, std::string_view text,
                                           std::string_view field);
Outcome<stock::KeptLot> lot_named(const ShopFile& shop, std::string_view text,
                                  std::string_view field);
Outcome<stock::KeptPiece> piece_named(const ShopFile& shop, std::string_view text,
                                      std::string_view field);
Outcome<stock::KeptBillet> billet_named(const ShopFile& shop, std::string_view text,
                                        std::string_view field);
Outcome<stock::KeptBath> bath_named(const ShopFile& shop, std::string_view text,
                                    std::string_view field);
Outcome<blade::BladeId> blade_id_named(const ShopFile& shop, std::string_view text,
                                       std::string_view field);

/// A whole number such as "17"; refuses anything else.
Outcome<std::int64_t> number_named(std::string_view text, std::string_view field);

}  // namespace tangmark::db
