// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/outside_work_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run_note_aftercare(Work& work, Form& form) {
  const auto blade = asked(work, form, "blade", blade_id_named);
  const auto complaint = form.text("complaint");
  const auto condition = form.maybe_text("condition");
  const auto cause = form.maybe_text("cause");
  const auto done = form.maybe_text("work");
  const auto hands_on = form.duration("hands_on");
  const auto paid_by = form.maybe_text("paid_by");
  if (form.refused()) return form.problems();
  insert_aftercare(work.shop(),
                   {*blade, work.at(), complaint, condition, cause, done, hands_on, paid_by});
  return work.done(form.text("blade"));
}

}  // namespace

const Action note_aftercare{
    "note_aftercare",
    "Note a return, re-sharpening or warranty job; its hours count into what the knife really "
    "cost.",
    {{"blade", "Blade", FieldKind::blade, true, "41"},
     {"complaint", "What was wrong", FieldKind::long_text, true, "edge chips at the heel"},
     {"condition", "Condition on arrival", FieldKind::long_text, false, "two chips of 1 mm"},
     {"cause", "Cause", FieldKind::text, false, "used on bone"},
     {"work", "Work done", FieldKind::long_text, false, "edge set back 1.5 mm and sharpened"},
     {"hands_on", "Hands on", FieldKind::duration, false, "40 min", "0 min"},
     {"paid_by", "Paid by", FieldKind::choice, false, "shop", {}, {"shop", "buyer", "shared"}}},
    run_note_aftercare};

}  // namespace tangmark::db
