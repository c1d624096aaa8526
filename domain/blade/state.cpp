// SPDX-License-Identifier: MIT
#include "domain/blade/state.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "domain/blade/finding_kind.h"
#include "domain/blade/operation.h"

namespace tangmark::blade {
namespace {

// Soak and quench of one hardening are never further apart; two hardenings never this close.
constexpr auto one_hardening = std::chrono::hours(1);

Instant end_of(const LogEntry& entry) {
  if (entry.time_out) return *entry.time_out;
  return entry.ended_at.value_or(entry.started_at);
}

std::string times_text(std::int64_t n) {
  if (n == 1) return "once";
  return n == 2 ? "twice" : fmt::format("{} times", n);
}

// Walks the log once, oldest entry first.
class Reading {
 public:
  explicit Reading(BladeState& state) : state_(state) {}

  void take(const LogEntry& entry) {
    if (changes_hardness(entry.operation)) state_.last_heat_at = end_of(entry);
    if (softens(entry.operation))
      soften();
    else if (entry.operation == "harden")
      take_harden(entry);
    else if (entry.operation == "temper")
      take_temper(entry);
    else if (entry.operation == "snap temper")
      hold(HeldBy::snap_temper, std::nullopt);
    else if (entry.operation == "hold warm")
      hold(HeldBy::held_warm, entry.ended_at);
    else if (entry.operation == "handle" || entry.operation == "glue")
      state_.handle_fitted_at = end_of(entry);
  }

 private:
  static bool softens(std::string_view operation) {
    const auto known = trade_operation(operation);
    return known && known->hot && known->before_quench && operation != "stress relief";
  }

  void soften() {
    state_.quenched_at.reset();
    forget_tempers();
  }

  void forget_tempers() {
    numbers_.clear();
    state_.quench_medium.reset();
    state_.tempers_done = state_.tempers_not_cooled = 0;
    state_.last_temper_at.reset();
    state_.held_by = HeldBy::nothing;
    state_.held_until.reset();
  }

  std::int64_t tempers() const { return state_.tempers_done + state_.tempers_not_cooled; }

  void hold(HeldBy how, std::optional<Instant> until) {
    if (!state_.quenched_at) return;
    state_.held_by = how;
    state_.held_until = until;
  }

  void take_harden(const LogEntry& entry) {
    const Instant at = end_of(entry);
    const bool same = state_.quenched_at && tempers() == 0 &&
                      at - *state_.quenched_at <= one_hardening &&
                      (!entry.medium || !state_.quench_medium);
    if (!same) {
      ++state_.hardenings;
      forget_tempers();
    }
    state_.quenched_at = at;
    if (entry.medium) state_.quench_medium = entry.medium;
  }

  void take_temper(const LogEntry& entry) {
    if (!state_.quenched_at) return;
    // The same temper written twice counts once.
    if (entry.temper_number && !numbers_.insert(*entry.temper_number).second) return;
    const bool too_warm = state_.tempers_done > 0 && entry.cooled_to_room == false;
    ++(too_warm ? state_.tempers_not_cooled : state_.tempers_done);
    state_.last_temper_at = end_of(entry);
  }

  BladeState& state_;
  std::set<std::int64_t> numbers_;
};

std::int64_t planned_tempers(std::span<const KeptRouteStep> route) {
  const bool named = std::any_of(route.begin(), route.end(),
                                 [](const RouteStep& s) { return s.operation == "temper"; });
  if (!named) return 2;
  const auto kept = std::count_if(route.begin(), route.end(), [](const RouteStep& s) {
    return s.operation == "temper" && !s.skipped_why;
  });
  return std::max<std::int64_t>(kept, 1);
}

HeatStage stage_of(const BladeState& state) {
  if (!state.quenched_at) return HeatStage::not_quenched;
  if (state.tempers_done == 0) return HeatStage::quenched;
  return state.tempers_done < state.tempers_planned ? HeatStage::tempered_in_part
                                                    : HeatStage::tempered;
}

}  // namespace

bool changes_hardness(std::string_view operation) {
  const auto known = trade_operation(operation);
  return known && known->hot && operation != "hold warm";
}

BladeState state_of(const Blade& blade, std::span<const KeptLogEntry> log,
                    std::span<const KeptRouteStep> route, std::span<const KeptFinding> findings) {
  BladeState state;
  state.number = blade.number;
  state.scrapped = blade.scrapped_at.has_value();
  state.tempers_planned = planned_tempers(route);
  Reading reading(state);
  for (const KeptLogEntry& entry : log) reading.take(entry);
  state.stage = stage_of(state);
  state.hardening_open = std::any_of(route.begin(), route.end(), [](const RouteStep& s) {
    return s.operation == "harden" && s.open();
  });
  for (const KeptFinding& finding : findings) {
    if (waits_for_decision(finding)) state.open_findings.push_back({finding.number, finding.kind});
    if (finding.decision == Decision::scrap) state.condemned_by = finding.number;
  }
  return state;
}

std::string state_text(const BladeState& state, Instant now) {
  if (state.scrapped) return "scrapped";
  switch (state.stage) {
    case HeatStage::not_quenched:
      return "not quenched";
    case HeatStage::quenched: {
      std::string text =
          fmt::format("quenched {} ago, not tempered", to_text(now - *state.quenched_at));
      if (state.held_by == HeldBy::snap_temper) text += " (snap tempered)";
      if (state.held_by == HeldBy::held_warm && !state.held_until) text += " (held warm)";
      return text;
    }
    case HeatStage::tempered_in_part:
      return fmt::format("tempered {} of {}", times_text(state.tempers_done),
                         state.tempers_planned);
    case HeatStage::tempered:
      return "tempered";
  }
  return {};
}

}  // namespace tangmark::blade
