// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/length.h"
#include "domain/measure/temperature.h"
#include "domain/measure/when.h"
#include "domain/steel/grade.h"
#include "domain/steel/temper_parameter.h"

namespace tangmark::steel {

/// A heat-treat step as planned or as logged. What was not planned or logged is left out, and
/// nothing is said about it.
struct HeatStep {
  std::string operation;  ///< "normalize", "thermal cycle", "anneal", "harden", "temper", ...
  std::optional<Temperature> at;
  std::optional<Duration> hold;
  std::optional<TemperatureDifference> fall_per_hour;  ///< of a controlled cool
  std::optional<Length> section;                       ///< thickest hardened section
  std::string bath;                                    ///< "oil", "water", "brine", "air", "salt"
  std::string agitation;                    ///< as in quench_severities(); "moderate" if empty
  std::vector<TemperStep> earlier_tempers;  ///< of the same blade since its last quench
  std::optional<Length> layer;  ///< of a billet whose steels differ in carbon: its mean layer
};

/// The steel of the step: its grade, and its own analysis when a certificate gave one.
struct StepSteel {
  Grade grade;
  std::optional<Composition> analysis;
};

/// What a sentence of advice is: a comparison with a published window, an estimate of ours, or a
/// caution for the maker's safety.
enum class AdviceKind { window, estimate, caution };

/// "window", "estimate", "caution".
std::string_view word_of(AdviceKind kind);

/// One sentence about a step. An estimate says so in its own words and is never a promise.
struct Advice {
  AdviceKind kind = AdviceKind::window;
  bool heed = false;  ///< outside the window, or an estimate that speaks against the step
  std::string sentence;
  std::string source;
};

/// What the desk has to say about a step: against the grade's window (with the reading in `unit`),
/// what iron and carbon do at that heat, how near it is to melting, how fast carbon evens out
/// between layers, where martensite starts, whether the section hardens through in the bath, what
/// hardness the tables let one expect off the quench and after a temper, and where the step can
/// hurt. Iron-carbon sentences are left out above 3 % alloy, where the lines do not hold; that is
/// said once.
/// **Sources**: beside each sentence.
std::vector<Advice> advise(const HeatStep& step, const StepSteel& steel,
                           TemperatureUnit unit = TemperatureUnit::celsius);

// The parts of advise(), for places that show only one of them.
std::vector<Advice> window_advice(const HeatStep& step, const Grade& grade, TemperatureUnit unit);
std::vector<Advice> iron_carbon_advice(const HeatStep& step, const StepSteel& steel,
                                       TemperatureUnit unit);
std::vector<Advice> welding_advice(const HeatStep& step, const StepSteel& steel,
                                   TemperatureUnit unit);
std::vector<Advice> quench_advice(const HeatStep& step, const StepSteel& steel,
                                  TemperatureUnit unit);
std::vector<Advice> temper_advice(const HeatStep& step, const StepSteel& steel,
                                  TemperatureUnit unit);

/// The composition that estimates use: the analysis, else the middle of the grade's limits.
Composition reckoned_composition(const StepSteel& steel);

}  // namespace tangmark::steel
