// SPDX-License-Identifier: MIT
#include "db/store/question_list.h"
#include "db/store/settings_store.h"
#include "db/store/trial_report.h"

namespace tangmark::db {
namespace {

Outcome<Answer> all_of(const ShopFile& shop) {
  Answer answer{
      "What have the trials shown?", {}, {"Trial", "Question", "Outcome", "Blades", "Ended"}, {}};
  for (const KeptTrial& trial : all_trials(shop))
    answer.rows.push_back({std::to_string(trial.number), trial.question,
                           std::string(word_of(trial.outcome)),
                           std::to_string(blades_of_trial(shop, trial).size()), trial.conclusion});
  if (answer.rows.empty())
    answer.sentences.push_back("No trial has been started. Start one with start_trial.");
  return answer;
}

Outcome<Answer> answer_25(const ShopFile& shop, const Given& given, Instant) {
  const auto number = given_text(given, "trial");
  if (!number) return all_of(shop);
  const auto trial = trial_named(shop, *number, "trial");
  if (!trial) return trial.problems();
  const auto blades = blades_of_trial(shop, *trial);
  const auto degrees = load_settings(shop).temperature_unit;
  return Answer{trial->question, trial_sentences(*trial, blades, degrees),
                trial_heads(*trial, degrees), trial_rows(*trial, blades)};
}

}  // namespace

const Question question_25{
    25,
    "What does this trial show, and what should the next blade be?",
    {{"trial", "Trial", FieldKind::text, false, "1; all of them when empty"}},
    answer_25};

}  // namespace tangmark::db
