// SPDX-License-Identifier: MIT
#include "domain/blade/tempering_rules.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace tangmark::blade {
namespace {

bool is_water(const std::optional<std::string>& medium) {
  return medium &&
         (medium->find("water") != std::string::npos || medium->find("brine") != std::string::npos);
}

bool is_part_of_quench(std::string_view operation) {
  constexpr std::array<std::string_view, 7> allowed{
      "harden", "temper", "snap temper", "hold warm", "sub-zero", "straighten", "inspect"};
  return std::find(allowed.begin(), allowed.end(), operation) != allowed.end();
}

}  // namespace

std::optional<Instant> temper_due_at(const BladeState& state, const TemperClock& clock) {
  if (state.stage != HeatStage::quenched || state.held_by == HeldBy::snap_temper)
    return std::nullopt;
  if (state.held_by == HeldBy::held_warm && !state.held_until) return std::nullopt;
  const Instant from = state.held_by == HeldBy::held_warm ? *state.held_until : *state.quenched_at;
  return from + (is_water(state.quench_medium) ? std::min(clock.remark, clock.limit) : clock.limit);
}

Catch temper_overdue(const BladeState& state, const TemperClock& clock, Instant now) {
  const auto due = temper_due_at(state, clock);
  if (!due || now < *due) return std::nullopt;
  return Caught{8, Weight::remark, "blade",
                fmt::format("Blade {} was quenched {} ago and no temper has begun.", state.number,
                            to_text(now - *state.quenched_at)),
                "Temper it now, give it a snap temper or hold it warm; look for cracks."};
}

Catch temper_late(const BladeState& state, const TemperClock& clock, Instant begun_at) {
  const auto due = temper_due_at(state, clock);
  if (!due || begun_at < *due) return std::nullopt;
  return Caught{8, Weight::remark, "at",
                fmt::format("Blade {} waited {} between quench and temper.", state.number,
                            to_text(begun_at - *state.quenched_at)),
                "Look for cracks before more work goes into it."};
}

Catch work_before_temper(const BladeState& state, std::string_view operation, Instant now) {
  if (state.stage != HeatStage::quenched || is_part_of_quench(operation)) return std::nullopt;
  return Caught{
      8, Weight::ask, "operation",
      fmt::format("Blade {} was quenched {} ago and is not tempered; \"{}\" comes after that.",
                  state.number, to_text(now - *state.quenched_at), operation),
      "Temper it first and log it with log_temper."};
}

Catch not_cooled_before(const BladeState& state, std::optional<bool> cooled) {
  if (state.tempers_done == 0 || cooled == true) return std::nullopt;
  if (!cooled)
    return Caught{10, Weight::stop, "cooled_to_room",
                  fmt::format("Nobody said whether blade {} had cooled to room before this temper.",
                              state.number),
                  "Give cooled_to_room: yes or no."};
  return Caught{
      10, Weight::ask, "cooled_to_room",
      fmt::format("Blade {} had not cooled to room before this temper: it will not count.",
                  state.number),
      "Let it cool to room and temper it again."};
}

Catch set_points_differ(std::span<const SetPoint> batch, TemperatureDifference tolerance,
                        TemperatureUnit unit) {
  const auto cooler = [](const SetPoint& a, const SetPoint& b) { return a.set < b.set; };
  const auto [low, high] = std::minmax_element(batch.begin(), batch.end(), cooler);
  if (low == batch.end() || high->set - low->set <= tolerance) return std::nullopt;
  return Caught{
      11, Weight::ask, "set",
      fmt::format("Blade {} wants {} and blade {} wants {}: too far apart for one batch.",
                  low->blade, to_text(low->set, unit), high->blade, to_text(high->set, unit)),
      "Temper them in two batches."};
}

}  // namespace tangmark::blade
