// SPDX-License-Identifier: MIT
#include <algorithm>
#include <map>
#include <tuple>

#include "db/store/blade_state.h"
#include "db/store/blade_store.h"
#include "db/store/question_list.h"
#include "db/store/settings_store.h"

namespace tangmark::db {
namespace {

struct Waiting {
  std::string number, title, medium;
  Temperature set, low, high;
  Duration soak{}, soak_max{};
  Length thickness;
};

// Groups whose windows and soaks all overlap, begun with the coolest. Within a group the thick ones
// come out last, and one medium after another, so that tanks are not mixed up.
std::vector<std::vector<Waiting>> groups_of(std::vector<Waiting> all) {
  std::sort(all.begin(), all.end(),
            [](const Waiting& a, const Waiting& b) { return a.set < b.set; });
  std::vector<std::vector<Waiting>> groups;
  for (const Waiting& blade : all) {
    const auto fits = [&](const std::vector<Waiting>& group) {
      return std::all_of(group.begin(), group.end(), [&](const Waiting& other) {
        return std::max(blade.low, other.low) <= std::min(blade.high, other.high) &&
               std::max(blade.soak, other.soak) <= std::min(blade.soak_max, other.soak_max);
      });
    };
    const auto group = std::find_if(groups.begin(), groups.end(), fits);
    if (group == groups.end())
      groups.push_back({blade});
    else
      group->push_back(blade);
  }
  for (auto& group : groups)
    std::stable_sort(group.begin(), group.end(), [](const Waiting& a, const Waiting& b) {
      return std::tie(a.medium, a.thickness) < std::tie(b.medium, b.thickness);
    });
  return groups;
}

Outcome<Answer> answer_05(const ShopFile& shop, const Given&, Instant) {
  const auto settings = load_settings(shop);
  Answer answer{"Which blades can share tomorrow's hardening, and in what order do I pull?",
                {},
                {"Firing", "Pull", "Blade", "Title", "Window", "Soak", "Into"},
                {}};
  std::vector<Waiting> all;
  for (const auto& kept : blades_in_work(shop)) {
    const auto record = load_record(shop, kept);
    if (record.state.stage != blade::HeatStage::not_quenched) continue;
    // Next but for bench work: everything hot before it must be done.
    const auto step = std::find_if(record.route.begin(), record.route.end(),
                                   [](const auto& s) { return s.open() && s.temperature; });
    if (step == record.route.end() || step->operation != "harden") continue;
    const Temperature set = *step->temperature;
    const Duration soak = step->soak.value_or(std::chrono::minutes(10));
    all.push_back({std::to_string(kept.number), kept.title, step->medium.value_or("not set"), set,
                   step->low.value_or(set + TemperatureDifference::celsius(-5)),
                   step->high.value_or(set + TemperatureDifference::celsius(5)), soak,
                   step->soak_max.value_or(soak + std::chrono::minutes(20)),
                   kept.thickness.value_or(Length())});
  }
  const auto groups = groups_of(all);
  for (std::size_t g = 0; g < groups.size(); ++g)
    for (std::size_t i = 0; i < groups[g].size(); ++i) {
      const Waiting& b = groups[g][i];
      answer.rows.push_back({std::to_string(g + 1), std::to_string(i + 1), b.number, b.title,
                             to_text(b.low, settings.temperature_unit) + " to " +
                                 to_text(b.high, settings.temperature_unit),
                             to_text(b.soak) + " to " + to_text(b.soak_max), b.medium});
    }
  answer.sentences.push_back(all.empty()
                                 ? "No blade is ready to harden."
                                 : std::to_string(all.size()) + " blades are ready to harden, in " +
                                       std::to_string(groups.size()) +
                                       " groups that may share a firing. Slots, length and the "
                                       "clock are looked at by the plan.");
  return answer;
}

}  // namespace

const Question question_05{
    5, "Which blades can share tomorrow's hardening, and in what order do I pull?", {}, answer_05};

}  // namespace tangmark::db
