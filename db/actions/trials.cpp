// SPDX-License-Identifier: MIT
#include "db/actions/blade_action_list.h"
#include "db/actions/form.h"
#include "db/actions/work.h"
#include "db/store/blade_store.h"
#include "db/store/trial_store.h"

namespace tangmark::db {
namespace {

std::vector<blade::KeptBlade> read_blades(Work& work, Form& form) {
  std::vector<blade::KeptBlade> blades;
  for (const std::string& number : form.list("blades")) {
    auto blade = blade_named(work.shop(), number, "blades");
    if (blade)
      blades.push_back(std::move(blade).value());
    else
      form.add(blade.problem());
  }
  return blades;
}

void put_in(Work& work, blade::TrialId trial, const std::vector<blade::KeptBlade>& blades) {
  for (const blade::KeptBlade& blade : blades)
    if (!put_in_trial(work.shop(), trial, blade.id, work.at()))
      work.warn("Blade " + std::to_string(blade.number) + " is in the trial already.");
}

Outcome<ActionResult> start(Work& work, Form& form) {
  Trial trial;
  trial.question = form.text("question");
  trial.variables = form.take(parse_trial_variables(form.text("variables"), "variables"));
  trial.outcome = form.word<blade::TrialOutcome>("outcome", blade::TrialOutcome::hardness);
  trial.started_at = work.at();
  const auto blades = read_blades(work, form);
  if (form.refused()) return form.problems();
  if (trial.variables.empty())
    return Problem{"variables", "What is varied is not said.", "Name at least one, such as soak."};
  trial.number = work.next_number("trial");
  put_in(work, insert_trial(work.shop(), trial), blades);
  return work.done(std::to_string(trial.number));
}

Outcome<KeptTrial> open_trial(Work& work, Form& form) {
  auto trial = trial_named(work.shop(), form.text("trial"), "trial");
  if (trial && trial->ended_at)
    return Problem{"trial", "Trial " + std::to_string(trial->number) + " is ended.",
                   "Start a new one."};
  return trial;
}

Outcome<ActionResult> run_add_trial(Work& work, Form& form) {
  const auto trial = open_trial(work, form);
  const auto blades = read_blades(work, form);
  if (!trial) form.add(trial.problem());
  if (form.refused()) return form.problems();
  if (blades.empty())
    return Problem{"blades", "No blade is named.", "Give their numbers, such as 41,42."};
  put_in(work, trial->id, blades);
  return work.done(std::to_string(trial->number));
}

Outcome<ActionResult> end(Work& work, Form& form) {
  const auto trial = open_trial(work, form);
  const std::string conclusion = form.text("conclusion");
  if (!trial) form.add(trial.problem());
  if (form.refused()) return form.problems();
  store_trial_end(work.shop(), trial->id, work.at(), conclusion);
  return work.done(std::to_string(trial->number));
}

}  // namespace

const Action start_trial{
    "start_trial",
    "Ask a question across blades: something varied against an outcome.",
    {{"question", "Question", FieldKind::text, true, "does a longer soak come out harder?"},
     {"variables", "What is varied", FieldKind::text, true,
      "soak,hardening temperature; the first is the one asked about"},
     {"outcome",
      "What comes out of it",
      FieldKind::choice,
      true,
      "hardness",
      "",
      {"hardness", "warp", "contrast"}},
     {"blades", "Blades", FieldKind::text, false, "41,42,43"}},
    start};

const Action add_to_trial{"add_to_trial",
                          "Put blades into a trial.",
                          {{"trial", "Trial", FieldKind::text, true, "1"},
                           {"blades", "Blades", FieldKind::text, true, "44,45"}},
                          run_add_trial};

const Action end_trial{
    "end_trial",
    "End a trial and say what was learnt.",
    {{"trial", "Trial", FieldKind::text, true, "1"},
     {"conclusion", "What was learnt", FieldKind::long_text, true, "no difference in five blades"}},
    end};

}  // namespace tangmark::db
