// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/promise_store.h"

namespace tangmark::db {
namespace {

using namespace commission;

Outcome<ActionResult> run_tell_delay(Work& work, Form& form) {
  const auto commission = asked(work, form, "commission", commission_named);
  const auto new_day = form.date("new_day");
  const auto words = form.text("words");
  const auto standing = commission ? standing_promise(work.shop(), commission->id) : std::nullopt;
  if (commission && is_over(commission->state))
    form.add({"commission", "The commission is over.", "There is nobody left to tell."});
  else if (commission && !standing)
    form.add({"commission", "No day was promised yet.", "Promise one with promise_date."});
  if (standing && form.has("new_day") && new_day <= standing->day)
    form.add({"new_day", to_text(standing->day) + " is promised; this is no delay.",
              "Use promise_date for an earlier day."});
  if (form.refused()) return form.problems();
  insert_delay_notice(work.shop(),
                      {commission->id, work.at(), new_day, words, Consent::asked, std::nullopt});
  insert_promise(work.shop(),
                 {commission->id, new_day, work.at(), words, "the buyer, by delay notice"});
  work.warn("Silence is not consent: note the answer with record_consent.");
  return work.done(to_stored(new_day));
}

}  // namespace

const Action tell_delay{"tell_delay",
                        "Note that the buyer was told of a later day and asked for consent.",
                        {{"commission", "Commission", FieldKind::commission, true, "12"},
                         {"new_day", "New day", FieldKind::date, true, "2027-04-20"},
                         {"words", "What was said", FieldKind::long_text, true,
                          "the billet failed; a new one is made"}},
                        run_tell_delay};

}  // namespace tangmark::db
