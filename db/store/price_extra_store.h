// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "db/shop_file.h"
#include "domain/commission/commission_id.h"
#include "domain/measure/money.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::db {

enum class ExtraKind { steel, option };

/// What a steel or an option adds to the list price of one model, or of every model.
struct PriceExtra {
  ExtraKind kind = ExtraKind::option;
  std::optional<commission::ModelId> model;
  std::string name;
  Money price;
};

/// Puts an extra on the list; the one of the same kind, name and model before it is retired.
void insert_price_extra(const ShopFile& shop, const PriceExtra& extra, CalendarDate since);
/// The extra of that name for a model: its own before the one for every model. Small and capital
/// letters are the same.
std::optional<PriceExtra> price_extra(const ShopFile& shop, ExtraKind kind, std::string_view name,
                                      std::optional<commission::ModelId> model);
/// The whole list as it stands, steels first.
std::vector<PriceExtra> price_extras(const ShopFile& shop);

/// An option that an item has, at the price it had when it was chosen.
struct ItemOption {
  std::int64_t id = 0;
  std::string name;
  Money price;
};
std::vector<ItemOption> options_of_item(const ShopFile& shop, commission::ItemId item);
void insert_item_option(const ShopFile& shop, commission::ItemId item, const std::string& name,
                        Money price);
void take_option_off(const ShopFile& shop, std::int64_t option, Instant at);

}  // namespace tangmark::db

namespace tangmark {
template <>
inline constexpr auto trade_words<db::ExtraKind> =
    std::array{std::pair{db::ExtraKind::steel, std::string_view{"steel"}},
               std::pair{db::ExtraKind::option, std::string_view{"option"}}};
}  // namespace tangmark
