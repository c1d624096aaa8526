// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/store/lot_store.h"
#include "db/store/piece_costs.h"
#include "db/store/piece_store.h"
#include "db/store/quote_item.h"
#include "db/store/reservation_store.h"
#include "domain/stock/lot_mass.h"
#include "domain/stock/steel_match.h"

namespace tangmark::db {
namespace {

using namespace commission;
using namespace stock;

std::optional<costing::Ingredient> reserved_billet(const ShopFile& shop, const KeptItem& item,
                                                   const ShopSettings& settings) {
  for (const KeptReservation& reservation : reservations_of_item(shop, item.id)) {
    const auto piece = reservation.piece ? load_piece(shop, *reservation.piece) : std::nullopt;
    if (!piece || !piece->billet) continue;
    const auto billet = cost_of_billet(shop, *piece->billet, settings);
    if (!billet) continue;
    const Mass mass = std::min(reservation.mass.value_or(piece->mass), billet->usable);
    return costing::Ingredient{"Billet piece " + piece->tag,
                               costing::SteelFromBillet{*billet, mass}, 0};
  }
  return std::nullopt;
}

// The mean price of the grades in the steel, from the newest lot of each; none when one is not on
// record.
struct SteelPrice {
  Money per_kg;
  Density density;
  std::optional<Length> bar_length;
};
std::optional<SteelPrice> price_of(const ShopFile& shop, const std::vector<std::string>& grades,
                                   Currency currency) {
  SteelPrice price{Money(0, currency), {}, std::nullopt};
  for (const std::string& grade : grades) {
    const auto lot = latest_lot_of_grade(shop, grade);
    const auto per_kg = lot ? price_per_kg(*lot) : std::nullopt;
    if (!per_kg || per_kg->currency() != currency) return std::nullopt;
    price.per_kg += *per_kg;
    price.density = lot->density.value_or(Density{});
    if (grades.size() == 1) price.bar_length = lot->length;
  }
  price.per_kg = scaled_half_even(price.per_kg, 1, static_cast<std::int64_t>(grades.size()));
  return price;
}

}  // namespace

std::optional<costing::Ingredient> steel_of_item(const ShopFile& shop, const KeptItem& item,
                                                 const std::optional<KeptModel>& model,
                                                 const ShopSettings& settings,
                                                 std::vector<std::string>& assumptions) {
  if (auto billet = reserved_billet(shop, item, settings)) return billet;
  if (!model) {
    assumptions.push_back(item.title +
                          ": no model gives the size of its blank, so no steel is counted.");
    return std::nullopt;
  }
  const auto grades = grades_named(item.grade.value_or(""));
  const auto price = grades.empty() ? std::nullopt : price_of(shop, grades, settings.currency);
  if (!price) {
    assumptions.push_back(item.title + ": no lot of " + item.grade.value_or("its steel") +
                          " is on record, so no steel is counted.");
    return std::nullopt;
  }
  costing::BarCut cut;
  cut.blank_length = model->blank_length + (item.blade_length - model->blade_length);
  cut.section = costing::FlatSection{model->blank_width, model->blank_thickness};
  cut.density = price->density;
  cut.yield = model->yield;
  cut.kerf = settings.kerf;
  if (price->bar_length && *price->bar_length >= cut.blank_length && model->yield == Share::whole())
    cut.bar = costing::WholeBar{*price->bar_length, settings.keep_at_least};
  if (grades.size() > 1)
    assumptions.push_back(item.title + ": its steels are counted at the mean of their prices.");
  return costing::Ingredient{"Steel " + *item.grade, costing::SteelFromBar{cut, price->per_kg}, 0};
}

}  // namespace tangmark::db
