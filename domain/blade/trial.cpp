// SPDX-License-Identifier: MIT
#include "domain/blade/trial.h"

#include <algorithm>
#include <cmath>

#include "domain/steel/figure_text.h"

namespace tangmark::blade {
namespace {

constexpr std::size_t fewest_to_tell = 5;
constexpr double usual_p = 0.05;
constexpr double together_rho = 0.7;
constexpr double usual_step_share = 0.1;
constexpr double usual_step_c = 15, usual_step_f = 25;

using steel::rounded_text;

std::string figure(double value, std::string_view unit) {
  return rounded_text(value, 2) + (unit.empty() ? "" : " " + std::string(unit));
}

// Both measures of the blades that have them.
struct Pairs {
  std::vector<double> x, y;
};

Pairs with_outcome(const std::vector<TrialBlade>& blades, TrialVariable variable) {
  Pairs pairs;
  for (const TrialBlade& blade : blades) {
    const auto at = blade.variables.find(variable);
    if (at == blade.variables.end() || !blade.outcome) continue;
    pairs.x.push_back(at->second);
    pairs.y.push_back(*blade.outcome);
  }
  return pairs;
}

Pairs of_both(const std::vector<TrialBlade>& blades, TrialVariable one, TrialVariable other) {
  Pairs pairs;
  for (const TrialBlade& blade : blades) {
    const auto a = blade.variables.find(one), b = blade.variables.find(other);
    if (a == blade.variables.end() || b == blade.variables.end()) continue;
    pairs.x.push_back(a->second);
    pairs.y.push_back(b->second);
  }
  return pairs;
}

std::string chance_words(const RankTest& test) {
  const std::string p = rounded_text(test.p, test.p < 0.01 ? 4 : 2);
  return "rank correlation " + rounded_text(test.rho, 2) + ", p " + p + ", " +
         std::to_string(test.n) + " blades" +
         (test.exact ? ", every order looked at" : ", a million orders drawn");
}

std::string nothing_to_order(const Pairs& pairs, std::string_view variable,
                             std::string_view outcome) {
  if (pairs.x.empty())
    return "No blade of the trial has both " + std::string(variable) + " and " +
           std::string(outcome) + " on record.";
  if (pairs.x.size() == 1)
    return "One blade has both " + std::string(variable) + " and " + std::string(outcome) +
           "; one blade compares with nothing.";
  const bool same_x =
      std::all_of(pairs.x.begin(), pairs.x.end(), [&](double v) { return v == pairs.x[0]; });
  return "All " + std::to_string(pairs.x.size()) + " blades had the same " +
         std::string(same_x ? variable : outcome) + ", so there is nothing to compare.";
}

std::string words_of(const RankTest& test, std::string_view variable, std::string_view outcome) {
  const std::string figures = " (" + chance_words(test) + ").";
  if (test.n < fewest_to_tell)
    return std::to_string(test.n) +
           " blades are too few to say anything: even a perfect order of " +
           std::to_string(test.n) + " comes by chance 1 time in " +
           rounded_text(1 / least_p(test.n), 0) + ". Go on to at least " +
           std::to_string(fewest_to_tell) + figures;
  const std::string more = std::string(outcome) + (test.rho > 0 ? " is higher" : " is lower");
  if (test.p <= usual_p)
    return "With a higher " + std::string(variable) + " the " + more + " in these blades, more " +
           "regularly than chance would often do it" + figures +
           " That is no proof of a cause: other things may have changed with it.";
  return "No sign that " + std::string(variable) + " and " + std::string(outcome) +
         " go together: chance alone orders blades so in " + rounded_text(100 * test.p, 0) +
         " of 100 trials" + figures;
}

void name_what_moved_together(const std::vector<TrialBlade>& blades,
                              const std::vector<TrialVariable>& variables, TrialFinding& finding) {
  for (const TrialVariable other : variables) {
    if (other == finding.variable) continue;
    const Pairs pairs = of_both(blades, finding.variable, other);
    const auto test = pairs.x.size() > 2 ? rank_test(pairs.x, pairs.y) : std::nullopt;
    if (!test || std::abs(test->rho) < together_rho) continue;
    finding.words += " " + std::string(word_of(other)) +
                     " changed along with it, so the two cannot be told apart here.";
  }
}

std::vector<double> values_of(const std::vector<TrialBlade>& blades, TrialVariable variable) {
  std::vector<double> values;
  for (const TrialBlade& blade : blades)
    if (const auto at = blade.variables.find(variable); at != blade.variables.end())
      values.push_back(at->second);
  std::sort(values.begin(), values.end());
  return values;
}

// The value that most blades had; of equals the lowest. `values` are in order and not empty.
double most_usual(const std::vector<double>& values) {
  double usual = values.front();
  std::ptrdiff_t most = 0;
  for (auto at = values.begin(); at != values.end();) {
    const auto end = std::upper_bound(at, values.end(), *at);
    if (end - at > most) {
      most = end - at;
      usual = *at;
    }
    at = end;
  }
  return usual;
}

double step_of(TrialVariable variable, double value, TemperatureUnit degrees) {
  if (is_temperature(variable))
    return degrees == TemperatureUnit::fahrenheit ? usual_step_f : usual_step_c;
  const bool counted =
      unit_of(variable, degrees).empty() && variable != TrialVariable::temper_parameter;
  return counted ? 1 : std::abs(value) * usual_step_share;
}

double moved(TrialVariable variable, const std::vector<double>& values, TemperatureUnit degrees) {
  const double low = values.front(), high = values.back();
  if (low == high) return low + step_of(variable, low, degrees);
  const double middle = (low + high) / 2;
  const auto below =
      std::count_if(values.begin(), values.end(), [&](double v) { return v < middle; });
  const auto above =
      std::count_if(values.begin(), values.end(), [&](double v) { return v > middle; });
  return above < below ? high : low;
}

}  // namespace

bool is_temperature(TrialVariable variable) {
  return variable == TrialVariable::hardening_temperature ||
         variable == TrialVariable::bath_temperature ||
         variable == TrialVariable::temper_temperature;
}

std::string_view unit_of(TrialVariable variable, TemperatureUnit degrees) {
  switch (variable) {
    case TrialVariable::hardening_temperature:
    case TrialVariable::bath_temperature:
    case TrialVariable::temper_temperature:
      return degrees == TemperatureUnit::fahrenheit ? "F" : "C";
    case TrialVariable::soak:
      return "min";
    case TrialVariable::seconds_to_bath:
      return "s";
    case TrialVariable::thickness:
      return "mm";
    case TrialVariable::etch_strength:
      return "%";
    case TrialVariable::temper_parameter:
    case TrialVariable::thermal_cycles:
    case TrialVariable::etch_passes:
      break;
  }
  return "";
}

std::string_view unit_of(TrialOutcome outcome) {
  switch (outcome) {
    case TrialOutcome::hardness:
      return "HRC";
    case TrialOutcome::warp:
      return "mm";
    case TrialOutcome::contrast:
      break;
  }
  return "of 5";
}

std::vector<TrialFinding> findings_of(const std::vector<TrialBlade>& blades,
                                      const std::vector<TrialVariable>& variables,
                                      TrialOutcome outcome) {
  std::vector<TrialFinding> findings;
  for (const TrialVariable variable : variables) {
    const Pairs pairs = with_outcome(blades, variable);
    TrialFinding finding{variable, pairs.x.size(), rank_test(pairs.x, pairs.y), {}};
    if (!finding.test) {
      finding.words = nothing_to_order(pairs, word_of(variable), word_of(outcome));
    } else {
      finding.words = words_of(*finding.test, word_of(variable), word_of(outcome));
      name_what_moved_together(blades, variables, finding);
    }
    findings.push_back(std::move(finding));
  }
  return findings;
}

std::optional<TrialSuggestion> next_blade(const std::vector<TrialBlade>& blades,
                                          const std::vector<TrialVariable>& variables,
                                          TemperatureUnit degrees) {
  if (variables.empty()) return std::nullopt;
  const TrialVariable change = variables.front();
  const auto tried = values_of(blades, change);
  if (tried.empty()) return std::nullopt;
  TrialSuggestion next{change, moved(change, tried, degrees), {}, {}};
  next.words = "Next blade: " + std::string(word_of(change)) + ' ' +
               figure(next.value, unit_of(change, degrees));
  for (std::size_t i = 1; i < variables.size(); ++i) {
    const auto values = values_of(blades, variables[i]);
    if (values.empty()) continue;
    const double usual = most_usual(values);
    next.keep.emplace_back(variables[i], usual);
    next.words += ", " + std::string(word_of(variables[i])) + " left at " +
                  figure(usual, unit_of(variables[i], degrees));
  }
  next.words += ". Change that one thing, leave all else, and stay within the steel's own window.";
  return next;
}

}  // namespace tangmark::blade
