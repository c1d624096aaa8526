// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/quote_asked.h"
#include "db/store/commission_store.h"
#include "domain/commission/commission_step.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_send_quote(Work& work, Form& form) {
  auto commission = asked(work, form, "commission", commission_named);
  const auto quote = asked_quote(work, form, commission);
  const auto state =
      commission
          ? form.take(after_step(commission->state, CommissionStep::send_quote, "commission"))
          : CommissionState::enquiry;
  if (quote && quote->sent_at)
    form.add({"version", "This version was sent already.", "Make a new version."});
  if (quote && quote->answer)
    form.add({"version", "This version is answered.", "Make a new version."});
  if (form.refused()) return form.problems();
  commission->state = state;
  store_commission(work.shop(), *commission);
  store_quote_sent(work.shop(), quote->id, work.at());
  return work.done(quote_number(*commission, *quote));
}

}  // namespace

const Action send_quote{
    "send_quote",
    "Note that a quote went to the buyer.",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"version", "Version", FieldKind::number, false, "2; the newest when not given"}},
    run_send_quote};

}  // namespace tangmark::db
