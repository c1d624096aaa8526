// SPDX-License-Identifier: MIT
// Computations of the desk about hardness and tempering.
#include "domain/steel/desk_calculations.h"
#include "domain/steel/desk_input.h"
#include "domain/steel/hardness_scale.h"
#include "domain/steel/temper_hardness.h"
#include "domain/steel/temper_parameter.h"

namespace tangmark::steel {
namespace {

Outcome<DeskAnswer> hardness(const DeskInput& input) {
  const auto which = input.one_of({"hrc", "hv"});
  if (!which) return which.problems();
  const auto figure = input.number(*which == 0 ? "hrc" : "hv");
  if (!figure) return figure.problems();
  const std::vector<std::string> notes = {"Converted (ASTM E140), not measured on this scale."};
  if (*which == 0) {
    const auto hv = to_vickers({*figure});
    if (!hv) return hv.problems();
    return DeskAnswer{{{"hv", hv->points}}, notes};
  }
  const auto hrc = to_rockwell_c({*figure});
  if (!hrc) return hrc.problems();
  return DeskAnswer{{{"hrc", hrc->points}}, notes};
}

Outcome<DeskAnswer> temper(const DeskInput& input) {
  Gather form;
  const auto steps = form.take(input.temper_steps("steps"));
  const double c = form.take(input.number("c"));
  if (form.refused()) return form.problems();
  const auto sum = temper_sum(steps, c);
  if (!sum) return sum.problems();
  DeskValue::List per_step;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    per_step.push_back(
        DeskValue::Fields{{"temperature_c", steps[i].at.in_celsius()},
                          {"minutes", static_cast<double>(steps[i].hold.count()) / 60'000},
                          {"parameter", sum->step_parameters[i]},
                          {"equivalent_min", sum->step_equivalent_min[i]}});
  }
  DeskAnswer answer{
      {{"equivalent_min", sum->equivalent_min},
       {"parameter", sum->parameter},
       {"per_step", per_step},
       {"at_c", steps.back().at.in_celsius()},
       {"extrapolated", sum->extrapolated}},
      {"Compares tempers of the same quenched structure only; says nothing of retained "
       "austenite, secondary hardening or another steel."}};
  if (sum->extrapolated) {
    answer.notes.emplace_back(
        "A step lies outside the tests of 1945 (100 to 700 C, 10 s to 24 h): "
        "extrapolated.");
  }
  return answer;
}

DeskValue band_of(const Outcome<ExpectedHardness>& expected) {
  if (!expected) return {};
  return DeskValue::Fields{{"hrc_low", expected->low.points}, {"hrc_high", expected->high.points}};
}

// What is expected after the first, the second temper and so on; nothing where a table ends.
DeskValue after_each(const Grade& grade, const std::vector<TemperStep>& steps) {
  DeskValue::List rows;
  std::vector<TemperStep> so_far;
  for (const TemperStep& step : steps) {
    so_far.push_back(step);
    const auto expected = expected_hardness(grade, so_far);
    rows.push_back(
        DeskValue::Fields{{"temperature_c", step.at.in_celsius()},
                          {"minutes", static_cast<double>(step.hold.count()) / 60'000},
                          {"hrc_low", expected ? DeskValue(expected->low.points) : DeskValue()},
                          {"hrc_high", expected ? DeskValue(expected->high.points) : DeskValue()}});
  }
  return rows;
}

Outcome<DeskAnswer> expect(const DeskInput& input) {
  Gather form;
  const Grade* grade = form.take(input.grade("grade"), static_cast<const Grade*>(nullptr));
  const auto steps = form.take(input.temper_steps("steps"));
  if (form.refused()) return form.problems();
  const auto expected = expected_hardness(*grade, steps);
  if (!expected) return expected.problems();
  return DeskAnswer{{{"hrc_low", expected->low.points},
                     {"hrc_high", expected->high.points},
                     {"sources", expected->sources},
                     {"as_quenched", band_of(expected_as_quenched(*grade))},
                     {"after_each", after_each(*grade, steps)}},
                    {expected->band + "."}};
}

}  // namespace

std::vector<DeskCalculation> temper_calculations() {
  return {
      {"hardness",
       "Rockwell C to Vickers and back",
       {{"hrc", "HRC", "", "Rockwell C hardness", Need::one_of_set},
        {"hv", "HV", "", "Vickers hardness", Need::one_of_set}},
       "ASTM E140 Table 1, every whole row, linear between neighbours",
       "20 to 68 HRC, 238 to 940 HV; refused outside",
       hardness},
      {"temper",
       "several tempers as one",
       {{"steps", "", "", "temperature/time with commas, such as 204C/120min,204C/120min",
         Need::required},
        {"c", "", "20", "the constant, for times in hours", Need::optional}},
       "Hollomon & Jaffe, Trans. AIME (1945): kelvin x (c + log10 hours); each step turned into "
       "minutes at the last step's temperature and added",
       "tested 1945 from 100 to 700 C and 10 s to 24 h; outside it is marked extrapolated",
       temper},
      {"expect",
       "the hardness that temper tables let one expect",
       {{"grade", "", "", "a grade with a temper table", Need::required},
        {"steps", "", "", "temperature/time with commas, such as 204C/120min,204C/120min",
         Need::required}},
       "temper tables as published or as the shop entered them, interpolated in the temper "
       "parameter "
       "(c 20)",
       "within the table; refused outside and for grades without one",
       expect},
  };
}

}  // namespace tangmark::steel
