// SPDX-License-Identifier: MIT
#include "domain/certificate/claims_hardness.h"

#include <algorithm>
#include <cstdlib>

#include "domain/certificate/claims_construction.h"
#include "domain/certificate/dossier_words.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

bool after_last_heat(const BladeCase& blade, const HardnessReading& reading) {
  if (reading.after != AfterHeat::not_noted) return reading.after == AfterHeat::last;
  const BenchEntry* heat = blade.heats.last_heat();
  if (!heat || !reading.taken) return false;
  const std::optional<Instant> done = heat->to ? heat->to : heat->from;
  return done && *reading.taken >= *done;
}

bool complete(const HardnessReading& reading) {
  const bool files = reading.scale == HardnessScale::file_set;
  return !reading.place.empty() && (files || !reading.tester.empty());
}

bool counts(const BladeCase& blade, const HardnessReading& reading) {
  return !reading.superseded && after_last_heat(blade, reading) && complete(reading);
}

std::vector<const HardnessReading*> of_scale(const BladeCase& blade, HardnessScale scale,
                                             bool coupon) {
  std::vector<const HardnessReading*> readings;
  for (const HardnessReading& reading : blade.dossier.hardness)
    if (counts(blade, reading) && reading.scale == scale &&
        (reading.on == MeasuredOn::coupon) == coupon)
      readings.push_back(&reading);
  return readings;
}

bool block_checked(const HardnessReading& reading, const Zone& zone) {
  return reading.block && reading.taken && reading.block->day == zone.date_of(*reading.taken) &&
         std::abs(reading.block->read_tenths - reading.block->block_tenths) <= block_margin_tenths;
}

std::string range_text(const std::vector<const HardnessReading*>& readings) {
  int low = readings[0]->tenths;
  int high = low;
  for (const HardnessReading* reading : readings) {
    low = std::min(low, reading->tenths);
    high = std::max(high, reading->tenths);
  }
  const std::string unit = " " + std::string(word_of(readings[0]->scale));
  return low == high ? tenths_text(low) + unit
                     : tenths_text(low) + " to " + tenths_text(high) + unit;
}

std::string places_text(const std::vector<const HardnessReading*>& readings) {
  std::vector<std::pair<std::string, std::vector<std::string>>> places;
  for (const HardnessReading* reading : readings) {
    auto known = std::find_if(places.begin(), places.end(), [&](const auto& place) {
      return place.first == reading->place;
    });
    if (known == places.end()) known = places.insert(places.end(), {reading->place, {}});
    known->second.push_back(tenths_text(reading->tenths));
  }
  std::string text;
  for (const auto& [place, figures] : places)
    text += (text.empty() ? "" : "; ") + listed(figures) +
            (place.starts_with("near") ? " " : " at ") + place;
  return text;
}

std::string testers_text(const std::vector<const HardnessReading*>& readings) {
  std::vector<std::string> testers;
  for (const HardnessReading* reading : readings)
    if (std::find(testers.begin(), testers.end(), reading->tester) == testers.end())
      testers.push_back(reading->tester);
  return (testers.size() == 1 ? "tester: " : "testers: ") + listed(testers);
}

// Every check that was made, each once, and whether some reading went without one.
std::string block_text(const std::vector<const HardnessReading*>& readings) {
  std::vector<std::string> checks;
  bool unchecked = false;
  for (const HardnessReading* reading : readings) {
    if (!reading->block) {
      unchecked = true;
      continue;
    }
    const BlockCheck& block = *reading->block;
    const bool off = std::abs(block.read_tenths - block.block_tenths) > block_margin_tenths;
    std::string check = "Block of " + tenths_text(block.block_tenths) + " read " +
                        tenths_text(block.read_tenths) + " on " + to_text(block.day) +
                        (off ? ", out by more than its margin." : ".");
    if (std::find(checks.begin(), checks.end(), check) == checks.end()) checks.push_back(check);
  }
  if (checks.empty()) return " The tester was not checked on a block.";
  std::string text;
  for (const std::string& check : checks) text += " " + check;
  return text + (unchecked ? " Not every reading had such a check." : "");
}

bool bought_laminated(const BladeCase& blade) {
  const auto& sources = blade.trail.sources();
  return std::any_of(sources.begin(), sources.end(), [](const Source& source) {
    return source.lot && source.lot->sold_as == SoldAs::laminated;
  });
}

bool core_named(const std::vector<const HardnessReading*>& readings) {
  return std::all_of(readings.begin(), readings.end(), [](const HardnessReading* reading) {
    return reading->place.find("core") != std::string::npos;
  });
}

