// SPDX-License-Identifier: MIT
#include "domain/certificate/claims_pattern.h"

#include "domain/certificate/claims_steel.h"
#include "domain/certificate/limits_check.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

struct Threshold {
  std::string_view element;
  Share above;
};
constexpr Threshold band_formers[] = {{"C", Share::millionths(7600)},
                                      {"V", Share::millionths(1000)},
                                      {"Mo", Share::millionths(1000)},
                                      {"W", Share::millionths(1000)},
                                      {"Cr", Share::millionths(3000)}};

// The figure that the lot surely has: measured, or the lower limit of its grade.
std::optional<Share> sure_amount(const Lot& lot, const std::string& element) {
  const bool xray_carbon = lot.analysis_source == AnalysisSource::handheld_xray && element == "C";
  if (lot.analysis && lot.analysis->contains(element) && !xray_carbon)
    return lot.analysis->at(element);
  if (!lot.facts || !lot.facts->limits.contains(element)) return std::nullopt;
  return lot.facts->limits.at(element).lo;
}

std::optional<std::string> what_bands(const Lot& lot) {
  for (const Threshold& former : band_formers) {
    const auto amount = sure_amount(lot, std::string(former.element));
    if (!amount || *amount <= former.above) continue;
    const bool measured = lot.analysis && lot.analysis->contains(std::string(former.element));
    return std::string(former.element) + (measured ? " " : " at least ") + percent_figure(*amount) +
           " %" + (measured ? " by its analysis" : " by its grade");
  }
  return std::nullopt;
}

const BenchEntry* live_entry(const BladeCase& blade, Operation operation) {
  for (const BenchEntry* entry : blade.heats.live())
    if (entry->operation == operation) return entry;
  return nullptr;
}

const BenchEntry* etch_for(const BladeCase& blade, EtchPurpose purpose) {
  for (const BenchEntry* entry : blade.heats.live()) {
    if (entry->operation != Operation::etch) continue;
    const EtchPurpose what = entry->etch ? entry->etch->purpose : EtchPurpose::show_steel;
    if (what == purpose) return entry;
  }
  return nullptr;
}

bool one_bought_steel(const BladeCase& blade) {
  const Source* source = blade.trail.only_source();
  return source && source->lot && source->lot->sold_as == SoldAs::one_steel;
}

}  // namespace

Judgement judge_carbide_banded(const BladeCase& blade) {
  Needs needs;
  needs.lacking(!one_bought_steel(blade), "a blade of one bought bar of one steel");
  std::optional<std::string> reason;
  if (one_bought_steel(blade)) {
    const Source& source = *blade.trail.only_source();
    needs.lacking(!identified(source), "a bar whose grade somebody answers for");
    reason = what_bands(*source.lot);
    needs.lacking(!reason,
                  "carbon above 0.76 %, or V, Mo or W above 0.10 %, or Cr above 0.30 %, by "
                  "its analysis or grade");
  }
  const BenchEntry* cycles = live_entry(blade, Operation::thermal_cycle);
  const BenchEntry* etch = etch_for(blade, EtchPurpose::show_steel);
  const Finding* pattern = finding_of(blade, FindingKind::pattern_carbides);
  needs.lacking(!cycles, "thermal cycles in the bench log");
  needs.lacking(!etch, "an etch in the bench log");
  needs.lacking(!pattern, "a pattern of carbide bands found on this blade");
  needs.lacking(pattern && !seen_after_etch(blade, *pattern), "the pattern seen after the etch");
  if (needs.any()) return needs.missing(Claim::carbide_banded);
  const Source& source = *blade.trail.only_source();
  return stated(Claim::carbide_banded,
                "Carbide-banded bar steel: a bought bar of " + sold_name(*source.lot) + " (" +
                    *reason +
                    "), cycled so that its own alloy bands show after etching. Not melted in a "
                    "crucible by this shop, not pattern-welded.",
                {chain_evidence(source),
                 log_evidence(*cycles),
                 log_evidence(*etch),
                 {EvidenceKind::seen_on_blade,
                  "bands after etch, finding " + std::to_string(pattern->number)}});
}

Judgement judge_etched_image(const BladeCase& blade) {
  Needs needs;
  const BenchEntry* image = etch_for(blade, EtchPurpose::image);
  needs.lacking(!image, "an etch of an image in the bench log");
  needs.lacking(image && (!image->etch->resist || image->etch->resist->empty()),
                "the stencil or resist of that etch");
  needs.lacking(
      !blade.trail.only_source() || (blade.trail.only_source()->lot && !one_bought_steel(blade)),
      "a blade of one steel");
  if (needs.any()) return needs.missing(Claim::etched_image);
  return stated(Claim::etched_image,
                "The pattern is an image etched into the surface of one steel through " +
                    *image->etch->resist + ". There are no layers.",
                {chain_evidence(*blade.trail.only_source()), log_evidence(*image)});
}

}  // namespace tangmark::certificate
