// SPDX-License-Identifier: MIT
#include "domain/certificate/claims_heat.h"

#include <algorithm>

#include "domain/certificate/heat_words.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

void append(std::vector<Evidence>& to, std::vector<Evidence> from) {
  to.insert(to.end(), from.begin(), from.end());
}

// A hardening without a stated heat is a heat not recorded, whichever line stands for it.
const BenchEntry& soak_line(const Hardening& hardening) {
  return hardening.soak ? *hardening.soak : *hardening.last;
}

std::string quench_text(const Hardening& hardening, const Manner& manner) {
  if (!hardening.quench) return "";
  const Quench& quench = *hardening.quench->quench;
  std::string text =
      "; quenched in " + (quench.medium.empty() ? "a bath not named" : quench.medium);
  if (quench.bath) text += " at " + to_text(*quench.bath, manner.temperature);
  if (hardening.clay) text += ", clay on the back";
  if (quench.immersion == Immersion::edge) text += ", edge only";
  if (quench.immersion == Immersion::interrupted) text += ", interrupted";
  return text;
}

std::string temper_text(const Hardening& hardening, const Manner& manner) {
  std::string text;
  int number = 0;
  for (const BenchEntry* temper : hardening.temper_entries) {
    ++number;
    text += " Temper " + std::to_string(temper->temper ? temper->temper->number : number) + ": " +
            heat_text(*temper, manner);
    if (temper->heat && temper->heat->hold) text += ", " + to_text(*temper->heat->hold);
    text += ".";
  }
  return text;
}

Judgement treated_outside(const OutsideWork& work) {
  if (work.by.empty()) return Missing{Claim::heat_treatment, {"who did the heat treatment"}};
  std::string text = "Heat treated by an outside service, " + work.by;
  if (!work.their_words.empty())
    text += ", in the words of their slip: \"" + work.their_words + "\"";
  return stated(
      Claim::heat_treatment, text + ". Not by this shop.",
      {{work.slip_on_file ? EvidenceKind::outside_slip : EvidenceKind::outside_word, work.by}});
}

// Edge and spine readings that show differential hardening by themselves.
bool shown_by_readings(const BladeCase& blade) {
  int edge = 0;
  int spine = 0;
  for (const HardnessReading& reading : blade.dossier.hardness) {
    if (reading.superseded || reading.scale != HardnessScale::hrc ||
        reading.on == MeasuredOn::coupon || reading.after != AfterHeat::last)
      continue;
    if (reading.place.find("edge") != std::string::npos) edge = std::max(edge, reading.tenths);
    if (reading.place.find("spine") != std::string::npos) spine = std::max(spine, reading.tenths);
  }
  return edge > 0 && spine > 0 && edge - spine >= differential_hrc * 10;
}

bool seen_before_quench(const BladeCase& blade, const Finding& finding) {
  const Hardening* now = blade.heats.current();
  if (!now || !now->quench || !finding.seen) return false;
  const auto& quenched = now->quench->from ? now->quench->from : now->quench->to;
  return quenched && *finding.seen < *quenched;
}

// A line that was seen only after an etch may be the etched image itself.
bool only_a_stencil(const BladeCase& blade, const Finding& finding) {
  const auto& live = blade.heats.live();
  const bool image = std::any_of(live.begin(), live.end(), [](const BenchEntry* entry) {
    return entry->etch && entry->etch->purpose == EtchPurpose::image;
  });
  return image && !seen_after_polish(blade, finding);
}

bool hamon_shown(const BladeCase& blade) {
  const Finding* hamon = finding_of(blade, FindingKind::hamon_seen);
  return hamon && (seen_after_etch(blade, *hamon) || seen_after_polish(blade, *hamon)) &&
         !seen_before_quench(blade, *hamon) && !only_a_stencil(blade, *hamon);
}

void need_quench(const BladeCase& blade, Needs& needs) {
  const Hardening* now = blade.heats.current();
  needs.lacking(!now || !now->quench, "a quench log of the hardening this blade carries");
  needs.lacking(now && !now->clay && !now->edge, "clay or an edge quench in that log");
  needs.lacking(now && now->quench && now->quench->quench->still_air,
                "a quench in a bath; air and plates harden the whole blade alike");
  needs.lacking(air_hardening(blade), "a steel that does not harden in air");
}

std::string how_quenched(const Hardening& hardening) {
  return hardening.clay ? "with clay on the back" : "edge only";
}

std::vector<Evidence> quench_evidence(const Hardening& hardening) {
  return {log_evidence(*hardening.quench)};
}

}  // namespace

bool air_hardening(const BladeCase& blade) {
  const Share much_chromium = Share::percent(3);
  for (const Source& source : blade.trail.sources()) {
    if (!source.lot) continue;
    const Lot& lot = *source.lot;
    if (lot.facts && lot.facts->hardens_in) {
      if (*lot.facts->hardens_in == HardensIn::air) return true;
      continue;
    }
    if (lot.analysis && lot.analysis->contains("Cr")) {
      if (lot.analysis->at("Cr") >= much_chromium) return true;
    } else if (lot.facts && lot.facts->limits.contains("Cr")) {
      const auto& lo = lot.facts->limits.at("Cr").lo;
      if (lo && *lo >= much_chromium) return true;
    }
  }
  return false;
}

