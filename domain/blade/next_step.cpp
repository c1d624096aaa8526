// SPDX-License-Identifier: MIT
#include "domain/blade/next_step.h"

#include <fmt/format.h>

#include <algorithm>

namespace tangmark::blade {
namespace {

std::optional<RouteStepId> open_step(std::span<const KeptRouteStep> route,
                                     std::string_view operation) {
  const auto found = std::find_if(route.begin(), route.end(), [&](const RouteStep& s) {
    return s.open() && s.operation == operation;
  });
  if (found == route.end()) return std::nullopt;
  return found->id;
}

}  // namespace

std::optional<NextStep> next_step(const BladeState& state, std::span<const KeptRouteStep> route,
                                  const TemperClock& clock, const Zone& zone) {
  if (state.scrapped) return std::nullopt;
  if (state.stage == HeatStage::quenched) {
    const auto due = temper_due_at(state, clock);
    return NextStep{"temper", open_step(route, "temper"),
                    due ? fmt::format("Temper 1 of {} is due by {}.", state.tempers_planned,
                                      clock_text(*due, zone))
                        : fmt::format("Temper 1 of {} is due.", state.tempers_planned)};
  }
  if (!state.open_findings.empty())
    return NextStep{"decide", std::nullopt,
                    fmt::format("Decide finding {} ({}).", state.open_findings.front().number,
                                state.open_findings.front().kind)};
  const auto first =
      std::find_if(route.begin(), route.end(), [](const RouteStep& s) { return s.open(); });
  if (first != route.end())
    return NextStep{first->operation, first->id,
                    fmt::format("Next on its route: {}.", first->operation)};
  if (state.stage == HeatStage::tempered_in_part)
    return NextStep{
        "temper", std::nullopt,
        fmt::format("Temper {} of {} is due.", state.tempers_done + 1, state.tempers_planned)};
  return std::nullopt;
}

}  // namespace tangmark::blade
