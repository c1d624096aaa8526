// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/commission_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run_confirm_specification(Work& work, Form& form) {
  auto commission = asked(work, form, "commission", commission_named);
  const auto words = form.maybe_text("words");
  if (form.refused()) return form.problems();
  if (commission::is_over(commission->state))
    return Problem{"commission", "The commission is over.", "There is nothing left to confirm."};
  commission->specification_confirmed_on = work.settings().zone.date_of(work.at());
  store_commission(work.shop(), *commission);
  insert_contact(work.shop(), {commission->id, work.at(), form.maybe_text("channel"),
                               words.value_or("The buyer confirmed the specification.")});
  return work.done(std::to_string(commission->number));
}

}  // namespace

const Action confirm_specification{
    "confirm_specification",
    "Note that the buyer confirmed the specification, best one to three weeks before work begins.",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"channel", "By", FieldKind::text, false, "e-mail"},
     {"words", "In the buyer's words", FieldKind::long_text, false, "yes, 240 mm, walnut"}},
    run_confirm_specification};

}  // namespace tangmark::db
