// SPDX-License-Identifier: MIT
#include "db/actions/delivery_catches.h"

#include "db/actions/item_catches.h"
#include "db/row.h"
#include "db/store/blade_state.h"
#include "db/store/blade_store.h"
#include "db/store/item_store.h"
#include "db/store/lot_store.h"
#include "db/store/money_store.h"
#include "db/store/outside_work_store.h"
#include "db/store/piece_store.h"
#include "domain/commission/money_rules.h"
#include "domain/stock/customers_material.h"

namespace tangmark::db {
namespace {

using namespace commission;

// Material brought for another commission of the same customer that is still open may stay.
bool has_other_open_work(const ShopFile& shop, const KeptCommission& commission) {
  Query query(shop,
              "SELECT id FROM commission WHERE customer_id = ? AND id <> ? "
              "AND state NOT IN('delivered', 'declined', 'cancelled')");
  query.bind(commission.customer).bind(commission.id);
  return query.next();
}

void add_remainders(Work& work, const KeptCommission& commission, Catches& all) {
  if (has_other_open_work(work.shop(), commission)) return;
  for (const auto& lot : lots_of_customer(work.shop(), commission.customer)) {
    Mass left;
    for (const auto& piece : pieces_of_lot(work.shop(), lot.id))
      if (piece.state == stock::PieceState::on_hand) left = left + piece.mass;
    if (left > Mass())
      if (auto caught = stock::remainder_not_returned(std::to_string(lot.number), left,
                                                      work.settings().mass_unit))
        all.push_back(std::move(*caught));
  }
}

void add_blade_problems(const ShopFile& shop, const KeptItem& item, Problems& problems) {
  bool any = false;
  for (const blade::KeptBlade& blade : blades_of_item(shop, item.id)) {
    if (blade.scrapped_at) continue;
    any = true;
    if (!blade.finished_at)
      problems.push_back({"commission",
                          "Blade " + std::to_string(blade.number) + " is not finished.",
                          "Finish it with finish_blade first."});
  }
  if (!any)
    problems.push_back(
        {"commission",
         "Item " + std::to_string(item.id.row()) + " (" + item.title + ") has no blade.",
         "Assign one with assign_blade, or cancel the item."});
}

// Not tempered, tempered in part, a finding that nobody decided: each holds the knife here.
void add_hard_states(Work& work, const KeptItem& item, Catches& all) {
  for (const blade::KeptBlade& blade : blades_of_item(work.shop(), item.id)) {
    if (blade.scrapped_at) continue;
    for (Caught& caught : blocks(work.shop(), blade, blade::Stage::delivery, work.now()))
      all.push_back(std::move(caught));
  }
}

}  // namespace

Catches catches_at_delivery(Work& work, const KeptCommission& commission) {
  Catches all;
  if (auto unpaid = balance_unpaid(account(work.shop(), commission)))
    all.push_back(std::move(*unpaid));
  add_remainders(work, commission, all);
  for (const KeptItem& item : items_of(work.shop(), commission.id)) {
    if (item.cancelled_on) continue;
    add_hard_states(work, item, all);
    for (Caught& caught : handle_catches(work, item)) all.push_back(std::move(caught));
  }
  return all;
}

Problems problems_at_delivery(Work& work, const KeptCommission& commission) {
  Problems problems;
  bool any = false;
  for (const KeptItem& item : items_of(work.shop(), commission.id)) {
    if (item.cancelled_on) continue;
    any = true;
    add_blade_problems(work.shop(), item, problems);
    for (const KeptOutsideWork& out : outside_work_of_item(work.shop(), item.id))
      if (!out.back_at)
        problems.push_back({"commission",
                            "The " + out.operation + " of item " + std::to_string(item.id.row()) +
                                " is still with " + out.who + ".",
                            "Note its return with back_from_outside."});
  }
  if (!any)
    problems.push_back({"commission", "There is nothing in it to deliver.", "Add an item first."});
  return problems;
}

}  // namespace tangmark::db
