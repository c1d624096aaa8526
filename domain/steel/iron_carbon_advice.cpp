// SPDX-License-Identifier: MIT
// What iron and carbon do at the heat of a step.
#include "domain/steel/critical_points.h"
#include "domain/steel/figure_text.h"
#include "domain/steel/iron_carbon.h"
#include "domain/steel/step_advice.h"

namespace tangmark::steel {
namespace {

constexpr double most_alloy_wt = 3;
constexpr const char* diagram_source =
    "lever rule in the iron-carbon diagram with straight lines (Callister's constants); an "
    "estimate, "
    "alloying moves the lines";

double alloy_wt(const Composition& composition) {
  double sum = 0;
  for (const Element element : {Element::Mn, Element::Si, Element::Cr, Element::Ni, Element::Mo,
                                Element::V, Element::W, Element::Co}) {
    sum += composition.weight_percent(element);
  }
  return sum;
}

std::string whole(double celsius, TemperatureUnit unit) {
  if (unit == TemperatureUnit::fahrenheit) return rounded_text(celsius * 1.8 + 32, 0) + " °F";
  return rounded_text(celsius, 0) + " °C";
}

Advice diagram_estimate(bool heed, std::string sentence, std::string source = diagram_source) {
  return {AdviceKind::estimate, heed, std::move(sentence), std::move(source)};
}

bool heats_to_austenite(const std::string& operation) {
  return operation == "harden" || operation == "normalize" || operation == "thermal cycle" ||
         operation == "anneal" || operation == "forge";
}

// Above the eutectoid heat, a steel above 0.76 % carbon.
Advice of_cementite(const HeatStep& step, double carbon, const std::string& at,
                    TemperatureUnit unit) {
  const std::string percent = rounded_text(carbon, 2);
  const double line_c = *cementite_dissolved_c(carbon);
  const double left = iron_carbon_phases(carbon, *step.at).value().cementite;
  if (left <= 0) {
    return diagram_estimate(
        false, at +
                   " is above the line where cementite dissolves at equilibrium in this steel "
                   "(about " +
                   whole(line_c, unit) +
                   "); what survives a short hold survives by "
                   "slowness or by alloy carbides.");
  }
  const bool cycling = step.operation == "thermal cycle" || step.operation == "normalize";
  return diagram_estimate(false, at + ": at equilibrium about " + rounded_text(100 * left, 1) +
                                     " % of a " + percent + " % carbon steel stays as cementite" +
                                     (cycling ? "; cycling here grows what is there." : "."));
}

Advice of_ferrite(const HeatStep& step, double carbon, const std::string& at,
                  TemperatureUnit unit) {
  const std::string percent = rounded_text(carbon, 2);
  const double ferrite = iron_carbon_phases(carbon, *step.at).value().ferrite;
  if (ferrite <= 0) {
    const auto line = ferrite_dissolved_c(carbon).value_or(eutectoid_c);
    return diagram_estimate(false, at + " is above the line where the last ferrite of a " +
                                       percent +
                                       " % carbon steel dissolves at equilibrium (about " +
                                       whole(line, unit) + "): all austenite.");
  }
  return diagram_estimate(step.operation == "harden",
                          at + ": at equilibrium about " + rounded_text(100 * ferrite, 0) +
                              " % of a " + percent + " % carbon steel is still soft ferrite.");
}

}  // namespace

Composition reckoned_composition(const StepSteel& steel) {
  return steel.analysis ? *steel.analysis : middle_of_limits(steel.grade);
}

std::vector<Advice> iron_carbon_advice(const HeatStep& step, const StepSteel& steel,
                                       TemperatureUnit unit) {
  std::vector<Advice> advice;
  const Composition composition = reckoned_composition(steel);
  const double carbon = composition.weight_percent(Element::C);
  if (!step.at || !heats_to_austenite(step.operation) || carbon <= 0) return advice;
  if (alloy_wt(composition) > most_alloy_wt) {
    advice.push_back(diagram_estimate(false,
                                      "With more than 3 % alloy this steel does not follow the "
                                      "iron-carbon lines; keep to its published window."));
    return advice;
  }
  if (carbon > austenite_most_carbon_wt || step.at->in_celsius() > begins_to_melt_c(carbon)) {
    if (step.operation != "forge")  // where welding_advice says it
      advice.push_back(diagram_estimate(true, "Steel of this carbon may melt in part above about " +
                                                  whole(begins_to_melt_c(carbon), unit) + "."));
    return advice;
  }
  if (*step.at > Temperature::celsius(1147)) return advice;  // the diagram with straight lines ends
  const std::string at = to_text(*step.at, unit);
  const double ac1_c = critical_points(composition).value().ac1_c;
  if (step.at->in_celsius() < ac1_c) {
    const bool meant_hotter = step.operation == "harden" || step.operation == "normalize";
    advice.push_back(diagram_estimate(meant_hotter,
                                      at + " is below Ac1 (about " + whole(ac1_c, unit) +
                                          "): no austenite forms" +
                                          (meant_hotter ? ", so nothing hardens." : "."),
                                      "Andrews, JISI 203 (1965) 721; an estimate"));
    return advice;
  }
  if (*step.at <= Temperature::celsius(727)) return advice;
  advice.push_back(carbon > eutectoid_carbon_wt ? of_cementite(step, carbon, at, unit)
                                                : of_ferrite(step, carbon, at, unit));
  return advice;
}

}  // namespace tangmark::steel
