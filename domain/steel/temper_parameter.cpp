// SPDX-License-Identifier: MIT
#include "domain/steel/temper_parameter.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace tangmark::steel {
namespace {

constexpr double least_constant = 5;
constexpr double most_constant = 40;
constexpr double widest_stretch_k = 2;
constexpr int most_stretches = 200;

double hours_of(std::chrono::milliseconds span) {
  return static_cast<double>(span.count()) / 3'600'000.0;
}

bool tested_in_1945(const TemperStep& step) {
  using namespace std::chrono_literals;
  return step.at >= Temperature::celsius(100) && step.at <= Temperature::celsius(700) &&
         step.hold >= 10s && step.hold <= 24h;
}

}  // namespace

double temper_parameter(double kelvin, double hours, double c) {
  return kelvin * (c + std::log10(hours));
}

double hours_at(double kelvin, double parameter, double c) {
  return std::pow(10.0, parameter / kelvin - c);
}

Outcome<TemperSum> temper_sum(const std::vector<TemperStep>& steps, double c) {
  if (steps.empty()) return Problem{"steps", "No temper is given.", "Write it as 204C/120min."};
  if (!(c >= least_constant && c <= most_constant)) {
    return Problem{"c", "The constant must lie between 5 and 40 (times in hours).",
                   "Use 20, or the figure a source gives for hours."};
  }
  TemperSum sum;
  const double last_kelvin = steps.back().at.in_kelvin();
  for (const TemperStep& step : steps) {
    if (step.hold <= std::chrono::milliseconds(0) || step.at.in_kelvin() <= 0) {
      return Problem{"steps", "Each temper needs a time above zero.", "Write it as 204C/120min."};
    }
    const double p = temper_parameter(step.at.in_kelvin(), hours_of(step.hold), c);
    sum.step_parameters.push_back(p);
    const bool same = step.at == steps.back().at;
    sum.step_equivalent_min.push_back(60 *
                                      (same ? hours_of(step.hold) : hours_at(last_kelvin, p, c)));
    sum.equivalent_min += sum.step_equivalent_min.back();
    sum.extrapolated = sum.extrapolated || !tested_in_1945(step);
  }
  sum.parameter = temper_parameter(last_kelvin, sum.equivalent_min / 60, c);
  return sum;
}

TemperIntegral::TemperIntegral(double c)
    : c_ln_(c * std::numbers::ln10 - std::log(3600.0)) {}

void TemperIntegral::add(double from_kelvin, double to_kelvin, double seconds) {
  if (!(seconds > 0) || !(from_kelvin > 0) || !(to_kelvin > 0)) return;
  const double rise = to_kelvin - from_kelvin;
  const double wanted = std::ceil(std::abs(rise) / widest_stretch_k);
  const int stretches = static_cast<int>(std::clamp(wanted, 1.0, double{most_stretches}));
  for (int i = 0; i < stretches; ++i) {
    hold(from_kelvin + rise * (i + 0.5) / stretches, seconds / stretches);
  }
}

void TemperIntegral::hold(double kelvin, double seconds) {
  if (!started_) {
    started_ = true;
    ln_seconds_ = std::log(seconds);
  } else {
    if (kelvin != kelvin_) ln_seconds_ = kelvin_ / kelvin * (c_ln_ + ln_seconds_) - c_ln_;
    const double added = std::log(seconds);
    const double larger = std::max(ln_seconds_, added);
    ln_seconds_ = larger + std::log1p(std::exp(std::min(ln_seconds_, added) - larger));
  }
  kelvin_ = kelvin;
}

double TemperIntegral::parameter() const {
  assert(started_ && "an empty curve has no temper parameter");
  return kelvin_ * (c_ln_ + ln_seconds_) / std::numbers::ln10;
}

double TemperIntegral::minutes_at(double kelvin) const {
  if (!started_) return 0;
  return std::exp(kelvin_ / kelvin * (c_ln_ + ln_seconds_) - c_ln_) / 60;
}

}  // namespace tangmark::steel
