// SPDX-License-Identifier: MIT
#include "db/store/blade_state.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

using namespace blade;

std::string held_text(const BladeState& state) {
  switch (state.held_by) {
    case HeldBy::nothing:
      return "";
    case HeldBy::snap_temper:
      return "snap tempered";
    case HeldBy::held_warm:
      return state.held_until ? "was held warm" : "held warm";
  }
  return "";
}

Outcome<Answer> answer_06(const ShopFile& shop, const Given&, Instant now) {
  const auto settings = load_settings(shop);
  Answer answer{"Which blade has been quenched and not tempered?",
                {},
                {"Blade", "Title", "Quenched", "In", "Waits", "Temper due by", "Meanwhile"},
                {}};
  int late = 0;
  for (const WaitingBlade& waiting : blades_waiting_for_temper(shop)) {
    const BladeState& state = waiting.state;
    if (waiting.due && now >= *waiting.due) ++late;
    answer.rows.push_back({std::to_string(state.number), waiting.blade.title,
                           to_text(*state.quenched_at, settings.zone),
                           state.quench_medium.value_or(""), to_text(now - *state.quenched_at),
                           waiting.due ? to_text(*waiting.due, settings.zone) : "",
                           held_text(state)});
  }
  if (answer.rows.empty())
    answer.sentences.push_back("No blade waits for its temper.");
  else
    answer.sentences.push_back(std::to_string(answer.rows.size()) + " waiting for a temper.");
  if (late > 0)
    answer.sentences.push_back(std::to_string(late) +
                               " past the shop's limit: temper now and look for cracks.");
  return answer;
}

}  // namespace

const Question question_06{6, "Which blade has been quenched and not tempered?", {}, answer_06};

}  // namespace tangmark::db
