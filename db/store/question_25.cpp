// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "db/store/question_list.h"
#include "db/store/trial_store.h"
#include "domain/steel/figure_text.h"

namespace tangmark::db {
namespace {

using steel::rounded_text;

std::string head(std::string_view word, std::string_view unit) {
  return unit.empty() ? std::string(word) : fmt::format("{}, {}", word, unit);
}

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

Outcome<Answer> answer(const ShopFile& shop, const Given& given, Instant) {
  const auto number = given_text(given, "trial");
  if (!number) return all_of(shop);
  const auto trial = trial_named(shop, *number, "trial");
  if (!trial) return trial.problems();
  const auto blades = blades_of_trial(shop, *trial);
  Answer answer{trial->question, {}, {"Blade"}, {}};
  for (const auto variable : trial->variables)
    answer.columns.push_back(head(word_of(variable), blade::unit_of(variable)));
  answer.columns.push_back(head(word_of(trial->outcome), blade::unit_of(trial->outcome)));
  for (const blade::TrialBlade& blade : blades) {
    std::vector<std::string> row{std::to_string(blade.number)};
    for (const auto variable : trial->variables) {
      const auto at = blade.variables.find(variable);
      row.push_back(at == blade.variables.end() ? "" : rounded_text(at->second, 2));
    }
    row.push_back(blade.outcome ? rounded_text(*blade.outcome, 2) : "");
    answer.rows.push_back(std::move(row));
  }
  for (const auto& finding : findings_of(blades, trial->variables, trial->outcome))
    answer.sentences.push_back(finding.words);
  if (const auto next = next_blade(blades, trial->variables); next && !trial->ended_at)
    answer.sentences.push_back(next->words);
  if (trial->ended_at) answer.sentences.push_back("Ended: " + trial->conclusion);
  return answer;
}

}  // namespace

const Question question_25{
    25,
    "What does this trial show, and what should the next blade be?",
    {{"trial", "Trial", FieldKind::text, false, "1; all of them when empty"}},
    answer};

}  // namespace tangmark::db
