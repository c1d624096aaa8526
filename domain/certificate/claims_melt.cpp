// SPDX-License-Identifier: MIT
#include "domain/certificate/claims_melt.h"

#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

const Source* melted(const BladeCase& blade, MeltKind kind) {
  for (const Source& source : blade.trail.sources())
    if (source.melt && source.melt->kind == kind) return &source;
  return nullptr;
}

std::string charge_text(const Melt& melt, MassUnit unit) {
  // A charge that was weighed as a whole names its parts in words of its own.
  if (melt.charge.size() == 1)
    return melt.charge[0].what + "; in all " + to_text(melt.charge[0].mass, unit);
  std::vector<std::string> parts;
  for (const ChargePart& part : melt.charge)
    parts.push_back(part.what + " " + to_text(part.mass, unit));
  return listed(parts);
}

bool charge_weighed(const Melt& melt) {
  for (const ChargePart& part : melt.charge)
    if (part.what.empty() || part.mass <= Mass()) return false;
  return !melt.charge.empty();
}

std::string by_whom(const Melt& melt) {
  return melt.hand.outside() ? hand_name(melt.hand) + ", not by this shop" : "this shop";
}

std::string carbon_text(const Melt& melt) {
  if (melt.analysis && melt.analysis->contains("C"))
    return " Carbon " + percent_figure(melt.analysis->at("C")) + " %, " +
           (melt.measured_how.empty() ? "measured; by whom is not noted" : melt.measured_how) + ".";
  if (melt.carbon_from_charge)
    return " Carbon about " + percent_figure(*melt.carbon_from_charge) +
           " %, an estimate from the charge, not measured.";
  return " Carbon not measured.";
}

std::vector<Evidence> melt_evidence(const Source& source) {
  const Melt& melt = *source.melt;
  std::vector<Evidence> evidence = {
      {melt.logged == Logged::at_the_time ? EvidenceKind::logged_at_the_time
                                          : EvidenceKind::logged_later,
       "record of melt " + melt.tag.text},
      chain_evidence(source)};
  if (melt.hand.outside()) evidence.push_back({EvidenceKind::outside_word, hand_name(melt.hand)});
  if (!melt.photos.empty())
    evidence.push_back({EvidenceKind::photograph, "ingot of melt " + melt.tag.text});
  return evidence;
}

void need_crucible_record(const Source* source, Needs& needs) {
  needs.lacking(!source, "a melt record in a crucible, to whose ingot the blade is traced");
  if (!source) return;
  const Melt& melt = *source->melt;
  const std::string of = " of melt " + melt.tag.text;
  needs.lacking(!charge_weighed(melt), "the charge" + of + ", part by part with its mass");
  needs.lacking(!melt.lining || melt.lining->empty(), "crucible and lining" + of);
  needs.lacking(!melt.peak, "the peak temperature" + of);
  needs.lacking(!melt.time, "the time at heat" + of);
  needs.lacking(!melt.ingot_mass, "the ingot mass" + of);
  needs.lacking(source->open_gaps > 0, "an unbroken record of the pieces from the ingot" + of);
}

// How a blade's steel stands to the ingot when there are other steels in it.
std::string share_text(const BladeCase& blade) {
  return blade.trail.sources().size() > 1 ? "One steel of this blade was melted" : "Melted";
}

std::string crucible_text(const BladeCase& blade, const Melt& melt) {
  const Manner& manner = blade.dossier.manner;
  std::string text = share_text(blade) + " in a crucible by " + by_whom(melt);
  if (melt.day) text += " on " + to_text(*melt.day);
  text += " (melt " + melt.tag.text + "). Charge: " + charge_text(melt, manner.mass) +
          ". Lining: " + *melt.lining + ". Peak " + to_text(*melt.peak, manner.temperature) + ", " +
          to_text(*melt.time) + " at heat. Ingot " + to_text(*melt.ingot_mass, manner.mass) + "." +
          carbon_text(melt);
  return text;
}

}  // namespace

Judgement judge_crucible(const BladeCase& blade) {
  Needs needs;
  const Source* source = melted(blade, MeltKind::crucible);
  need_crucible_record(source, needs);
  if (needs.any()) return needs.missing(Claim::crucible);
  return stated(Claim::crucible, crucible_text(blade, *source->melt), melt_evidence(*source));
}

Judgement judge_wootz(const BladeCase& blade) {
  Needs needs;
  const Source* source = melted(blade, MeltKind::crucible);
  need_crucible_record(source, needs);
  needs.lacking(source && !blade.trail.only_source(),
                "a blade of that one ingot, with no other steel");
  const Finding* pattern = finding_of(blade, FindingKind::pattern_carbides);
  needs.lacking(!pattern, "a carbide pattern found on this blade");
  needs.lacking(pattern && !seen_after_etch(blade, *pattern), "the pattern seen after an etch");
  if (needs.any()) return needs.missing(Claim::wootz);
  std::vector<Evidence> evidence = melt_evidence(*source);
  evidence.push_back({EvidenceKind::seen_on_blade,
                      "carbide pattern after etch, finding " + std::to_string(pattern->number)});
  return stated(
      Claim::wootz,
      "Wootz in the sense of crucible steel with a pattern of carbides: grown in the ingot of "
      "melt " +
          source->melt->tag.text +
          " and brought out by etching. Nothing was welded; there are no layers.",
      evidence);
}

Judgement judge_smelted(const BladeCase& blade) {
  Needs needs;
  const Source* source = melted(blade, MeltKind::bloomery);
  needs.lacking(!source, "a smelt record, to whose bloom the blade is traced");
  if (source) {
    const std::string of = " of smelt " + source->melt->tag.text;
    needs.lacking(!charge_weighed(*source->melt),
                  "the charge" + of + ", part by part with its mass");
    needs.lacking(!source->melt->ingot_mass, "the mass won" + of);
    needs.lacking(source->open_gaps > 0, "an unbroken record of the pieces from the bloom" + of);
  }
  if (needs.any()) return needs.missing(Claim::smelted);
  const Melt& melt = *source->melt;
  std::string text =
      (blade.trail.sources().size() > 1 ? "One steel of this blade was smelted" : "Smelted") +
      std::string(" from ore by ") + by_whom(melt);
  if (melt.day) text += " on " + to_text(*melt.day);
  text +=
      " (smelt " + melt.tag.text + "). Charge: " + charge_text(melt, blade.dossier.manner.mass) +
      ". Won: " + to_text(*melt.ingot_mass, blade.dossier.manner.mass) + "." + carbon_text(melt);
  return stated(Claim::smelted, text, melt_evidence(*source));
}

}  // namespace tangmark::certificate
