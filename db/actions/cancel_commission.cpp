// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/commission_store.h"
#include "db/store/item_store.h"
#include "db/store/money_store.h"
#include "db/store/reservation_store.h"
#include "domain/commission/commission_step.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_cancel_commission(Work& work, Form& form) {
  auto commission = asked(work, form, "commission", commission_named);
  const auto why = form.text("why");
  const auto state =
      commission ? form.take(after_step(commission->state, CommissionStep::cancel, "commission"))
                 : CommissionState::enquiry;
  if (form.refused()) return form.problems();
  commission->state = state;
  commission->cancelled_why = why;
  store_commission(work.shop(), *commission);
  for (KeptItem& item : items_of(work.shop(), commission->id)) {
    for (const auto& reservation : reservations_of_item(work.shop(), item.id))
      store_release(work.shop(), reservation.id, work.at());
    if (item.cancelled_on) continue;
    item.cancelled_on = work.settings().zone.date_of(work.at());
    store_item(work.shop(), item);
  }
  const Money held = account(work.shop(), *commission).received;
  if (held > Money(0, held.currency()))
    work.warn(to_text(held) + " is held for it. Agreed rule: " +
              commission->refund_rule.value_or("none on record."));
  return work.done(std::to_string(commission->number));
}

}  // namespace

const Action cancel_commission{"cancel_commission",
                               "Cancel a commission; what was reserved for it is free again.",
                               {{"commission", "Commission", FieldKind::commission, true, "12"},
                                {"why", "Why", FieldKind::text, true, "buyer moved abroad"}},
                               run_cancel_commission};

}  // namespace tangmark::db
