// SPDX-License-Identifier: MIT
#include "domain/costing/loss.h"

#include <boost/multiprecision/cpp_int.hpp>
#include <limits>
#include <string>

namespace tangmark::costing {
namespace {

using Big = boost::multiprecision::cpp_int;

std::string step_field(std::size_t i) { return "step " + std::to_string(i + 1); }

Problems faults(const std::vector<StepAtRisk>& steps) {
  Problems found;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const StepAtRisk& step = steps[i];
    if (step.cost.currency() != steps.front().cost.currency())
      found.push_back({step_field(i), "This step is costed in another currency than the first.",
                       "Give all costs in one currency."});
    if (step.cost.minor() < 0)
      found.push_back({step_field(i), "A step cannot cost less than nothing.",
                       "Give a cost of zero or more."});
    if (step.survival <= Share{} || step.survival > Share::whole())
      found.push_back({step_field(i), "The survival must be above 0 % and at most 100 %.",
                       "Give the share of blades that come through, for example 95 %."});
  }
  return found;
}

/// Numerator over denominator to the nearest whole number, halves to even; both are positive.
Big half_even(const Big& numerator, const Big& denominator) {
  Big whole = numerator / denominator;
  const Big twice_rest = (numerator - whole * denominator) * 2;
  if (twice_rest > denominator || (twice_rest == denominator && (whole & 1) == 1)) ++whole;
  return whole;
}

}  // namespace

Outcome<GoodBlade> cost_per_good(const std::vector<StepAtRisk>& steps) {
  if (steps.empty())
    return Problem{"steps", "There is no operation to cost.", "Give at least one operation."};
  if (Problems found = faults(steps); !found.empty()) return found;

  // Horner's scheme on the sum: after each step, what was spent is carried by the survivors.
  // The running total is numerator / denominator, never rounded on the way.
  Big numerator = 0, denominator = 1;
  Money sum(0, steps.front().cost.currency());
  double started = 1;
  for (const StepAtRisk& step : steps) {
    numerator = (numerator + Big(step.cost.minor()) * denominator) * Share::whole().millionths();
    denominator *= step.survival.millionths();
    sum += step.cost;
    started /= step.survival.fraction();
  }
  const Big good = half_even(numerator, denominator);
  if (good > Big(std::numeric_limits<std::int64_t>::max() / 2))
    return Problem{"survival", "So few blades would survive that the cost cannot be counted.",
                   "Check the survival of each operation."};
  const Money per_good(good.convert_to<std::int64_t>(), sum.currency());
  return GoodBlade{sum, per_good - sum, per_good, started};
}

}  // namespace tangmark::costing
