// SPDX-License-Identifier: MIT
#include "db/actions/item_catches.h"

#include "db/store/commission_store.h"
#include "db/store/family_tree.h"
#include "db/store/grade_store.h"
#include "db/store/lot_store.h"
#include "db/store/money_store.h"
#include "domain/commission/commission_step.h"
#include "domain/commission/contact_rules.h"
#include "domain/commission/money_rules.h"
#include "domain/stock/customers_material.h"
#include "domain/stock/piece_in_hand.h"
#include "domain/stock/species_watch.h"
#include "domain/stock/steel_match.h"

namespace tangmark::db {
namespace {

using namespace commission;

std::optional<KeptCommission> commission_of(const ShopFile& shop, const Item& item) {
  if (!item.commission) return std::nullopt;
  return load_commission(shop, *item.commission);
}

void add(Catches& all, Catch caught) {
  if (caught) all.push_back(std::move(*caught));
}

}  // namespace

Catches handle_catches(Work& work, const Item& item) {
  Catches all;
  const auto commission = commission_of(work.shop(), item);
  stock::HandleAbroad handle{item.handle.value_or(""), "", "", work.settings().country,
                             commission ? commission->destination.value_or("") : ""};
  if (const auto lot = item.handle_lot ? load_lot(work.shop(), *item.handle_lot) : std::nullopt) {
    handle.species = lot->species.value_or(lot->name);
    handle.latin = lot->species_latin.value_or("");
    handle.papers = lot->papers.value_or("");
    std::optional<CustomerId> customer;
    if (commission) customer = commission->customer;
    add(all, stock::customers_material_elsewhere(lot->owner, customer,
                                                 "Lot " + std::to_string(lot->number)));
  }
  add(all, stock::watched_species_abroad(handle));
  return all;
}

Catches catches_before_work(Work& work, const KeptItem& item) {
  const auto commission = commission_of(work.shop(), item);
  if (!commission || commission->state != CommissionState::accepted) return {};
  Catches all;
  add(all, deposit_missing(account(work.shop(), *commission)));
  add(all, specification_not_confirmed(*commission, work.today(), work.settings().contact_days));
  return all;
}

Outcome<Done> begin_work(Work& work, const KeptItem& item, std::string_view field) {
  if (item.cancelled_on)
    return Problem{std::string(field),
                   "The item was cancelled on " + to_text(*item.cancelled_on) + ".",
                   "Choose another item."};
  auto commission = commission_of(work.shop(), item);
  if (!commission) return Done{};
  const auto state = after_step(commission->state, CommissionStep::start_work, field);
  if (!state) return state.problem();
  if (*state == commission->state) return Done{};
  commission->state = *state;
  store_commission(work.shop(), *commission);
  return Done{};
}

Catches piece_catches(Work& work, const KeptItem& item, const stock::KeptPiece& piece) {
  Catches all;
  add(all, stock::used_twice(piece));
  add(all, stock::steel_differs(item.grade, grades_of(work.shop(), piece.id), piece.tag,
                                grade_book(work.shop())));
  const auto commission = commission_of(work.shop(), item);
  std::optional<CustomerId> customer;
  if (commission) customer = commission->customer;
  for (const auto& lot : ancestors_of(work.shop(), piece.id).lots)
    add(all, stock::customers_material_elsewhere(lot.owner, customer, "Piece " + piece.tag));
  return all;
}

}  // namespace tangmark::db
