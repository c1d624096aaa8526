// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/store/blade_state.h"
#include "db/store/blade_store.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

// Blades whose next heat is a temper, with its set point; those that may share an oven stand
// together.
Outcome<Answer> answer_04(const ShopFile& shop, const Given&, Instant now) {
  const auto settings = load_settings(shop);
  Answer answer{"Which blades can go in tonight's temper, and which are on their second?",
                {},
                {"Set point", "Blade", "Title", "Temper", "State", "Length"},
                {}};
  int second = 0;
  for (const auto& kept : blades_in_work(shop)) {
    const auto record = load_record(shop, kept);
    const bool quenched = record.state.stage == blade::HeatStage::quenched ||
                          record.state.stage == blade::HeatStage::tempered_in_part;
    if (!quenched) continue;
    const auto step = std::find_if(record.route.begin(), record.route.end(), [](const auto& s) {
      return s.operation == "temper" && s.open();
    });
    const bool known = step != record.route.end() && step->temperature;
    if (record.state.tempers_done > 0) ++second;
    answer.rows.push_back(
        {known ? to_text(*step->temperature, settings.temperature_unit) : "not set",
         std::to_string(kept.number), kept.title,
         std::to_string(record.state.tempers_done + 1) + " of " +
             std::to_string(std::max<std::int64_t>(1, record.state.tempers_planned)),
         blade::state_text(record.state, now), to_text(kept.length, settings.length_unit)});
  }
  std::sort(answer.rows.begin(), answer.rows.end());
  if (answer.rows.empty())
    answer.sentences.push_back("No blade waits for a temper.");
  else
    answer.sentences.push_back(
        std::to_string(answer.rows.size()) + " wait for a temper, " + std::to_string(second) +
        " of them for a later one. Those of one set point may share the oven.");
  return answer;
}

}  // namespace

const Question question_04{
    4, "Which blades can go in tonight's temper, and which are on their second?", {}, answer_04};

}  // namespace tangmark::db
