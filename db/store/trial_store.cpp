// SPDX-License-Identifier: MIT
#include "db/store/trial_store.h"

#include <algorithm>

#include "db/row.h"
#include "db/store/blade_state.h"
#include "db/store/hardness_record.h"
#include "db/store/settings_store.h"
#include "db/store/step_advice_reader.h"
#include "domain/steel/temper_parameter.h"

namespace tangmark::db {
namespace {

using namespace blade;

constexpr double minute_s = 60;

std::string words_of(const std::vector<TrialVariable>& variables) {
  std::string words;
  for (const TrialVariable variable : variables)
    words += (words.empty() ? "" : ",") + std::string(word_of(variable));
  return words;
}

KeptTrial trial_from(const Query& row) {
  Trial trial;
  trial.number = row.integer("number");
  trial.question = row.text("question");
  // A word that this program does not know is one variable fewer.
  trial.variables = parse_trial_variables(row.text("variables"), "variables").value_or({});
  trial.outcome = row.word<TrialOutcome>("outcome");
  trial.started_at = row.instant("started_at");
  trial.ended_at = row.maybe_instant("ended_at");
  trial.conclusion = row.text("conclusion");
  return {row.id<TrialId>("id"), std::move(trial)};
}

template <class T, class Read>
void put(TrialBlade& blade, TrialVariable variable, const std::optional<T>& value, Read read) {
  if (value) blade.variables[variable] = read(*value);
}

// A temperature in the degrees that the shop reads.
struct Degrees {
  TemperatureUnit unit;
  double operator()(Temperature t) const {
    return unit == TemperatureUnit::fahrenheit ? t.in_fahrenheit() : t.in_celsius();
  }
};

void read_harden(const LogEntry& entry, Degrees degrees, TrialBlade& blade) {
  put(blade, TrialVariable::hardening_temperature, entry.read ? entry.read : entry.set, degrees);
  put(blade, TrialVariable::soak, entry.hold,
      [](Duration d) { return static_cast<double>(d.count()) / minute_s; });
  put(blade, TrialVariable::bath_temperature, entry.bath_temperature, degrees);
  put(blade, TrialVariable::seconds_to_bath, entry.to_bath,
      [](auto ms) { return static_cast<double>(ms.count()) / 1000; });
}

void read_etch(const LogEntry& entry, TrialBlade& blade) {
  put(blade, TrialVariable::etch_strength, entry.strength,
      [](Share s) { return 100 * s.fraction(); });
  put(blade, TrialVariable::etch_passes, entry.passes,
      [](std::int64_t n) { return static_cast<double>(n); });
}

void read_tempers(const BladeOnRecord& record, Degrees degrees, TrialBlade& blade) {
  const auto tempers = tempers_since_quench(record);
  if (tempers.empty()) return;
  const auto hottest = std::max_element(tempers.begin(), tempers.end(),
                                        [](const auto& a, const auto& b) { return a.at < b.at; });
  blade.variables[TrialVariable::temper_temperature] = degrees(hottest->at);
  if (const auto sum = steel::temper_sum(tempers))
    blade.variables[TrialVariable::temper_parameter] = sum->parameter;
}

std::optional<double> warp_of(const BladeOnRecord& record) {
  std::optional<double> most;
  for (const LogEntry& entry : record.log) {
    const bool since = record.state.quenched_at && entry.started_at >= *record.state.quenched_at;
    const bool quench = entry.operation == "harden";
    if (entry.warp && (since || quench))
      most = std::max(most.value_or(0), entry.warp->in_millimetres());
  }
  return most;
}

std::optional<double> contrast_of(const BladeOnRecord& record) {
  std::optional<double> last;
  for (const LogEntry& entry : record.log)
    if (entry.contrast) last = static_cast<double>(*entry.contrast);
  return last;
}

std::optional<double> outcome_of(const BladeOnRecord& record, TrialOutcome outcome) {
  switch (outcome) {
    case TrialOutcome::hardness:
      return mean_hrc_after_heat(record);
    case TrialOutcome::warp:
      return warp_of(record);
    case TrialOutcome::contrast:
      break;
  }
  return contrast_of(record);
}

TrialBlade read_blade(const BladeOnRecord& record, TrialOutcome outcome, Degrees degrees) {
  TrialBlade made;
  made.number = record.blade.number;
  std::int64_t cycles = 0;
  for (const LogEntry& entry : record.log) {
    if (entry.operation == "harden") read_harden(entry, degrees, made);
    if (entry.operation == "etch") read_etch(entry, made);
    if (entry.operation == "thermal cycle") cycles += entry.cycles.value_or(1);
  }
  if (cycles > 0) made.variables[TrialVariable::thermal_cycles] = static_cast<double>(cycles);
  put(made, TrialVariable::thickness, record.blade.thickness,
      [](Length l) { return l.in_millimetres(); });
  read_tempers(record, degrees, made);
  made.outcome = outcome_of(record, outcome);
  return made;
}

}  // namespace

std::vector<KeptTrial> all_trials(const ShopFile& shop) {
  Query query(shop, "SELECT * FROM trial ORDER BY number");
  std::vector<KeptTrial> trials;
  while (query.next()) trials.push_back(trial_from(query));
  return trials;
}

Outcome<KeptTrial> trial_named(const ShopFile& shop, std::string_view text,
                               std::string_view field) {
  Query query(shop, "SELECT * FROM trial WHERE CAST(number AS TEXT) = ?");
  query.bind(text);
  if (query.next()) return trial_from(query);
  return Problem{std::string(field), "There is no trial " + std::string(text) + ".",
                 "Give its number, or start one with start_trial."};
}

TrialId insert_trial(const ShopFile& shop, const Trial& trial) {
  Row row("trial");
  row.set("number", trial.number).set("question", trial.question);
  row.set("variables", words_of(trial.variables)).set_word("outcome", trial.outcome);
  row.set("started_at", trial.started_at);
  return TrialId{row.insert(shop)};
}

void store_trial_end(const ShopFile& shop, TrialId id, Instant at, const std::string& conclusion) {
  Row("trial").set("ended_at", at).set("conclusion", conclusion).update(shop, id.row());
}

bool put_in_trial(const ShopFile& shop, TrialId trial, BladeId blade, Instant at) {
  Query query(shop, "SELECT id FROM trial_blade WHERE trial_id = ? AND blade_id = ?");
  query.bind(trial).bind(blade);
  if (query.next()) return false;
  Row("trial_blade").set("trial_id", trial).set("blade_id", blade).set("added_at", at).insert(shop);
  return true;
}

std::vector<TrialBlade> blades_of_trial(const ShopFile& shop, const KeptTrial& trial) {
  Query query(shop, R"(
SELECT b.id FROM trial_blade t JOIN blade b ON b.id = t.blade_id WHERE t.trial_id = ? ORDER BY b.number)");
  query.bind(trial.id);
  const Degrees degrees{load_settings(shop).temperature_unit};
  std::vector<TrialBlade> blades;
  while (query.next())
    if (const auto record = load_record(shop, query.id<BladeId>("id")))
      blades.push_back(read_blade(*record, trial.outcome, degrees));
  return blades;
}

Outcome<std::vector<TrialVariable>> parse_trial_variables(std::string_view text,
                                                          std::string_view field) {
  std::vector<TrialVariable> variables;
  Gather form;
  while (!text.empty()) {
    const auto comma = std::min(text.find(','), text.size());
    std::string_view word = text.substr(0, comma);
    while (word.starts_with(' ')) word.remove_prefix(1);
    while (word.ends_with(' ')) word.remove_suffix(1);
    text.remove_prefix(std::min(comma + 1, text.size()));
    const auto variable = of_word<TrialVariable>(word, field);
    if (!variable) {
      form.add(variable.problem());
    } else if (std::find(variables.begin(), variables.end(), *variable) != variables.end()) {
      form.add({std::string(field), std::string(word) + " is named twice.", "Name it once."});
    } else {
      variables.push_back(*variable);
    }
  }
  if (form.refused()) return form.problems();
  return variables;
}

}  // namespace tangmark::db
