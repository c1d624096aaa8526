// SPDX-License-Identifier: MIT
// What forging and welding heats do: how near they are to melting, and how fast layers even out.
#include <algorithm>
#include <cmath>

#include "domain/steel/carbon_diffusion.h"
#include "domain/steel/figure_text.h"
#include "domain/steel/iron_carbon.h"
#include "domain/steel/step_advice.h"

namespace tangmark::steel {
namespace {

constexpr double near_melting_c = 100;
constexpr double little_left = 0.1;
constexpr double longest_h = 24;

std::string degrees(double kelvins, TemperatureUnit unit) {
  const bool fahrenheit = unit == TemperatureUnit::fahrenheit;
  return rounded_text(fahrenheit ? kelvins * 1.8 : kelvins, 0) + (fahrenheit ? " °F" : " °C");
}

std::string whole(double celsius, TemperatureUnit unit) {
  if (unit == TemperatureUnit::fahrenheit) return rounded_text(celsius * 1.8 + 32, 0) + " °F";
  return rounded_text(celsius, 0) + " °C";
}

Advice of_melting(const HeatStep& step, double carbon, TemperatureUnit unit) {
  const double line_c = begins_to_melt_c(carbon);
  const double below = line_c - step.at->in_celsius();
  const std::string steel = "a " + rounded_text(carbon, 2) + " % carbon steel begins to melt";
  const std::string at = to_text(*step.at, unit);
  const std::string where = " (about " + whole(line_c, unit) + " by iron and carbon alone; " +
                            "phosphorus, sulfur and alloy lower it).";
  std::string sentence = at + " is about " + degrees(below, unit) + " below where " + steel + where;
  if (below <= 0) sentence = at + " is above where " + steel + where;
  return {
      AdviceKind::estimate, below < near_melting_c, std::move(sentence),
      "solidus of the iron-carbon diagram as a straight line, corners from memory; an estimate"};
}

// Halving the time until the difference left is met.
double hours_until_even(double layer_mm, double diffusivity_m2_s) {
  double low = 0, high = longest_h;
  for (int i = 0; i < 40; ++i) {
    const double middle = (low + high) / 2;
    (layer_difference_left(layer_mm, diffusivity_m2_s, middle) > little_left ? low : high) = middle;
  }
  return high;
}

std::optional<Advice> of_layers(const HeatStep& step, TemperatureUnit unit) {
  const auto diffusivity = carbon_diffusivity_m2_s(*step.at);
  if (!step.layer || !diffusivity) return std::nullopt;
  const double layer_mm = step.layer->in_millimetres();
  const double hours = hours_until_even(layer_mm, *diffusivity);
  const std::string time = hours >= longest_h * 0.99 ? "more than a day"
                           : hours >= 2              ? "about " + rounded_text(hours, 0) + " h"
                           : hours * 60 >= 1 ? "about " + rounded_text(hours * 60, 0) + " min"
                                             : "less than a minute";
  return Advice{
      AdviceKind::estimate, false,
      "At " + to_text(*step.at, unit) + " the carbon of layers " + rounded_text(layer_mm, 2) +
          " mm thick evens out to a tenth of its difference "
          "in " +
          time + " at heat, by estimate; the pattern stays by the other elements.",
      "Fick's second law for a periodic stack (Crank); D0 2.3e-5 m2/s and 148 kJ/mol from "
      "Callister's table; an estimate"};
}

}  // namespace

std::vector<Advice> welding_advice(const HeatStep& step, const StepSteel& steel,
                                   TemperatureUnit unit) {
  std::vector<Advice> advice;
  const double carbon = reckoned_composition(steel).weight_percent(Element::C);
  const bool hot_work =
      step.operation == "forge" || step.operation == "forge-weld" || step.operation == "twist";
  if (!step.at || !hot_work || carbon <= 0) return advice;
  advice.push_back(of_melting(step, carbon, unit));
  if (auto layers = of_layers(step, unit)) advice.push_back(*std::move(layers));
  return advice;
}

}  // namespace tangmark::steel
