// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/hold.h"
#include "domain/commission/item.h"

namespace tangmark::db {

std::optional<commission::KeptItem> load_item(const ShopFile& shop, commission::ItemId id);
/// Items of a commission in their order, cancelled ones too.
std::vector<commission::KeptItem> items_of(const ShopFile& shop,
                                           commission::CommissionId commission);
/// Knives with no commission yet.
std::vector<commission::KeptItem> stock_knives(const ShopFile& shop);
/// Items of commissions under way and stock knives in the making: neither delivered nor cancelled.
std::vector<commission::KeptItem> open_items(const ShopFile& shop);
commission::ItemId insert_item(const ShopFile& shop, const commission::Item& item);
/// Stores every field anew.
void store_item(const ShopFile& shop, const commission::KeptItem& item);
/// The place of the next item within a commission, or among the stock knives.
std::int64_t next_item_position(const ShopFile& shop,
                                std::optional<commission::CommissionId> commission);

/// Numbered changes of one item, and of all items of a commission, oldest first.
std::vector<commission::KeptItemChange> changes_of_item(const ShopFile& shop,
                                                        commission::ItemId item);
std::vector<commission::ItemChange> changes_of_commission(const ShopFile& shop,
                                                          commission::CommissionId commission);
commission::ItemChangeId insert_item_change(const ShopFile& shop,
                                            const commission::ItemChange& change);

std::optional<commission::KeptHold> load_hold(const ShopFile& shop, commission::HoldId id);
/// What an item still waits for.
std::vector<commission::KeptHold> holds_of_item(const ShopFile& shop, commission::ItemId item);
/// What the whole shop waits for.
std::vector<commission::KeptHold> standing_holds(const ShopFile& shop);
commission::HoldId insert_hold(const ShopFile& shop, const commission::Hold& hold);
void store_end_of_hold(const ShopFile& shop, commission::HoldId id, Instant at);

}  // namespace tangmark::db
