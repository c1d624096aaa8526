// SPDX-License-Identifier: MIT
#include "domain/certificate/contradictions.h"

#include <algorithm>

#include "domain/certificate/claims_heat.h"
#include "domain/certificate/claims_steel.h"
#include "domain/certificate/limits_check.h"
#include "domain/certificate/phrasing.h"
#include "domain/measure/utf8.h"

namespace tangmark::certificate {
namespace {

using Refusals = std::vector<Refusal>;

void lots_against_papers(const BladeCase& blade, Refusals& found) {
  for (const Source& source : blade.trail.sources()) {
    if (!source.lot) continue;
    const Lot& lot = *source.lot;
    const std::string name = capital(lot_name(lot));
    const LimitsCheck check = check_limits(lot);
    if (check.verdict == LimitsVerdict::outside)
      found.push_back({name + " is entered as " + sold_name(lot) +
                           ", but its analysis is outside the limits of that grade: " +
                           listed(check.outside) + ".",
                       "Correct the grade or the analysis, or ask the supplier.",
                       {}});
    if (lot.grade && lot.document_grade && *lot.grade != *lot.document_grade)
      found.push_back({name + " is entered as " + *lot.grade + ", its document says " +
                           *lot.document_grade + ".",
                       "Correct the one that is wrong.",
                       {}});
    if (lot.melt_number && lot.document_melt_number &&
        *lot.melt_number != *lot.document_melt_number)
      found.push_back({name + " has melt number " + *lot.melt_number + ", its document says " +
                           *lot.document_melt_number + ".",
                       "Correct the melt number, or take the document off this lot.",
                       {}});
    if (lot.mark == BarMark::differs)
      found.push_back(
          {"The mark on the bar of " + lot_name(lot) + " is not the melt number of its document.",
           "Take the document off this lot, or correct the mark that was read.",
           {}});
  }
}

bool called_a_twist(const Billet& billet) {
  const std::string name = folded(billet.pattern_name.value_or(""));
  return name.find("twist") != std::string::npos || name.find("torsion") != std::string::npos;
}

// A billet inside the billet may be the twisted one.
bool any_twisted(const BladeCase& blade) {
  for (const BilletUse& use : blade.trail.billets())
    for (const WeldStage& stage : use.billet->stages)
      if (stage.work == StageWork::twist) return true;
  return false;
}

void melts_and_billets(const BladeCase& blade, Refusals& found) {
  for (const Source& source : blade.trail.sources()) {
    if (!source.melt || !source.melt->ingot_mass || source.melt->charge.empty()) continue;
    Mass charge;
    for (const ChargePart& part : source.melt->charge) charge = charge + part.mass;
    if (*source.melt->ingot_mass > charge)
      found.push_back({"More came out of melt " + source.melt->tag.text + " than went in.",
                       "Correct the charge or the ingot mass.", 2});
  }
  for (const BilletUse& use : blade.trail.billets()) {
    std::optional<Mass> before;
    for (const WeldStage& stage : use.billet->stages) {
      if (stage.work != StageWork::stack && before && stage.mass_after &&
          *stage.mass_after > *before)
        found.push_back(
            {"Billet " + use.billet->tag.text + " grew heavier in a stage that adds nothing.",
             "Correct the masses of its stages.", 2});
      if (stage.mass_after) before = stage.mass_after;
    }
    if (called_a_twist(*use.billet) && !any_twisted(blade))
      found.push_back({"The pattern of billet " + use.billet->tag.text +
                           " is called a twist, but no twist of it is logged.",
                       "Log the twist, or call the pattern otherwise.", 15});
  }
}

void times_of_one_line(const BenchEntry& entry, Refusals& found) {
  if (!entry.from || !entry.to) return;
  if (*entry.to < *entry.from) {
    found.push_back(
        {capital(line_name(entry)) + " ends before it begins.", "Correct its times.", 23});
    return;
  }
  if (entry.heat && entry.heat->hold && *entry.heat->hold > *entry.to - *entry.from)
    found.push_back({capital(line_name(entry)) + " gives a hold of " + to_text(*entry.heat->hold) +
                         ", longer than the blade was in.",
                     "Correct the hold or the times.",
                     {}});
}

void log_against_itself(const BladeCase& blade, Refusals& found) {
  for (const std::string& soaks : blade.heats.two_soaks())
    found.push_back({capital(soaks) + ".", "Supersede the one that is wrong.", {}});
  bool quenched = false;
  std::optional<Instant> quench_at;
  for (const BenchEntry* entry : blade.heats.live()) {
    times_of_one_line(*entry, found);
    if (entry->operation == Operation::harden) {
      quenched = true;
      quench_at = entry->from;
      continue;
    }
    const bool after_quench = entry->operation == Operation::temper ||
                              entry->operation == Operation::snap_temper ||
                              entry->operation == Operation::sub_zero;
    if (!after_quench) continue;
    const bool earlier = quench_at && entry->from && *entry->from < *quench_at;
    const bool some_other_hardens = outside_of(blade, OutsideKind::heat_treatment) != nullptr;
    if ((!quenched && !some_other_hardens) || earlier)
      found.push_back({capital(line_name(*entry)) + " stands before the quench.",
                       "Correct the times, or log the quench that came first.", 23});
  }
}

void heat_after_handle(const BladeCase& blade, Refusals& found) {
  const BenchEntry* handled = nullptr;
  const BenchEntry* heated = nullptr;
  for (const BenchEntry* entry : blade.heats.live()) {
    if (entry->operation == Operation::handle || entry->operation == Operation::glue) {
      handled = entry;
      heated = nullptr;  // a handle fitted again after the heat
    } else if (handled && heats_blade(entry->operation)) {
      heated = entry;
    }
  }
  if (heated)
    found.push_back({capital(line_name(*heated)) + " came after the handle was fitted.",
                     "Correct the order, or log that the handle came off and was fitted again.",
                     13});
}

// Heats that soften a hardened blade: what was hardened before them is undone.
bool undoes_hardening(Operation operation) {
  switch (operation) {
    case Operation::forge:
    case Operation::forge_weld:
    case Operation::twist:
    case Operation::anneal:
    case Operation::normalize:
    case Operation::thermal_cycle:
      return true;
    default:
      return false;
  }
}

void heat_after_hardening(const BladeCase& blade, Refusals& found) {
  const Hardening* now = blade.heats.current();
  if (!now) return;
  const auto& live = blade.heats.live();
  bool after = false;
  for (const BenchEntry* entry : live) {
    if (after && undoes_hardening(entry->operation)) {
      found.push_back({capital(line_name(*entry)) + " came after the last hardening and undid it.",
                       "Log the hardening that followed, or correct the order.", 12});
      return;
    }
    after = after || entry == now->last;
  }
}

std::optional<Temperature> heat_of(const BenchEntry& entry) {
  if (!entry.heat) return std::nullopt;
  return entry.heat->read ? entry.heat->read : entry.heat->set;
}

void temper_against_hardening(const BladeCase& blade, Refusals& found) {
  const Hardening* now = blade.heats.current();
  const auto hardened = now && now->soak ? heat_of(*now->soak) : std::nullopt;
  if (!hardened) return;
  for (const BenchEntry* temper : now->temper_entries) {
    const auto tempered = heat_of(*temper);
    if (tempered && *tempered >= *hardened)
      found.push_back({capital(line_name(*temper)) + " is as hot as the hardening before it.",
                       "Correct the temperature of the one that is wrong.",
                       {}});
  }
}

// One blade cannot lie in two fires at a time. A heat that only touches another is none.
void two_fires(const BladeCase& blade, Refusals& found) {
  const BenchEntry* before = nullptr;
  for (const BenchEntry* entry : blade.heats.live()) {
    if (!heats_blade(entry->operation) || !entry->from || !entry->to) continue;
    const bool same = before && before->operation == entry->operation;
    if (before && !same && *entry->from < *before->to && *before->from < *entry->to)
      found.push_back({capital(line_name(*before)) + " and " + line_name(*entry) +
                           " have the blade in two fires at one time.",
                       "Correct the times of the one that is wrong.", 23});
    before = entry;
  }
}

void claims_against_steel(const BladeCase& blade, Refusals& found) {
  if (finding_of(blade, FindingKind::hamon_seen) && air_hardening(blade))
    found.push_back({"A hamon is on record in a steel that hardens in air, where none can be.",
                     "Correct the finding or the grade.",
                     {}});
  if (finding_of(blade, FindingKind::no_pattern) &&
      (finding_of(blade, FindingKind::pattern_carbides) ||
       finding_of(blade, FindingKind::pattern_layers)))
    found.push_back({"One finding saw a pattern, another saw none.",
                     "Supersede the one that no longer holds.",
                     {}});
}

void readings_against_heats(const BladeCase& blade, Refusals& found) {
  const BenchEntry* heat = blade.heats.last_heat();
  if (!heat || !heat->from) return;
  for (const HardnessReading& reading : blade.dossier.hardness)
    if (!reading.superseded && reading.after == AfterHeat::last && reading.taken &&
        *reading.taken < *heat->from)
      found.push_back(
          {"A hardness reading is entered as after the last heat, but it was taken before " +
               line_name(*heat) + ".",
           "Correct the time of the reading, or measure again.", 12});
}

}  // namespace

std::vector<Refusal> contradictions(const BladeCase& blade) {
  Refusals found;
  for (const std::string& sentence : blade.trail.breaks())
    found.push_back({sentence, "Correct the pieces of this blade.", 1});
  lots_against_papers(blade, found);
  melts_and_billets(blade, found);
  log_against_itself(blade, found);
  heat_after_handle(blade, found);
  heat_after_hardening(blade, found);
  temper_against_hardening(blade, found);
  two_fires(blade, found);
  claims_against_steel(blade, found);
  readings_against_heats(blade, found);
  return found;
}

}  // namespace tangmark::certificate