Judgement judge_heat_treatment(const BladeCase& blade) {
  const Hardening* now = blade.heats.current();
  const OutsideWork* outside = outside_of(blade, OutsideKind::heat_treatment);
  if (!now && outside) return treated_outside(*outside);
  Needs needs;
  needs.lacking(!now, "a hardening in the bench log, or an outside heat treatment on record");
  needs.lacking(now && now->temper_entries.empty(), "a temper after the quench");
  if (needs.any()) return needs.missing(Claim::heat_treatment);

  const Manner& manner = blade.dossier.manner;
  const BenchEntry& soak = soak_line(*now);
  std::string text = "Hardened: " + heat_text(soak, manner);
  if (soak.heat && soak.heat->hold) text += ", " + to_text(*soak.heat->hold) + " soak";
  text += quench_text(*now, manner) + "." + temper_text(*now, manner);

  std::vector<Evidence> evidence = heat_evidence(soak, manner.zone);
  if (now->quench && now->quench != &soak) evidence.push_back(log_evidence(*now->quench));
  std::vector<const BenchEntry*> steps = now->temper_entries;
  for (const BenchEntry* temper : steps) append(evidence, heat_evidence(*temper, manner.zone));
  steps.push_back(&soak);
  for (const std::string& name : outside_names(steps)) {
    text += " In part by " + name + ", not by this shop.";
    evidence.push_back({EvidenceKind::outside_word, name});
  }
  return stated(Claim::heat_treatment, text, evidence);
}

Judgement judge_sub_zero(const BladeCase& blade) {
  Needs needs;
  const Hardening* now = blade.heats.current();
  const BenchEntry* entry = now ? now->subzero : nullptr;
  needs.lacking(!entry, "a cold step in the bench log after the quench");
  needs.lacking(entry && (!entry->cold || !entry->cold->temperature), "its real temperature");
  needs.lacking(entry && (!entry->cold || !entry->cold->time), "its time");
  needs.lacking(entry && entry->cold && entry->cold->temperature &&
                    *entry->cold->temperature >= Temperature::celsius(0),
                "a temperature below 0 °C");
  if (needs.any()) return needs.missing(Claim::sub_zero);
  std::string text = "Cold step after the quench: " +
                     to_text(*entry->cold->temperature, blade.dossier.manner.temperature) + ", " +
                     to_text(*entry->cold->time);
  if (!entry->cold->medium.empty()) text += ", " + entry->cold->medium;
  std::vector<Evidence> evidence = {log_evidence(*entry)};
  if (entry->hand.outside()) {
    text += ", by " + hand_name(entry->hand);
    evidence.push_back({EvidenceKind::outside_word, hand_name(entry->hand)});
  }
  return stated(Claim::sub_zero, text + ".", evidence);
}

Judgement judge_differential(const BladeCase& blade) {
  Needs needs;
  need_quench(blade, needs);
  needs.lacking(!hamon_shown(blade) && !shown_by_readings(blade),
                "a hamon seen after etch or polish, or hardness at edge and spine that differs");
  if (needs.any()) return needs.missing(Claim::differential);
  const Hardening& now = *blade.heats.current();
  std::vector<Evidence> evidence = quench_evidence(now);
  evidence.push_back({EvidenceKind::seen_on_blade, hamon_shown(blade)
                                                       ? "hamon after etch or polish"
                                                       : "hardness at edge and spine"});
  return stated(
      Claim::differential,
      "One hardening with a hard edge and a softer back: quenched " + how_quenched(now) + ".",
      evidence);
}

Judgement judge_hamon(const BladeCase& blade) {
  Needs needs;
  need_quench(blade, needs);
  const Finding* hamon = finding_of(blade, FindingKind::hamon_seen);
  needs.lacking(!hamon, "a hamon found on this blade");
  needs.lacking(hamon && !seen_after_etch(blade, *hamon) && !seen_after_polish(blade, *hamon),
                "the hamon seen after etch or polish");
  needs.lacking(hamon && seen_before_quench(blade, *hamon),
                "the hamon seen after the hardening that the blade carries");
  needs.lacking(hamon && only_a_stencil(blade, *hamon),
                "the hamon seen after polish; an image was etched on this blade through a resist");
  if (needs.any()) return needs.missing(Claim::hamon);
  const Hardening& now = *blade.heats.current();
  std::vector<Evidence> evidence = quench_evidence(now);
  evidence.push_back({EvidenceKind::seen_on_blade, "finding " + std::to_string(hamon->number)});
  return stated(
      Claim::hamon,
      "The line is the border between hard edge and softer back in the steel, from a quench " +
          how_quenched(now) + ", made visible by etch or polish. It is no weld and no layer.",
      evidence);
}

}  // namespace tangmark::certificate
