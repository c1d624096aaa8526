// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/commission_store.h"
#include "db/store/promise_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_record_consent(Work& work, Form& form) {
  const auto commission = asked(work, form, "commission", commission_named);
  const auto consent = form.word<Consent>("consent", Consent::asked);
  const auto words = form.maybe_text("words");
  if (form.refused()) return form.problems();
  const auto notice = unanswered_notice(work.shop(), commission->id);
  if (!notice)
    return Problem{"commission", "No delay notice waits for an answer.",
                   "Send one with tell_delay."};
  store_consent(work.shop(), notice->id, consent, work.at());
  if (words) insert_contact(work.shop(), {commission->id, work.at(), std::nullopt, *words});
  if (consent == Consent::refused)
    work.warn("The buyer did not agree to " + to_text(notice->new_day) +
              ": offer an earlier day or the money back.");
  return work.done(std::to_string(commission->number));
}

}  // namespace

const Action record_consent{
    "record_consent",
    "Note the buyer's answer to a delay notice.",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"consent", "Answer", FieldKind::choice, true, "given", {}, {"given", "refused"}},
     {"words", "In the buyer's words", FieldKind::long_text}},
    run_record_consent};

}  // namespace tangmark::db