// A figure met in one steel of a blade of several must not be read as that of the edge.
std::string of_its_place(const BladeCase& blade,
                         const std::vector<const HardnessReading*>& readings) {
  const bool laminated = bought_laminated(blade) || holds(judge_laminated(blade));
  if (laminated && !core_named(readings))
    return " Whether core or outer layer was met is not noted.";
  if (laminated || !blade.trail.billets().empty())
    return " Each figure is of its place, not of the whole.";
  return {};
}

Statement measured(const BladeCase& blade, const std::vector<const HardnessReading*>& readings,
                   bool coupon) {
  const bool hrc = readings[0]->scale == HardnessScale::hrc;
  std::string text = range_text(readings);
  text += coupon ? " on a coupon, not on this blade"
                 : " on this blade, after its last heat";
  text += " (" + places_text(readings) + ")";
  if (hrc) text += ", each read to \u00b11";
  text += "; " + testers_text(readings) + "." + block_text(readings);
  if (!coupon) text += of_its_place(blade, readings);
  EvidenceKind kind = EvidenceKind::hardness_coupon;
  if (!coupon) {
    const bool checked = readings.size() > 1 &&
                         std::all_of(readings.begin(), readings.end(), [&](const auto* reading) {
                           return block_checked(*reading, blade.dossier.manner.zone);
                         });
    kind = checked ? EvidenceKind::hardness_checked : EvidenceKind::hardness_unchecked;
  }
  return stated(Claim::hardness, text,
                {{kind, counted(static_cast<long long>(readings.size()), "reading", "readings")}});
}

Statement compared_with_files(const std::vector<const HardnessReading*>& readings, bool coupon) {
  std::string text = "By files only, no reading";
  for (const HardnessReading* reading : readings) {
    text += ": harder than the file of " + tenths_text(reading->tenths) + " HRC";
    if (reading->up_to_tenths)
      text += ", softer than that of " + tenths_text(*reading->up_to_tenths) + " HRC";
    text += " at " + reading->place;
    break;
  }
  if (coupon) text += ", on a coupon, not on this blade";
  return stated(Claim::hardness, text + ".", {{EvidenceKind::hardness_files, ""}});
}

}  // namespace

std::vector<const HardnessReading*> readings_that_count(const BladeCase& blade) {
  for (HardnessScale scale : {HardnessScale::hrc, HardnessScale::hv, HardnessScale::hra}) {
    auto readings = of_scale(blade, scale, false);
    if (!readings.empty()) return readings;
  }
  return {};
}

Judgement judge_hardness(const BladeCase& blade) {
  if (const auto readings = readings_that_count(blade); !readings.empty())
    return measured(blade, readings, false);
  for (HardnessScale scale : {HardnessScale::hrc, HardnessScale::hv, HardnessScale::hra})
    if (const auto readings = of_scale(blade, scale, true); !readings.empty())
      return measured(blade, readings, true);
  for (bool coupon : {false, true})
    if (const auto files = of_scale(blade, HardnessScale::file_set, coupon); !files.empty())
      return compared_with_files(files, coupon);

  Needs needs;
  const HardnessReading* any = nullptr;
  for (const HardnessReading& reading : blade.dossier.hardness)
    if (!reading.superseded) any = &reading;
  needs.lacking(!any, "a hardness reading on this blade");
  if (any) {
    needs.lacking(!after_last_heat(blade, *any),
                  "a reading taken after the last heat of this blade");
    needs.lacking(any->place.empty(), "the place of the reading");
    needs.lacking(any->scale != HardnessScale::file_set && any->tester.empty(), "the tester");
  }
  return needs.missing(Claim::hardness);
}

Statement hardness_not_measured(const BladeCase& blade) {
  const Dossier& d = blade.dossier;
  std::string text = "Not measured.";
  std::vector<Evidence> evidence = {{EvidenceKind::hardness_not_measured, ""}};
  if (d.expected_hrc_low && d.expected_hrc_high) {
    text += " Estimate, not a measurement: " + tenths_text(*d.expected_hrc_low) + " to " +
            tenths_text(*d.expected_hrc_high) + " HRC expected";
    if (!d.expected_hrc_source.empty()) text += " from " + d.expected_hrc_source;
    text += ".";
    evidence.push_back({EvidenceKind::hardness_expected, d.expected_hrc_source});
  }
  return stated(Claim::hardness, text, evidence);
}

}  // namespace tangmark::certificate
