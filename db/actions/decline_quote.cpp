// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/quote_asked.h"
#include "db/store/commission_store.h"
#include "domain/commission/commission_step.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_decline_quote(Work& work, Form& form) {
  auto commission = asked(work, form, "commission", commission_named);
  const auto why = form.maybe_text("why");
  const auto state =
      commission ? form.take(after_step(commission->state, CommissionStep::decline, "commission"))
                 : CommissionState::enquiry;
  if (form.refused()) return form.problems();
  for (const KeptQuote& quote : quotes_of(work.shop(), commission->id))
    if (!quote.answer) store_quote_answer(work.shop(), quote.id, QuoteAnswer::declined, work.at());
  commission->state = state;
  commission->cancelled_why = why;
  store_commission(work.shop(), *commission);
  return work.done(std::to_string(commission->number));
}

}  // namespace

const Action decline_quote{"decline_quote",
                           "Note that an enquiry or quote came to nothing.",
                           {{"commission", "Commission", FieldKind::commission, true, "12"},
                            {"why", "Why", FieldKind::text, false, "the wait is too long"}},
                           run_decline_quote};

}  // namespace tangmark::db
