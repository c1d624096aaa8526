// SPDX-License-Identifier: MIT
// What a quench may and may not do to a blade, and what tempering leaves of it.
#include <algorithm>

#include "domain/steel/figure_text.h"
#include "domain/steel/hardenability.h"
#include "domain/steel/iron_carbon.h"
#include "domain/steel/martensite_start.h"
#include "domain/steel/quench_severity.h"
#include "domain/steel/step_advice.h"
#include "domain/steel/temper_hardness.h"

namespace tangmark::steel {
namespace {

constexpr const char* through_source =
    "ASTM A255 factors and Grossmann's severities (from memory), half martensite at the middle of "
    "a "
    "plate; an estimate for ranking";

Advice estimate(bool heed, std::string sentence, std::string source) {
  return {AdviceKind::estimate, heed, std::move(sentence), std::move(source)};
}

std::string rounded_degrees(double celsius, TemperatureUnit unit) {
  if (unit == TemperatureUnit::fahrenheit) return rounded_text(celsius * 1.8 + 32, 0) + " °F";
  return rounded_text(celsius, 0) + " °C";
}

std::optional<Advice> of_section(const HeatStep& step, const Composition& composition) {
  if (!step.section) return std::nullopt;
  const auto bath =
      quench_severity(step.bath, step.agitation.empty() ? "moderate" : step.agitation);
  const auto di = hardenability(composition);
  if (!bath || !di) return std::nullopt;
  const std::string limit =
      rounded_text(plate_hardened_through_in(di->di_in, bath->middle_per_in()) * 25.4, 0) + " mm";
  const std::string outside = di->in_range ? "" : " Outside ASTM A255 range.";
  switch (through_hardening(di->di_in, *step.section, *bath)) {
    case ThroughHardening::through:
      return estimate(false,
                      "By estimate this steel hardens through well past this section in " +
                          step.bath + " (to about " + limit + ")." + outside,
                      through_source);
    case ThroughHardening::doubtful:
      return estimate(true,
                      "By estimate this section is near what this steel hardens through in " +
                          step.bath + " (about " + limit + "); measure at the thick end." + outside,
                      through_source);
    case ThroughHardening::not_through:
      break;
  }
  return estimate(true,
                  "This section is thicker than this steel hardens through in this bath, by "
                  "estimate (about " +
                      limit + " in " + step.bath +
                      "); expect a soft core or a "
                      "transition line at the thick end." +
                      outside,
                  through_source);
}

// Martensite from the carbon that is dissolved at the hardening heat, where iron and carbon decide
// it.
std::optional<Advice> of_martensite(const HeatStep& step, const Composition& composition,
                                    TemperatureUnit unit) {
  const double carbon = composition.weight_percent(Element::C);
  const double chromium = composition.weight_percent(Element::Cr);
  if (!step.at || chromium > 2 || carbon > austenite_most_carbon_wt) return std::nullopt;
  const auto phases = iron_carbon_phases(carbon, *step.at);
  if (!phases || !phases->carbon_in_austenite_wt) return std::nullopt;
  const double dissolved = *phases->carbon_in_austenite_wt;
  const auto ms = martensite_start(composition.with(Element::C, dissolved).value());
  if (!ms) return std::nullopt;
  const double left = retained_austenite_share(ms->andrews_c, 25);
  return estimate(left > 0.2,
                  "With about " + rounded_text(dissolved, 2) +
                      " % carbon dissolved, martensite starts "
                      "near " +
                      rounded_degrees(ms->andrews_c, unit) +
                      " (25 °C either way at best) and "
                      "about " +
                      rounded_text(100 * left, 0) + " % austenite may be left at room heat.",
                  "Andrews, JISI 203 (1965) 721 and Koistinen & Marburger (1959), from memory; an "
                  "estimate, extrapolated above 0.6 %C");
}

std::string listed(const std::vector<std::string>& sources) {
  std::string list;
  for (const std::string& source : sources) list += (list.empty() ? "" : "; ") + source;
  return list;
}

std::string band_words(const ExpectedHardness& expected) {
  return rounded_text(expected.low.points, 0) + " to " + rounded_text(expected.high.points, 0) +
         " HRC by estimate (" + expected.band + "); measure it.";
}

}  // namespace

std::vector<Advice> quench_advice(const HeatStep& step, const StepSteel& steel,
                                  TemperatureUnit unit) {
  std::vector<Advice> advice;
  if (step.operation != "harden") return advice;
  const Composition composition = reckoned_composition(steel);
  if (auto section = of_section(step, composition)) advice.push_back(*std::move(section));
  if (auto start = of_martensite(step, composition, unit)) advice.push_back(*std::move(start));
  if (const auto expected = expected_as_quenched(steel.grade))
    advice.push_back(estimate(false, "Off the quench expect about " + band_words(*expected),
                              listed(expected->sources)));
  return advice;
}

std::vector<Advice> temper_advice(const HeatStep& step, const StepSteel& steel,
                                  TemperatureUnit unit) {
  std::vector<Advice> advice;
  if (step.operation != "temper" || !step.at) return advice;
  std::vector<TemperStep> tempers = step.earlier_tempers;
  if (!tempers.empty() && *step.at < tempers.back().at) {
    advice.push_back(estimate(true,
                              to_text(*step.at, unit) + " is below the temper before it (" +
                                  to_text(tempers.back().at, unit) +
                                  "); the second is usually as hot or hotter.",
                              "common practice, no source"));
  }
  if (!step.hold || *step.hold <= Duration(0)) return advice;
  tempers.push_back({*step.at, *step.hold});
  const auto expected = expected_hardness(steel.grade, tempers);
  if (!expected) {
    advice.push_back(estimate(false, expected.problem().sentence + " No hardness is estimated.",
                              "published temper tables on file"));
    return advice;
  }
  advice.push_back(estimate(false, "After this temper expect about " + band_words(*expected),
                            listed(expected->sources)));
  return advice;
}

}  // namespace tangmark::steel
