// SPDX-License-Identifier: MIT
#include "db/store/step_advice_reader.h"

#include <algorithm>

#include "db/store/billet_store.h"
#include "db/store/family_tree.h"
#include "db/store/grade_store.h"
#include "domain/measure/utf8.h"
#include "domain/steel/layer_count.h"
#include "domain/steel/step_caution.h"
#include "domain/stock/steel_match.h"

namespace tangmark::db {
namespace {

using steel::Advice;
using steel::HeatStep;
using steel::StepSteel;

std::optional<steel::Composition> analysis_of(const ShopFile& shop, const blade::Blade& blade,
                                              const steel::Grade& grade,
                                              const steel::GradeBook& book) {
  if (!blade.piece) return std::nullopt;
  std::optional<steel::Composition> found;
  for (const stock::KeptLot& lot : ancestors_of(shop, *blade.piece).lots) {
    if (!lot.grade || !lot.analysis || !stock::same_grade(*lot.grade, grade.name, book)) continue;
    auto read = steel::parse_composition(*lot.analysis, "analysis");
    if (!read || found) return std::nullopt;  // two melts have no one analysis
    found = std::move(read).value();
  }
  return found;
}

HeatStep step_of(const BladeOnRecord& record, std::string operation) {
  HeatStep step;
  step.operation = std::move(operation);
  step.section = record.blade.thickness;
  if (step.operation == "temper") step.earlier_tempers = tempers_since_quench(record);
  return step;
}

std::vector<Advice> cautions_only(const HeatStep& step) {
  std::vector<Advice> advice;
  for (auto& caution : steel::cautions_for(step.operation, step.bath))
    advice.push_back({steel::AdviceKind::caution, false, caution.sentence, caution.source});
  return advice;
}

// Of several steels each estimate names its own; what was said of one is not said again.
std::vector<Advice> advice_for(const HeatStep& step, const std::vector<StepSteel>& steels,
                               TemperatureUnit unit) {
  if (steels.empty()) return cautions_only(step);
  std::vector<Advice> all;
  for (const StepSteel& steel : steels) {
    for (Advice& one : steel::advise(step, steel, unit)) {
      if (steels.size() > 1 && one.kind == steel::AdviceKind::estimate)
        one.sentence = steel.grade.name + ": " + one.sentence;
      const bool said = std::any_of(all.begin(), all.end(), [&](const Advice& other) {
        return other.sentence == one.sentence;
      });
      if (!said) all.push_back(std::move(one));
    }
  }
  // Windows and estimates of every steel first, then what may hurt.
  std::stable_partition(all.begin(), all.end(),
                        [](const Advice& one) { return one.kind != steel::AdviceKind::caution; });
  return all;
}

std::vector<Advice> advice_of(const ShopFile& shop, const BladeOnRecord& record,
                              const HeatStep& step, TemperatureUnit unit) {
  return advice_for(step, steels_of(shop, record.blade), unit);
}

// The steels of a billet's parts, each once.
std::vector<StepSteel> steels_of(const ShopFile& shop, const stock::KeptBillet& billet) {
  std::vector<StepSteel> steels;
  const steel::GradeBook book = grade_book(shop);
  for (const auto& part : parts_of_billet(shop, billet.id)) {
    for (const stock::KeptLot& lot : ancestors_of(shop, part.piece).lots) {
      const steel::Grade* grade = book.find(lot.grade.value_or(""));
      if (grade == nullptr) continue;
      const bool known = std::any_of(steels.begin(), steels.end(), [&](const StepSteel& other) {
        return other.grade.name == grade->name;
      });
      if (!known) steels.push_back({*grade, std::nullopt});
    }
  }
  return steels;
}

std::string hot_work_of(stock::StageWork work) {
  switch (work) {
    case stock::StageWork::weld:
    case stock::StageWork::fold:
      return "forge-weld";
    case stock::StageWork::draw:
      return "forge";
    case stock::StageWork::twist:
      return "twist";
    case stock::StageWork::stack:
    case stock::StageWork::cut:
    case stock::StageWork::crop:
      break;
  }
  return {};
}

bool differ_in_carbon(const std::vector<StepSteel>& steels) {
  constexpr double noticed_wt = 0.05;
  double least = 100, most = 0;
  for (const StepSteel& steel : steels) {
    const double carbon = steel::reckoned_composition(steel).weight_percent(steel::Element::C);
    least = std::min(least, carbon);
    most = std::max(most, carbon);
  }
  return most - least >= noticed_wt;
}

}  // namespace

std::string bath_word(std::string_view medium) {
  const std::string words = folded(medium);
  for (const char* bath : {"oil", "brine", "water", "salt", "air"})
    if (words.find(bath) != std::string::npos) return bath;
  return words.find("plate") != std::string::npos ? "air" : "";
}

std::vector<StepSteel> steels_of(const ShopFile& shop, const blade::Blade& blade) {
  std::vector<StepSteel> steels;
  const steel::GradeBook book = grade_book(shop);
  for (const std::string& name : stock::grades_named(blade.grade.value_or(""))) {
    const steel::Grade* grade = book.find(name);
    if (grade) steels.push_back({*grade, analysis_of(shop, blade, *grade, book)});
  }
  return steels;
}

std::vector<steel::TemperStep> tempers_since_quench(const BladeOnRecord& record) {
  std::vector<steel::TemperStep> tempers;
  for (const blade::LogEntry& entry : record.log) {
    if (entry.operation != "temper" || !entry.hold || !record.state.quenched_at) continue;
    const auto at = entry.read ? entry.read : entry.set;
    if (at && entry.started_at >= *record.state.quenched_at) tempers.push_back({*at, *entry.hold});
  }
  return tempers;
}

std::vector<Advice> advice_on(const ShopFile& shop, const BladeOnRecord& record,
                              const blade::LogEntry& entry, TemperatureUnit unit) {
  HeatStep step = step_of(record, entry.operation);
  step.at = entry.read ? entry.read : entry.set;
  step.hold = entry.hold;
  if (entry.medium && entry.operation == "harden") step.bath = bath_word(*entry.medium);
  return advice_of(shop, record, step, unit);
}

std::vector<Advice> advice_on(const ShopFile& shop, const BladeOnRecord& record,
                              const blade::RouteStep& planned, TemperatureUnit unit) {
  HeatStep step = step_of(record, planned.operation);
  step.at = planned.temperature;
  step.hold = planned.soak;
  step.fall_per_hour = planned.cool_per_h;
  if (planned.medium && planned.operation == "harden") step.bath = bath_word(*planned.medium);
  return advice_of(shop, record, step, unit);
}

std::vector<Advice> advice_on(const ShopFile& shop, const kiln::Firing& firing,
                              TemperatureUnit unit) {
  std::vector<Advice> all;
  for (const kiln::FiringBlade& member : firing.blades) {
    const auto record = load_record(shop, member.blade);
    if (!record) continue;
    const auto planned =
        std::find_if(record->route.begin(), record->route.end(),
                     [&](const auto& step) { return member.step && step.id == *member.step; });
    if (planned == record->route.end()) continue;
    blade::RouteStep step = *planned;
    step.temperature = firing.set;
    step.soak = firing.soak;
    for (Advice& one : advice_on(shop, *record, step, unit)) all.push_back(std::move(one));
  }
  return all;
}

std::vector<Advice> advice_on(const ShopFile& shop, const stock::KeptBillet& billet,
                              const stock::WeldStage& stage, TemperatureUnit unit) {
  HeatStep step;
  step.operation = hot_work_of(stage.operation);
  if (step.operation.empty()) return {};
  step.at = stage.temperature;
  const auto steels = steels_of(shop, billet);
  if (stage.thickness && billet.layers && *billet.layers > 1 && differ_in_carbon(steels))
    step.layer = steel::mean_layer_thickness(*stage.thickness, *billet.layers);
  return advice_for(step, steels, unit);
}

}  // namespace tangmark::db
