// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/item_catches.h"
#include "db/store/item_store.h"
#include "domain/commission/commission_step.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_sell_stock_knife(Work& work, Form& form) {
  auto item = asked(work, form, "item", item_named);
  const auto commission = asked(work, form, "commission", commission_named);
  if (item && item->commission)
    form.add({"item", "This item belongs to a commission already.", "Choose a stock knife."});
  if (item && item->cancelled_on)
    form.add({"item", "This item was cancelled.", "Choose another stock knife."});
  if (item && commission && item->currency != commission->currency)
    form.add({"commission", "The knife is reckoned in " + item->currency.code() + ".",
              "Open the commission in that currency."});
  if (commission) form.take(after_step(commission->state, CommissionStep::add_items, "commission"));
  if (form.refused()) return form.problems();
  item->commission = commission->id;
  item->position = next_item_position(work.shop(), commission->id);
  if (!work.passes(handle_catches(work, *item))) return work.problems();
  store_item(work.shop(), *item);
  return work.done(std::to_string(item->id.row()));
}

}  // namespace

const Action sell_stock_knife{"sell_stock_knife",
                              "Put a stock knife into a buyer's commission.",
                              {{"item", "Stock knife", FieldKind::item, true, "7"},
                               {"commission", "Commission", FieldKind::commission, true, "12"}},
                              run_sell_stock_knife};

}  // namespace tangmark::db
