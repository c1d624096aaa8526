// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "db/shop_file.h"
#include "domain/kiln/firing.h"
#include "domain/kiln/kiln.h"

namespace tangmark::db {

/// All kilns and ovens by name; those out of use last.
std::vector<kiln::KeptKiln> all_kilns(const ShopFile& shop);
/// The kiln of a name. Refuses an unknown one and lists the known.
Outcome<kiln::KeptKiln> find_kiln(const ShopFile& shop, std::string_view name,
                                  std::string_view field);
kiln::KilnId add(const ShopFile& shop, const kiln::Kiln& kiln);
void change(const ShopFile& shop, kiln::KilnId id, const kiln::Kiln& kiln);

std::vector<kiln::KeptRecipe> all_recipes(const ShopFile& shop);
kiln::RecipeId add(const ShopFile& shop, const kiln::Recipe& recipe);

/// Firings that end after `from`, by start; cancelled ones only when asked for.
enum class Cancelled { left_out, included };
std::vector<kiln::KeptFiring> firings_after(const ShopFile& shop, Instant from,
                                            Cancelled cancelled = Cancelled::left_out);
/// Every firing that is booked and not begun, by start; overdue ones too.
std::vector<kiln::KeptFiring> booked_firings(const ShopFile& shop);
/// The last firing of a kiln that was started before `at`, done or running.
std::optional<kiln::KeptFiring> last_run(const ShopFile& shop, kiln::KilnId kiln, Instant at);
Outcome<kiln::KeptFiring> find_firing(const ShopFile& shop, std::string_view number,
                                      std::string_view field);
kiln::FiringId add(const ShopFile& shop, const kiln::Firing& firing);
void change(const ShopFile& shop, kiln::FiringId id, const kiln::Firing& firing);

}  // namespace tangmark::db
