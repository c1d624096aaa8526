// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/commission_store.h"
#include "db/store/customer_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run(Work& work, Form& form) {
  const auto customer = asked(work, form, "customer", customer_named);
  if (form.refused()) return form.problems();
  if (customer->erased_at)
    return Problem{"customer", "This person is erased already.", "Nothing is left to erase."};
  for (const auto& commission : commissions_of_customer(work.shop(), customer->id))
    if (!commission::is_over(commission.state))
      return Problem{"customer",
                     "Commission " + std::to_string(commission.number) + " is still open.",
                     "Deliver, decline or cancel it first."};
  erase_person(work.shop(), customer->id, work.at());
  return work.done(std::to_string(customer->id.row()));
}

}  // namespace

const Action erase_customer{
    "erase_customer",
    "Erase a person: name, contact, address and note go for good; the work stays.",
    {{"customer", "Customer", FieldKind::customer, true, "4 or the full name"}},
    run};

}  // namespace tangmark::db
