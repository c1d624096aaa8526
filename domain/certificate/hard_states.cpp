// SPDX-License-Identifier: MIT
#include "domain/certificate/hard_states.h"

#include <algorithm>

#include "domain/certificate/dossier_words.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

using Refusals = std::vector<Refusal>;

void tempers(const BladeCase& blade, Refusals& found) {
  const Hardening* now = blade.heats.current();
  if (!now) return;
  const int planned = std::max(blade.dossier.tempers_planned, 1);
  if (now->temper_entries.empty()) {
    found.push_back(
        {"Blade " + std::to_string(blade.dossier.blade) + " is quenched and not tempered.",
         "Temper it and log it.", 8});
    return;
  }
  if (now->tempers >= planned) return;
  std::string sentence = "Blade " + std::to_string(blade.dossier.blade) + " is tempered " +
                         times_text(now->tempers) + " of " + std::to_string(planned) + ".";
  if (now->tempers_not_cooled > 0)
    sentence += " A temper begun before the blade had cooled to room does not count.";
  found.push_back({sentence, "Temper it again after it has cooled to room.", 9});
}

void findings(const BladeCase& blade, Refusals& found) {
  for (const Finding& finding : blade.dossier.findings) {
    if (finding.superseded) continue;
    const std::string name = "Finding " + std::to_string(finding.number) + " (" +
                             std::string(word_of(finding.kind)) + ")";
    if (waits_for_decision(finding))
      found.push_back({name + " has no decision.", "Decide what becomes of it.", 17});
    if (finding.decision == Decision::scrapped)
      found.push_back(
          {name + " was decided as scrap.", "A scrapped blade gets no certificate.", 27});
  }
}

void planned_heats(const BladeCase& blade, Refusals& found) {
  if (outside_of(blade, OutsideKind::heat_treatment)) return;
  for (Operation operation : {Operation::harden, Operation::temper}) {
    const auto& open = blade.dossier.route_still_open;
    if (std::find(open.begin(), open.end(), operation) == open.end()) continue;
    if (operation == Operation::temper && blade.heats.current()) continue;  // said by tempers()
    found.push_back(
        {"The route plans a step that nobody logged: " + std::string(word_of(operation)) + ".",
         "Log it, or take it off the route with a reason.",
         {}});
  }
}

void outside_work(const BladeCase& blade, Refusals& found) {
  for (const OutsideWork& work : blade.dossier.outside)
    if (work.sent && !work.back)
      found.push_back({"Outside work is not back: " + work.what +
                           (work.by.empty() ? "" : " by " + work.by) + ".",
                       "Log the day it came back.",
                       {}});
}

}  // namespace

bool waits_for_decision(const Finding& finding) {
  if (finding.superseded || finding.decision != Decision::open) return false;
  switch (finding.kind) {
    case FindingKind::pattern_layers:
    case FindingKind::pattern_carbides:
    case FindingKind::no_pattern:
    case FindingKind::hamon_seen:
      return finding.affects_blade;
    default:
      return true;
  }
}

std::vector<Refusal> hard_states(const BladeCase& blade) {
  Refusals found;
  if (blade.dossier.blade <= 0) found.push_back({"The blade has no number.", "Give it one.", {}});
  if (blade.dossier.maker.empty())
    found.push_back(
        {"The maker's name is not on record.", "Enter it in the settings of the shop.", {}});
  tempers(blade, found);
  findings(blade, found);
  planned_heats(blade, found);
  outside_work(blade, found);
  return found;
}

}  // namespace tangmark::certificate
