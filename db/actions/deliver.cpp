// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/delivery_catches.h"
#include "db/row.h"
#include "db/store/commission_store.h"
#include "db/store/item_store.h"
#include "db/store/reservation_store.h"
#include "domain/commission/commission_step.h"

namespace tangmark::db {
namespace {

using namespace commission;

// The program gives no verdict on knife law; it asks whether the maker looked.
void remind_of_law(Work& work, const KeptCommission& commission) {
  if (commission.law_checked_on) return;
  work.warn("Nobody noted that the knife law, customs and carrier rules for " +
            commission.destination.value_or("the destination") +
            " were checked. Ask your authority; then give law_checked=yes.");
}

void mark_delivered(Work& work, const KeptCommission& commission) {
  std::vector<std::int64_t> blades;
  Query query(
      work.shop(),
      "SELECT blade.id FROM blade JOIN item ON item.id = blade.item_id WHERE item.commission_id = "
      "? "
      "AND item.cancelled_on IS NULL AND blade.scrapped_at IS NULL AND blade.delivered_at IS NULL");
  query.bind(commission.id);
  while (query.next()) blades.push_back(query.integer("id"));
  for (const std::int64_t blade : blades)
    Row("blade").set("delivered_at", work.at()).update(work.shop(), blade);
  for (const KeptItem& item : items_of(work.shop(), commission.id))
    for (const auto& reservation : reservations_of_item(work.shop(), item.id))
      store_release(work.shop(), reservation.id, work.at());
}

Outcome<ActionResult> run_deliver(Work& work, Form& form) {
  auto commission = asked(work, form, "commission", commission_named);
  const bool law_checked = form.yes("law_checked");
  const auto words = form.maybe_text("words");
  const auto state =
      commission ? form.take(after_step(commission->state, CommissionStep::deliver, "commission"))
                 : CommissionState::enquiry;
  if (form.refused()) return form.problems();
  Problems problems = problems_at_delivery(work, *commission);
  if (!work.passes(catches_at_delivery(work, *commission)))
    for (const Problem& problem : work.problems()) problems.push_back(problem);
  if (!problems.empty()) return problems;

  const CalendarDate day = work.settings().zone.date_of(work.at());
  if (law_checked) commission->law_checked_on = day;
  remind_of_law(work, *commission);
  commission->state = state;
  commission->delivered_on = day;
  store_commission(work.shop(), *commission);
  mark_delivered(work, *commission);
  if (words) insert_contact(work.shop(), {commission->id, work.at(), std::nullopt, *words});
  return work.done(std::to_string(commission->number));
}

}  // namespace

const Action deliver{"deliver",
                     "Note that a commission left the shop for its buyer.",
                     {{"commission", "Commission", FieldKind::commission, true, "12"},
                      {"law_checked", "Knife law, customs and carrier checked", FieldKind::yes_no,
                       false, "no", "no"},
                      {"words", "How it went", FieldKind::text, false, "by insured post"}},
                     run_deliver};

}  // namespace tangmark::db
