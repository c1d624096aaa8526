// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/blade/state.h"

namespace tangmark::blade::test {

inline constexpr Instant morning =
    date::sys_days{date::year{2026} / 11 / 25} + std::chrono::hours(8);

inline Instant at(int hours, int minutes = 0) {
  return morning + std::chrono::hours(hours) + std::chrono::minutes(minutes);
}

/// Blade 23 with its route and log; each call adds the next step or entry.
class ABlade {
 public:
  ABlade& plans(const std::string& operation) {
    RouteStep step{.blade = BladeId{1}};
    step.operation = operation;
    step.position = static_cast<std::int64_t>(route.size()) + 1;
    route.emplace_back(RouteStepId{step.position}, std::move(step));
    return *this;
  }
  ABlade& done(Instant when) {
    route.back().done_at = when;
    return *this;
  }
  ABlade& skipped(const std::string& why) {
    route.back().skipped_why = why;
    return *this;
  }
  ABlade& logs(const std::string& operation, Instant when) {
    LogEntry entry{.blade = BladeId{1}};
    entry.operation = operation;
    entry.started_at = entry.entered_at = when;
    log.emplace_back(LogEntryId{static_cast<std::int64_t>(log.size()) + 1}, std::move(entry));
    return *this;
  }
  ABlade& in(const std::string& medium) {
    log.back().medium = medium;
    return *this;
  }
  ABlade& cooled(bool to_room) {
    log.back().cooled_to_room = to_room;
    return *this;
  }
  ABlade& until(Instant when) {
    log.back().ended_at = when;
    return *this;
  }
  ABlade& shows(const std::string& kind, Decision decision = Decision::open, bool affects = true) {
    Finding finding{.number = static_cast<std::int64_t>(findings.size()) + 1, .blade = BladeId{1}};
    finding.kind = kind;
    finding.decision = decision;
    finding.affects = affects;
    findings.emplace_back(FindingId{finding.number}, std::move(finding));
    return *this;
  }
  BladeState state() const {
    Blade blade;
    blade.number = 23;
    blade.started_at = morning;
    if (scrapped) blade.scrapped_at = morning;
    return state_of(blade, log, route, findings);
  }

  std::vector<KeptRouteStep> route;
  std::vector<KeptLogEntry> log;
  std::vector<KeptFinding> findings;
  bool scrapped = false;
};

}  // namespace tangmark::blade::test
