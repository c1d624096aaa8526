// SPDX-License-Identifier: MIT
#include "domain/blade/hardening_rules.h"

#include <fmt/format.h>

#include <algorithm>

#include "domain/blade/operation.h"

namespace tangmark::blade {
namespace {

bool only_in_soft_steel(std::string_view operation) {
  return operation == "drill" || operation == "mark";
}

bool belongs_before(std::string_view operation) {
  const auto known = trade_operation(operation);
  return known && known->before_quench;
}

bool to_do_again(const RouteStep& step, bool soft) {
  return step.operation == "temper" || step.operation == "snap temper" ||
         step.operation == "sub-zero" || (soft && step.operation == "harden");
}

}  // namespace

Catches harden_too_early(std::int64_t blade, std::span<const KeptRouteStep> route) {
  const auto harden = std::find_if(route.begin(), route.end(), [](const RouteStep& s) {
    return s.operation == "harden" && s.open();
  });
  const std::int64_t position = harden == route.end() ? 0 : harden->position;
  Catches found;
  for (const KeptRouteStep& step : route) {
    const bool early = step.position < position && belongs_before(step.operation);
    if (!step.open() || (!early && !only_in_soft_steel(step.operation))) continue;
    found.push_back(
        {6, Weight::ask, "blade",
         fmt::format("The route of blade {} has \"{}\" before hardening, and it is not done.",
                     blade, step.operation),
         "Do it first and log it, or skip the step with skip_step and say why."});
  }
  return found;
}

Catch hardened_again(const BladeState& before, const BladeState& after,
                     std::span<const KeptReading> readings) {
  const bool soft = before.quenched_at && !after.quenched_at;
  if (before.hardenings == 0 || (after.hardenings == before.hardenings && !soft))
    return std::nullopt;
  const bool readings_stand = std::any_of(readings.begin(), readings.end(),
                                          [](const HardnessReading& r) { return !r.void_why; });
  std::string sentence =
      fmt::format("Blade {} was hardened before: its {} to be done anew", before.number,
                  soft ? "hardening and tempers are" : "tempers are");
  if (readings_stand) sentence += " and its earlier hardness readings are void";
  return Caught{12, Weight::remark, "blade", sentence + ".",
                "The steps on its route are open again; read its hardness after the last temper."};
}

std::vector<RouteStepId> steps_to_do_again(std::span<const KeptRouteStep> route,
                                           const BladeState& after, Instant heated_at) {
  const bool soft = !after.quenched_at;
  std::vector<RouteStepId> steps;
  for (const KeptRouteStep& step : route)
    if (step.done_at && *step.done_at < heated_at && to_do_again(step, soft))
      steps.push_back(step.id);
  return steps;
}

std::vector<ReadingId> readings_to_void(std::span<const KeptReading> readings, Instant heated_at) {
  std::vector<ReadingId> old;
  for (const KeptReading& reading : readings)
    if (!reading.void_why && !reading.on_coupon && reading.at < heated_at)
      old.push_back(reading.id);
  return old;
}

Catch longer_than_bath(const Blade& blade, const stock::Bath& bath, bool edge_only,
                       LengthUnit unit) {
  if (edge_only || !bath.depth || blade.length <= *bath.depth) return std::nullopt;
  return Caught{5, Weight::ask, "bath",
                fmt::format("Blade {} is {} long and {} is {} deep.", blade.number,
                            to_text(blade.length, unit), bath.name, to_text(*bath.depth, unit)),
                "Use a deeper tank: a blade that is partly out of the oil sets it on fire."};
}

Catch bath_out_of_band(const stock::Bath& bath, std::optional<Temperature> measured,
                       TemperatureUnit unit) {
  if (!measured || !bath.low || !bath.high) return std::nullopt;
  if (*measured >= *bath.low && *measured <= *bath.high) return std::nullopt;
  return Caught{
      22, Weight::ask, "bath_temperature",
      fmt::format("{} was at {}; its band is {} to {}.", bath.name, to_text(*measured, unit),
                  to_text(*bath.low, unit), to_text(*bath.high, unit)),
      *measured < *bath.low ? "Warm the bath, and look at this blade with care."
                            : "Let the bath cool, and look at this blade with care."};
}

Catch bath_check_overdue(const stock::Bath& bath, Instant now) {
  const auto since = bath.checked_at ? bath.checked_at : bath.filled_at;
  if (!bath.check_days || !since) return std::nullopt;
  const auto days = std::chrono::duration_cast<date::days>(now - *since).count();
  if (days <= *bath.check_days) return std::nullopt;
  return Caught{22, Weight::remark, "bath",
                fmt::format("{} was last checked {} days ago; your rule is {}.", bath.name, days,
                            *bath.check_days),
                "Check it and log the check."};
}

}  // namespace tangmark::blade
