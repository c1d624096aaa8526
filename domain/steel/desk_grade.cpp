// SPDX-License-Identifier: MIT
// Computations of the desk about a grade: its figures, an analysis against them, advice on a step.
#include <cmath>

#include "domain/steel/analysis_check.h"
#include "domain/steel/desk_calculations.h"
#include "domain/steel/desk_input.h"
#include "domain/steel/step_advice.h"

namespace tangmark::steel {
namespace {

std::string_view words_of(LimitVerdict verdict) {
  switch (verdict) {
    case LimitVerdict::inside:
      return "inside";
    case LimitVerdict::below:
      return "below";
    case LimitVerdict::above:
      return "above";
    case LimitVerdict::not_analysed:
      return "not analysed";
    case LimitVerdict::not_limited:
      break;
  }
  return "not limited";
}

DeskValue or_nothing(const std::optional<double>& number) {
  return number ? DeskValue(*number) : DeskValue();
}

DeskValue limits_value(const Grade& grade) {
  DeskValue::Fields limits;
  for (const ElementLimit& limit : grade.limits) {
    limits.push_back({std::string(symbol(limit.element)),
                      DeskValue::Fields{{"least", or_nothing(limit.least_percent)},
                                        {"most", or_nothing(limit.most_percent)},
                                        {"nominal", or_nothing(limit.nominal_percent)}}});
  }
  return limits;
}

DeskValue windows_value(const Grade& grade) {
  DeskValue::List windows;
  for (const HeatTreatWindow& window : grade.windows) {
    windows.push_back(DeskValue::Fields{{"operation", window.operation},
                                        {"low_c", window.low.in_celsius()},
                                        {"high_c", window.high.in_celsius()},
                                        {"cooling", window.cooling},
                                        {"source", window.source}});
  }
  return windows;
}

DeskValue elements_value(const AnalysisCheck& check) {
  DeskValue::Fields elements;
  for (const ElementCheck& element : check.elements) {
    elements.push_back({std::string(symbol(element.element)),
                        DeskValue::Fields{{"analysed", or_nothing(element.analysed_percent)},
                                          {"limit", to_text(element.limit)},
                                          {"verdict", words_of(element.verdict)}}});
  }
  return elements;
}

Outcome<DeskAnswer> grade(const DeskInput& input) {
  const auto found = input.grade("grade");
  if (!found) return found.problems();
  const Grade& grade = **found;
  DeskAnswer answer{{{"name", grade.name},
                     {"also", grade.also},
                     {"designation", grade.designation},
                     {"entered_by_shop", grade.origin == GradeOrigin::entered_by_shop},
                     {"limits", limits_value(grade)},
                     {"windows", windows_value(grade)},
                     {"source", grade.source}},
                    {}};
  if (!grade.note.empty()) answer.notes.push_back(grade.note + ".");
  if (!input.has("analysis")) return answer;
  const auto analysis = parse_composition(input.text("analysis"), "analysis");
  if (!analysis) return analysis.problems();
  const AnalysisCheck check = check_analysis(*analysis, grade);
  answer.fields.push_back({"inside_limits", check.inside_limits});
  answer.fields.push_back({"elements", elements_value(check)});
  answer.fields.push_back({"remarks", check.remarks});
  return answer;
}

void read_heat(const DeskInput& input, Gather& form, HeatStep& step) {
  if (input.has("at_c")) step.at = form.take(input.temperature("at_c"));
  if (input.has("hold_min")) {
    const double minutes = form.take(input.minutes("hold_min", 1));
    step.hold = std::chrono::duration_cast<Duration>(
        std::chrono::duration<double, std::ratio<60>>(minutes));
  }
  if (input.has("fall_c_per_h")) {
    const double fall = form.take(input.above_zero("fall_c_per_h"), 1.0);
    if (fall > 10'000) {
      form.add({"fall_c_per_h", "No kiln cools that fast.", "Give degrees C in an hour."});
    } else {
      step.fall_per_hour = TemperatureDifference::counts(std::llround(fall * 1800));
    }
  }
}

Outcome<DeskAnswer> advice(const DeskInput& input) {
  Gather form;
  HeatStep step;
  step.operation = input.text("operation");
  step.bath = input.text("bath");
  step.agitation = input.text("agitation");
  const Grade* grade = form.take(input.grade("grade"), static_cast<const Grade*>(nullptr));
  read_heat(input, form, step);
  if (input.has("section_mm")) step.section = form.take(input.length("section_mm"));
  if (input.has("earlier")) step.earlier_tempers = form.take(input.temper_steps("earlier"));
  std::optional<Composition> analysis;
  if (input.has("analysis"))
    analysis = form.take(parse_composition(input.text("analysis"), "analysis"));
  if (form.refused()) return form.problems();
  DeskValue::List said;
  for (const Advice& one : advise(step, {*grade, analysis})) {
    said.push_back(DeskValue::Fields{{"kind", word_of(one.kind)},
                                     {"heed", one.heed},
                                     {"sentence", one.sentence},
                                     {"source", one.source}});
  }
  return DeskAnswer{{{"advice", said}}, {}};
}

}  // namespace

std::vector<DeskCalculation> grade_calculations() {
  return {
      {"grade",
       "a grade's limits and windows, and an analysis against them",
       {{"grade", "", "", "the name of a grade", Need::required},
        {"analysis", "weight %", "", "a mill analysis such as C:0.95,Mn:0.4", Need::optional}},
       "beside each row: standards, data sheets and what the shop entered (grades.csv, "
       "windows.csv)",
       "limits are ladle limits; nothing is added for product analysis",
       grade},
      {"advice",
       "what the desk says about a heat-treat step",
       {{"grade", "", "", "the name of a grade", Need::required},
        {"operation", "", "", "harden, temper, normalize, anneal, thermal cycle, forge, etch ...",
         Need::required},
        {"at_c", "C", "", "temperature of the step", Need::optional},
        {"hold_min", "min", "", "time at temperature", Need::optional},
        {"bath", "", "", "oil, water, brine, salt or air", Need::optional},
        {"agitation", "", "", "none, mild, moderate, good, strong or violent", Need::optional},
        {"section_mm", "mm", "", "thickest hardened section", Need::optional},
        {"fall_c_per_h", "C/h", "", "of a controlled cool", Need::optional},
        {"earlier", "", "", "tempers since the quench, such as 204C/2h", Need::optional},
        {"analysis", "weight %", "", "the melt's own analysis", Need::optional}},
       "beside each sentence",
       "estimates, never a promise; nothing is said where nothing is known",
       advice},
  };
}

}  // namespace tangmark::steel
