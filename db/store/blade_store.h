// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade.h"
#include "domain/measure/outcome.h"

namespace tangmark::db {

std::optional<blade::KeptBlade> load_blade(const ShopFile& shop, blade::BladeId id);
std::optional<blade::KeptBlade> find_blade(const ShopFile& shop, std::int64_t number);
/// The blade whose number was typed into `field`; refuses one that is not in the shop.
Outcome<blade::KeptBlade> blade_named(const ShopFile& shop, std::string_view text,
                                      std::string_view field);

blade::BladeId insert_blade(const ShopFile& shop, const blade::Blade& blade);
/// Stores every field anew. The number must be the one it has.
void store_blade(const ShopFile& shop, const blade::KeptBlade& blade);

/// Blades neither finished, scrapped nor delivered, by number.
std::vector<blade::KeptBlade> blades_in_work(const ShopFile& shop);
/// All blades ever made for an item, scrapped ones too, by number.
std::vector<blade::KeptBlade> blades_of_item(const ShopFile& shop, commission::ItemId item);

/// One line of the list of blades.
struct BladeLine {
  blade::BladeId id;
  std::int64_t number;
  std::string title;
  std::optional<std::string> grade;
  std::optional<std::int64_t> commission;  ///< number
  std::optional<std::string> piece;        ///< tag of the blank
  std::optional<CalendarDate> due;
  bool finished = false, scrapped = false, delivered = false;
};

enum class Which { in_work, all };

/// Blades whose number, title, grade, blank or commission holds the text, the newest first; at most
/// `most`. An empty text finds all.
std::vector<BladeLine> list_blades(const ShopFile& shop, std::string_view text, Which which,
                                   int most = 500);

}  // namespace tangmark::db
