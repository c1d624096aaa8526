// SPDX-License-Identifier: MIT
#include "db/store/trial_report.h"

#include "domain/steel/figure_text.h"

namespace tangmark::db {

std::string measure_title(std::string_view word, std::string_view unit) {
  return std::string(word) + (unit.empty() ? "" : ", " + std::string(unit));
}

std::vector<std::string> trial_sentences(const Trial& trial,
                                         const std::vector<blade::TrialBlade>& blades,
                                         TemperatureUnit degrees) {
  std::vector<std::string> sentences;
  for (const auto& finding : findings_of(blades, trial.variables, trial.outcome))
    sentences.push_back(finding.words);
  const auto next = next_blade(blades, trial.variables, degrees);
  if (next && !trial.ended_at) sentences.push_back(next->words);
  if (trial.ended_at) sentences.push_back("Ended: " + trial.conclusion);
  return sentences;
}

std::vector<std::string> trial_heads(const Trial& trial, TemperatureUnit degrees) {
  std::vector<std::string> heads{"Blade"};
  for (const auto variable : trial.variables)
    heads.push_back(measure_title(word_of(variable), blade::unit_of(variable, degrees)));
  heads.push_back(measure_title(word_of(trial.outcome), blade::unit_of(trial.outcome)));
  return heads;
}

std::vector<std::vector<std::string>> trial_rows(const Trial& trial,
                                                 const std::vector<blade::TrialBlade>& blades) {
  std::vector<std::vector<std::string>> rows;
  for (const blade::TrialBlade& blade : blades) {
    std::vector<std::string> row{std::to_string(blade.number)};
    for (const auto variable : trial.variables) {
      const auto at = blade.variables.find(variable);
      row.push_back(at == blade.variables.end() ? "" : steel::rounded_text(at->second, 2));
    }
    row.push_back(blade.outcome ? steel::rounded_text(*blade.outcome, 2) : "");
    rows.push_back(std::move(row));
  }
  return rows;
}

}  // namespace tangmark::db
