// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "db/actions/asked.h"
#include "db/actions/commission_action_list.h"
#include "db/store/learning_store.h"
#include "db/store/named.h"

namespace tangmark::db {
namespace {

Outcome<ActionResult> run_accept_estimate(Work& work, Form& form) {
  const auto model = asked(work, form, "model", model_named);
  const auto what = form.maybe_word<Learns>("what");
  const std::string of = form.text("of");
  if (form.refused()) return form.problems();
  for (const ModelProposal& one : model_proposals(work.shop(), model->id)) {
    if (one.of != of || (what && one.what != *what)) continue;
    accept_proposal(work.shop(), one, work.at());
    work.warn(fmt::format("{} of {}: {:.2f} {} before, {:.2f} now. {}", word_of(one.what), one.of,
                          one.now, one.unit, one.proposed, one.why));
    return work.done(model->name);
  }
  return Problem{"of", "The record proposes nothing for \"" + of + "\" of " + model->name + ".",
                 "Question 35 lists what it proposes."};
}

}  // namespace

const Action accept_estimate{
    "accept_estimate",
    "Take what the record proposes into a model; the figure it had stays on record.",
    {{"model", "Model", FieldKind::model, true, "chef 240"},
     {"what", "Which figure", FieldKind::choice, true, "hands-on", {}, choices_of<Learns>()},
     {"of", "Operation or thing used", FieldKind::text, true, "rough grind"}},
    run_accept_estimate};

}  // namespace tangmark::db
