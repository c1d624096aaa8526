// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/commission_store.h"
#include "db/store/money_store.h"
#include "domain/commission/commission_step.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_make_ready(Work& work, Form& form) {
  auto commission = asked(work, form, "commission", commission_named);
  if (form.refused()) return form.problems();
  const auto state = after_step(commission->state, CommissionStep::make_ready, "commission");
  if (!state) return state.problem();
  commission->state = *state;
  store_commission(work.shop(), *commission);
  const Money owed = account(work.shop(), *commission).owed();
  if (owed > Money(0, owed.currency()))
    work.warn(to_text(owed) + " is still to come; issue the balance invoice.");
  return work.done(std::to_string(commission->number));
}

}  // namespace

const Action make_ready{"make_ready",
                        "Note that everything of a commission is ready to go.",
                        {{"commission", "Commission", FieldKind::commission, true, "12"}},
                        run_make_ready};

}  // namespace tangmark::db
