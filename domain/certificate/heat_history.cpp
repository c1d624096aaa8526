// SPDX-License-Identifier: MIT
#include "domain/certificate/heat_history.h"

#include <algorithm>
#include <string>

#include "domain/certificate/dossier_words.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

bool apart(const BenchEntry& earlier, const BenchEntry& later) {
  return earlier.to && later.from && *later.from >= *earlier.to;
}

bool differ(const Heat& a, const Heat& b) {
  return a.set != b.set || a.hold != b.hold;
}

}  // namespace

bool heats_blade(Operation operation) {
  switch (operation) {
    case Operation::forge:
    case Operation::forge_weld:
    case Operation::twist:
    case Operation::anneal:
    case Operation::stress_relief:
    case Operation::normalize:
    case Operation::thermal_cycle:
    case Operation::harden:
    case Operation::snap_temper:
    case Operation::temper:
      return true;
    default:
      return false;
  }
}

std::string operation_text(const BenchEntry& entry) {
  if (entry.operation == Operation::other && !entry.own_word.empty()) return entry.own_word;
  return std::string(word_of(entry.operation));
}

HeatHistory::HeatHistory(const std::vector<BenchEntry>& log) {
  bool clay = false;
  for (const BenchEntry& entry : log) {
    if (entry.superseded) continue;
    live_.push_back(&entry);
    if (heats_blade(entry.operation)) last_heat_ = &entry;
    switch (entry.operation) {
      case Operation::clay:
        clay = true;
        break;
      case Operation::harden:
        take_harden(entry, clay);
        clay = false;
        break;
      case Operation::temper:
        gathering_ = false;
        take_temper(entry);
        break;
      case Operation::sub_zero:
        if (!hardenings_.empty()) hardenings_.back().subzero = &entry;
        break;
      case Operation::straighten:
        if (!hardenings_.empty()) ++hardenings_.back().straightened;
        break;
      default:
        if (heats_blade(entry.operation)) gathering_ = false;
    }
  }
}

void HeatHistory::take_temper(const BenchEntry& entry) {
  if (hardenings_.empty()) return;
  Hardening& now = hardenings_.back();
  if (entry.temper && !now.temper_numbers.insert(entry.temper->number).second) {
    for (const BenchEntry* earlier : now.temper_entries)
      if (earlier->temper && earlier->temper->number == entry.temper->number && entry.heat &&
          earlier->heat && differ(*entry.heat, *earlier->heat))
        two_soaks_.push_back(line_name(*earlier) + " and " + line_name(entry) +
                             " of the log give two different soaks for one temper");
    return;  // the same temper written twice counts once
  }
  now.temper_entries.push_back(&entry);
  const bool too_warm = now.tempers > 0 && entry.temper && entry.temper->cooled_before == false;
  ++(too_warm ? now.tempers_not_cooled : now.tempers);
}

void HeatHistory::take_harden(const BenchEntry& entry, bool clay_waiting) {
  const bool heat = entry.heat && entry.heat->stated();
  Hardening* now = gathering_ && !hardenings_.empty() ? &hardenings_.back() : nullptr;
  if (now && heat && now->soak && !apart(*now->soak, entry)) {
    if (differ(*entry.heat, *now->soak->heat))
      two_soaks_.push_back(line_name(*now->soak) + " and " + line_name(entry) +
                           " of the log give two different soaks for one hardening");
  } else if (!now || (heat && now->soak) || (entry.quench && now->quench)) {
    now = &hardenings_.emplace_back();
  }
  gathering_ = true;
  if (heat && !now->soak) now->soak = &entry;
  if (entry.quench && !now->quench) {
    now->quench = &entry;
    now->clay = now->clay || entry.quench->clay;
    now->edge = entry.quench->immersion == Immersion::edge;
  }
  now->clay = now->clay || clay_waiting;
  now->last = &entry;
}

int HeatHistory::count(Operation operation) const {
  return static_cast<int>(std::count_if(live_.begin(), live_.end(), [&](const BenchEntry* entry) {
    return entry->operation == operation;
  }));
}

}  // namespace tangmark::certificate
