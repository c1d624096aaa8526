// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/actions/quote_asked.h"
#include "db/store/commission_store.h"
#include "db/store/refund_store.h"
#include "db/store/usual_terms_store.h"
#include "domain/commission/commission_step.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_accept_quote(Work& work, Form& form) {
  auto commission = asked(work, form, "commission", commission_named);
  const auto quote = asked_quote(work, form, commission);
  const auto state =
      commission ? form.take(after_step(commission->state, CommissionStep::accept, "commission"))
                 : CommissionState::enquiry;
  const auto terms = form.word<RefundTerms>("refund", usual_refund_terms(work.shop()));
  if (quote && quote->answer)
    form.add({"version", "This version is " + std::string(word_of(*quote->answer)) + ".",
              "Make a new version."});
  if (form.refused()) return form.problems();

  const CalendarDate day = work.settings().zone.date_of(work.at());
  if (quote->valid_until < day)
    work.warn("The quote was good until " + to_text(quote->valid_until) +
              "; it is taken as still standing.");
  if (!quote->sent_at) work.warn("This version was never noted as sent.");
  for (const KeptQuote& other : quotes_of(work.shop(), commission->id))
    if (other.id != quote->id && other.answer != QuoteAnswer::superseded &&
        other.answer != QuoteAnswer::declined)
      store_quote_answer(work.shop(), other.id, QuoteAnswer::superseded, work.at());
  store_quote_answer(work.shop(), quote->id, QuoteAnswer::accepted, work.at());
  commission->state = state;
  if (!commission->accepted_on) commission->accepted_on = day;
  commission->specification_confirmed_on = day;
  if (!commission->refund_rule) commission->refund_rule = work.settings().refund_rule;
  store_commission(work.shop(), *commission);
  freeze_refund_terms(work.shop(), commission->id, terms);
  return work.done(quote_number(*commission, *quote));
}

}  // namespace

const Action accept_quote{
    "accept_quote",
    "Note that the buyer accepted a quote; it becomes an order, and other versions are superseded.",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"version", "Version", FieldKind::number, false, "2; the newest when not given"},
     {"refund",
      "If the buyer withdraws, what came in goes back",
      FieldKind::choice,
      false,
      "less material used; the shop's usual when not given",
      {},
      choices_of<RefundTerms>()}},
    run_accept_quote};

}  // namespace tangmark::db
