// SPDX-License-Identifier: MIT
#include "gui/desk/bench_advice.h"

#include "db/store/blade_store.h"
#include "db/store/route_store.h"
#include "db/store/step_advice_reader.h"

namespace tangmark::desk {
namespace {

std::string operation_of(const std::string& action, const Typed& filled) {
  if (action == "log_quench") return "harden";
  if (action == "log_temper") return "temper";
  return action == "log_step" ? typed_value(filled, "operation") : std::string();
}

blade::RouteStep planned_step(const Sight& sight, const blade::KeptBlade& blade,
                              const std::string& operation, const Typed& filled) {
  blade::RouteStep step{.blade = blade.id};
  if (const auto open = db::open_step(sight.shop, blade.id, operation)) step = *open;
  step.operation = operation;
  if (const auto set =
          parse_temperature(typed_value(filled, "set"), sight.settings.temperature_unit, "set"))
    step.temperature = *set;
  return step;
}

void add(std::string& text, const std::vector<steel::Advice>& advice, bool heed, bool caution) {
  for (const steel::Advice& one : advice) {
    const bool is_caution = one.kind == steel::AdviceKind::caution;
    if (one.heed == heed && is_caution == caution) text += (text.empty() ? "" : " ") + one.sentence;
  }
}

}  // namespace

std::string advice_before(const Sight& sight, const std::string& action, const Typed& filled) {
  const std::string operation = operation_of(action, filled);
  const auto number = number_of(typed_value(filled, "blade"));
  const auto blade = number ? db::find_blade(sight.shop, *number) : std::nullopt;
  if (operation.empty() || !blade) return {};
  const auto advice = db::advice_on(sight.shop, db::load_record(sight.shop, *blade),
                                    planned_step(sight, *blade, operation, filled),
                                    sight.settings.temperature_unit);
  std::string text;
  add(text, advice, true, false);
  add(text, advice, false, false);
  add(text, advice, false, true);
  return text;
}

}  // namespace tangmark::desk
