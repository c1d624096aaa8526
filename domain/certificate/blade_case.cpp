// SPDX-License-Identifier: MIT
#include "domain/certificate/blade_case.h"

#include <algorithm>

#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

template <class Wanted>
bool logged_before(const BladeCase& blade, Instant seen, Wanted wanted) {
  const auto& live = blade.heats.live();
  return std::any_of(live.begin(), live.end(), [&](const BenchEntry* entry) {
    const std::optional<Instant> when = entry->from ? entry->from : entry->to;
    return wanted(*entry) && when && *when <= seen;
  });
}

}  // namespace

std::string needs_text(const Missing& missing) {
  std::string text;
  for (const std::string& need : missing.needs) text += (text.empty() ? "" : "; ") + need;
  return text;
}

Evidence log_evidence(const BenchEntry& entry) {
  const EvidenceKind kind = entry.logged == Logged::at_the_time ? EvidenceKind::logged_at_the_time
                                                                : EvidenceKind::logged_later;
  return {kind, operation_text(entry) + ", line " + std::to_string(entry.number)};
}

Evidence stage_evidence(const Billet& billet) {
  const bool later = std::any_of(billet.stages.begin(), billet.stages.end(),
                                 [](const auto& stage) { return stage.logged == Logged::later; });
  return {later ? EvidenceKind::logged_later : EvidenceKind::logged_at_the_time,
          "stages of billet " + billet.tag.text};
}

const Finding* finding_of(const BladeCase& blade, FindingKind kind) {
  for (const Finding& finding : blade.dossier.findings)
    if (!finding.superseded && finding.kind == kind) return &finding;
  return nullptr;
}

bool seen_after_etch(const BladeCase& blade, const Finding& finding) {
  if (finding.after != SeenAfter::not_noted) return finding.after == SeenAfter::etch;
  return finding.seen && logged_before(blade, *finding.seen, [](const BenchEntry& entry) {
           return entry.operation == Operation::etch &&
                  (!entry.etch || entry.etch->purpose == EtchPurpose::show_steel);
         });
}

bool seen_after_polish(const BladeCase& blade, const Finding& finding) {
  if (finding.after != SeenAfter::not_noted) return finding.after == SeenAfter::polish;
  return finding.seen && logged_before(blade, *finding.seen, [](const BenchEntry& entry) {
           return entry.operation == Operation::polish || entry.operation == Operation::hand_sand;
         });
}

std::vector<std::string> outside_names(const std::vector<const BenchEntry*>& entries) {
  std::vector<std::string> names;
  for (const BenchEntry* entry : entries) {
    if (!entry->hand.outside()) continue;
    const std::string name = hand_name(entry->hand);
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  }
  return names;
}

const OutsideWork* outside_of(const BladeCase& blade, OutsideKind kind) {
  for (const OutsideWork& work : blade.dossier.outside)
    if (work.kind == kind) return &work;
  return nullptr;
}

}  // namespace tangmark::certificate
