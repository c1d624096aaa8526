// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/certificate_words_store.h"
#include "db/store/commission_store.h"
#include "db/store/customer_store.h"

namespace tangmark::db {
namespace {

// Issued certificates are frozen: what stays in them is the maker's to answer for.
void tell_what_stays(Work& work, const ErasedPerson& person) {
  const auto issues = issued_with_name(work.shop(), person);
  if (issues.empty()) return;
  std::string list;
  for (const std::string& one : issues) list += (list.empty() ? "" : "; ") + one;
  work.warn(
      "A buyer's name stays on what was issued with it, for issued certificates are frozen: " +
      list +
      ". Where the person asks for it, revoke it and issue it anew; copies that were "
      "given away stay as they are.");
}

Outcome<ActionResult> run_erase_customer(Work& work, Form& form) {
  const auto customer = asked(work, form, "customer", customer_named);
  if (form.refused()) return form.problems();
  if (customer->erased_at)
    return Problem{"customer", "This person is erased already.", "Nothing is left to erase."};
  for (const auto& commission : commissions_of_customer(work.shop(), customer->id))
    if (!commission::is_over(commission.state))
      return Problem{"customer",
                     "Commission " + std::to_string(commission.number) + " is still open.",
                     "Deliver, decline or cancel it first."};
  const ErasedPerson person{customer->id, customer->name};
  erase_made_for(work.shop(), person);
  erase_person(work.shop(), customer->id, work.at());
  tell_what_stays(work, person);
  return work.done(std::to_string(customer->id.row()));
}

}  // namespace

const Action erase_customer{
    "erase_customer",
    "Erase a person: name, contact, address, note and the name on drafts of certificates go for "
    "good; the work stays.",
    {{"customer", "Customer", FieldKind::customer, true, "4 or the full name"}},
    run_erase_customer};

}  // namespace tangmark::db
