// SPDX-License-Identifier: MIT
// A step against the published window of its grade.
#include "domain/steel/figure_text.h"
#include "domain/steel/step_advice.h"

namespace tangmark::steel {
namespace {

// The usual tolerance of a single published figure: 25 F.
constexpr TemperatureDifference usual_tolerance = TemperatureDifference::fahrenheit(25);

std::string degrees(TemperatureDifference difference, TemperatureUnit unit) {
  const bool fahrenheit = unit == TemperatureUnit::fahrenheit;
  const double figure = fahrenheit ? difference.kelvins() * 1.8 : difference.kelvins();
  return rounded_text(figure, 0) + (fahrenheit ? " °F" : " °C");
}

Temperature rounded(Temperature t, TemperatureUnit unit) {
  if (unit == TemperatureUnit::fahrenheit) return t;
  return Temperature::celsius(t.whole_celsius());
}

std::string shown(const HeatTreatWindow& window, TemperatureUnit unit) {
  const std::string low = to_text(rounded(window.low, unit), unit);
  if (window.low == window.high) return low;
  return low + " to " + to_text(rounded(window.high, unit), unit);
}

std::string whose(const HeatTreatWindow& window) {
  return window.origin == GradeOrigin::entered_by_shop ? "shop's own" : "published";
}

Advice of_window(const HeatTreatWindow& window, bool heed, std::string sentence) {
  return {AdviceKind::window, heed, std::move(sentence), window.source};
}

Advice of_temperature(const HeatStep& step, const HeatTreatWindow& window, const Grade& grade,
                      TemperatureUnit unit) {
  const std::string at = to_text(*step.at, unit);
  const std::string published = "the " + whose(window) + " window to " + window.operation + ' ' +
                                grade.name + " (" + shown(window, unit) + ")";
  const bool single = window.low == window.high;
  const TemperatureDifference none;
  const TemperatureDifference below = window.low - *step.at;
  const TemperatureDifference above = *step.at - window.high;
  const TemperatureDifference allowed = single ? usual_tolerance : none;
  if (below > allowed) {
    return of_window(window, true,
                     at + " is " + degrees(below, unit) + " below " + published + ".");
  }
  if (above > allowed) {
    return of_window(window, true,
                     at + " is " + degrees(above, unit) + " above " + published + ".");
  }
  return of_window(window, false, at + " lies within " + published + ".");
}

// The hold and the rate of a slow cool.
std::vector<Advice> of_times(const HeatStep& step, const HeatTreatWindow& window,
                             TemperatureUnit unit) {
  std::vector<Advice> advice;
  const std::string than = " than the " + whose(window) + ' ';
  if (step.hold && window.hold_least && *step.hold < *window.hold_least) {
    advice.push_back(of_window(window, true,
                               "A hold of " + tangmark::to_text(*step.hold) + " is shorter" + than +
                                   tangmark::to_text(*window.hold_least) + "."));
  }
  if (step.hold && window.hold_most && *step.hold > *window.hold_most) {
    advice.push_back(of_window(window, true,
                               "A hold of " + tangmark::to_text(*step.hold) + " is longer" + than +
                                   tangmark::to_text(*window.hold_most) + "."));
  }
  if (step.fall_per_hour && window.most_fall_per_hour &&
      *step.fall_per_hour > *window.most_fall_per_hour) {
    advice.push_back(of_window(window, true,
                               "Cooling by " + degrees(*step.fall_per_hour, unit) +
                                   " an hour is faster" + than +
                                   degrees(*window.most_fall_per_hour, unit) + " an hour."));
  }
  return advice;
}

}  // namespace

std::vector<Advice> window_advice(const HeatStep& step, const Grade& grade, TemperatureUnit unit) {
  std::vector<Advice> advice;
  const HeatTreatWindow* window = grade.window_for(step.operation);
  if (!window) {
    const bool should_have = step.operation == "harden" || step.operation == "temper" ||
                             step.operation == "normalize" || step.operation == "anneal";
    if (should_have) {
      advice.push_back({AdviceKind::window, false,
                        "No published window to " + step.operation + ' ' + grade.name +
                            " is on file; follow the supplier's sheet.",
                        grade.source});
    }
    return advice;
  }
  if (step.at) advice.push_back(of_temperature(step, *window, grade, unit));
  for (Advice& one : of_times(step, *window, unit)) advice.push_back(std::move(one));
  if (!window->note.empty()) {
    advice.push_back(of_window(*window, false, "The sheet adds: " + window->note + "."));
  }
  return advice;
}

}  // namespace tangmark::steel
