// SPDX-License-Identifier: MIT
#include "domain/steel/step_advice.h"

#include <iterator>

#include "domain/steel/step_caution.h"

namespace tangmark::steel {

std::string_view word_of(AdviceKind kind) {
  switch (kind) {
    case AdviceKind::window:
      return "window";
    case AdviceKind::estimate:
      return "estimate";
    case AdviceKind::caution:
      break;
  }
  return "caution";
}

std::vector<Advice> advise(const HeatStep& step, const StepSteel& steel, TemperatureUnit unit) {
  std::vector<Advice> all = window_advice(step, steel.grade, unit);
  for (auto part : {iron_carbon_advice(step, steel, unit), welding_advice(step, steel, unit),
                    quench_advice(step, steel, unit), temper_advice(step, steel, unit)}) {
    std::move(part.begin(), part.end(), std::back_inserter(all));
  }
  for (Caution& caution : cautions_for(step.operation, step.bath)) {
    all.push_back(
        {AdviceKind::caution, false, std::move(caution.sentence), std::move(caution.source)});
  }
  return all;
}

}  // namespace tangmark::steel
