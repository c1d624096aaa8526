// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/commission_store.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run_note_contact(Work& work, Form& form) {
  const auto commission = asked(work, form, "commission", commission_named);
  const auto channel = form.maybe_text("channel");
  const auto words = form.text("words");
  if (form.refused()) return form.problems();
  insert_contact(work.shop(), {commission->id, work.at(), channel, words});
  return work.done(std::to_string(commission->number));
}

}  // namespace

const Action note_contact{
    "note_contact",
    "Note what was said between shop and buyer.",
    {{"commission", "Commission", FieldKind::commission, true, "12"},
     {"channel", "By", FieldKind::text, false, "telephone"},
     {"words", "What was said", FieldKind::long_text, true, "wants a left-hand sheath"}},
    run_note_contact};

}  // namespace tangmark::db
