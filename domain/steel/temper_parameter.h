// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"

namespace tangmark::steel {

/// One temper: a temperature held for a time.
struct TemperStep {
  Temperature at;
  std::chrono::milliseconds hold{0};
};

/// The constant of the parameter for times in hours. 20 is the usual figure for alloy steel.
inline constexpr double usual_temper_constant = 20.0;

/// Several tempers taken together.
struct TemperSum {
  double equivalent_min = 0;  ///< all steps together, as minutes at the last step's temperature
  double parameter = 0;       ///< kelvin x (c + log10 hours) of equivalent_min there
  std::vector<double> step_parameters;
  std::vector<double> step_equivalent_min;
  bool extrapolated = false;  ///< a step lies outside 100 to 700 C or 10 s to 24 h
};

/// The time-temperature parameter P = T (c + log10 t), T in kelvin (273.15), t in hours.
/// Each step is turned into the time at the last step's temperature that has the same P; the times
/// are added. **Source**: Hollomon & Jaffe, Trans. AIME (1945); adding equivalent times as in a
/// plate maker's published form of it. **Valid**: comparing tempers of the same quenched structure;
/// says nothing of retained austenite, secondary hardening or another steel. **Outside** the tests
/// of 1945 (100 to 700 C, 10 s to 24 h): computed and marked extrapolated. Refuses no steps, a hold
/// that is not above zero, and a constant outside 5 to 40.
Outcome<TemperSum> temper_sum(const std::vector<TemperStep>& steps,
                              double c = usual_temper_constant);

/// kelvin x (c + log10 hours). Both above zero.
double temper_parameter(double kelvin, double hours, double c = usual_temper_constant);
/// The hours at a temperature that reach a parameter.
double hours_at(double kelvin, double parameter, double c = usual_temper_constant);

/// The parameter along a measured curve. The state is P: over each short stretch the time at the
/// stretch's temperature that has the P reached so far is found, and the stretch added to it.
/// Cutting a hold into pieces therefore changes nothing, which adding separate equivalents would
/// not give. For one or two holds it equals temper_sum. **Source**: as temper_sum; stretches at
/// most 2 K wide (ours).
class TemperIntegral {
 public:
  explicit TemperIntegral(double c = usual_temper_constant);
  /// A straight line from one temperature to another over a time. Time not above zero adds nothing.
  void add(double from_kelvin, double to_kelvin, double seconds);
  bool empty() const { return !started_; }
  /// P reached so far; only when not empty.
  double parameter() const;
  /// Minutes at a temperature that reach the same P; zero when empty.
  double minutes_at(double kelvin) const;

 private:
  void hold(double kelvin, double seconds);
  double c_ln_;  // c x ln 10 with the hour turned into seconds
  bool started_ = false;
  double kelvin_ = 0;      // of the last stretch
  double ln_seconds_ = 0;  // equivalent seconds at kelvin_, natural logarithm
};

}  // namespace tangmark::steel
