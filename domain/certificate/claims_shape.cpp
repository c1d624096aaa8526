// SPDX-License-Identifier: MIT
#include "domain/certificate/claims_shape.h"

#include <algorithm>

#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

std::vector<const BenchEntry*> entries_of(const BladeCase& blade,
                                          std::initializer_list<Operation> operations) {
  std::vector<const BenchEntry*> entries;
  for (const BenchEntry* entry : blade.heats.live())
    if (std::find(operations.begin(), operations.end(), entry->operation) != operations.end())
      entries.push_back(entry);
  return entries;
}

// The weakest line stands for all of them.
Evidence evidence_of(const std::vector<const BenchEntry*>& entries) {
  const auto later = std::find_if(entries.begin(), entries.end(), [](const BenchEntry* entry) {
    return entry->logged == Logged::later;
  });
  return log_evidence(later == entries.end() ? *entries.front() : **later);
}

void add_outside(const std::vector<const BenchEntry*>& entries, std::vector<Evidence>& evidence) {
  for (const std::string& name : outside_names(entries))
    evidence.push_back({EvidenceKind::outside_word, name});
}

std::vector<const BenchEntry*> shaping(const BladeCase& blade) {
  return entries_of(blade, {Operation::forge, Operation::profile, Operation::rough_grind,
                            Operation::finish_grind});
}

std::vector<std::string> other_hands(const BladeCase& blade) {
  std::vector<std::string> names;
  const auto note = [&](const Hand& hand, const std::string& what) {
    if (hand.whose != Whose::maker) names.push_back(what + " by " + hand_name(hand));
  };
  for (const BenchEntry* entry : blade.heats.live()) note(entry->hand, operation_text(*entry));
  for (const BilletUse& use : blade.trail.billets())
    for (const WeldStage& stage : use.billet->stages)
      note(stage.hand, "billet " + use.billet->tag.text);
  for (const Source& source : blade.trail.sources())
    if (source.melt) note(source.melt->hand, "melt " + source.melt->tag.text);
  for (const OutsideWork& work : blade.dossier.outside)
    names.push_back(work.what + " by " + (work.by.empty() ? "an outside service" : work.by));
  std::sort(names.begin(), names.end());
  names.erase(std::unique(names.begin(), names.end()), names.end());
  return names;
}

std::string outside_text(const OutsideWork& work) {
  std::string text = capital(work.what) + " by " + work.by;
  if (!work.their_words.empty())
    text += ", in the words of their slip: \"" + work.their_words + "\"";
  return text + ".";
}

}  // namespace

Judgement judge_forged(const BladeCase& blade) {
  const auto forging = entries_of(blade, {Operation::forge});
  if (forging.empty())
    return Missing{Claim::forged, {"a forge step in the bench log of this blade"}};
  std::vector<Evidence> evidence = {evidence_of(forging)};
  add_outside(forging, evidence);
  const auto smiths = outside_names(forging);
  const bool ground = blade.heats.logged(Operation::rough_grind) ||
                      blade.heats.logged(Operation::finish_grind);
  return stated(Claim::forged,
                smiths.empty() ? std::string("Forged to shape here") +
                                     (ground ? ", then ground." : "; no grinding is on record.")
                               : "Forged to shape by " + listed(smiths) + ", not by this shop.",
                evidence);
}

Judgement judge_stock_removal(const BladeCase& blade) {
  Needs needs;
  const auto grinding =
      entries_of(blade, {Operation::profile, Operation::rough_grind, Operation::finish_grind});
  needs.lacking(grinding.empty(), "profile or grind steps in the bench log");
  needs.lacking(blade.heats.logged(Operation::forge), "a blade with no forge step");
  if (needs.any()) return needs.missing(Claim::stock_removal);
  std::vector<Evidence> evidence = {evidence_of(grinding)};
  add_outside(grinding, evidence);
  const auto hands = outside_names(grinding);
  const bool ground = blade.heats.logged(Operation::rough_grind) ||
                      blade.heats.logged(Operation::finish_grind);
  const std::string how = !ground                                     ? "Cut to shape"
                          : blade.heats.logged(Operation::profile) ? "Cut and ground to shape"
                                                                      : "Ground to shape";
  return stated(Claim::stock_removal,
                how +
                    (hands.empty() ? " here" : ", in part by " + listed(hands)) +
                    "; not forged to shape.",
                evidence);
}

Judgement judge_outside_work(const BladeCase& blade) {
  Needs needs;
  std::vector<std::string> sentences;
  std::vector<Evidence> evidence;
  for (const OutsideWork& work : blade.dossier.outside) {
    const std::string name = work.what.empty() ? "outside work" : work.what;
    needs.lacking(work.what.empty(), "what was done outside");
    needs.lacking(work.by.empty(), "who did the " + name);
    if (work.what.empty() || work.by.empty()) continue;
    sentences.push_back(outside_text(work));
    evidence.push_back(
        {work.slip_on_file ? EvidenceKind::outside_slip : EvidenceKind::outside_word, work.by});
  }
  for (const BenchEntry* entry : blade.heats.live()) {
    if (!entry->hand.outside()) continue;
    sentences.push_back(capital(operation_text(*entry)) + " by " + hand_name(entry->hand) + ".");
    evidence.push_back({EvidenceKind::outside_word, hand_name(entry->hand)});
  }
  for (const BilletUse& use : blade.trail.billets())
    for (const WeldStage& stage : use.billet->stages)
      if (stage.hand.outside()) {
        sentences.push_back("Billet " + use.billet->tag.text + " in part by " +
                            hand_name(stage.hand) + ".");
        evidence.push_back({EvidenceKind::outside_word, hand_name(stage.hand)});
        break;
      }
  needs.lacking(sentences.empty() && !needs.any(), "work done elsewhere; none is on record");
  if (needs.any()) return needs.missing(Claim::outside_work);
  std::string text;
  for (const std::string& sentence : sentences) text += (text.empty() ? "" : " ") + sentence;
  return stated(Claim::outside_work, text, evidence);
}

Judgement judge_sole_author(const BladeCase& blade) {
  Needs needs;
  const auto shape = shaping(blade);
  const auto harden = entries_of(blade, {Operation::harden});
  const auto temper = entries_of(blade, {Operation::temper});
  const auto handle = entries_of(blade, {Operation::handle, Operation::glue, Operation::fit_up});
  needs.lacking(blade.dossier.maker.empty(), "the maker's name");
  needs.lacking(shape.empty(), "forge, profile or grind steps in the bench log");
  needs.lacking(harden.empty() || temper.empty(), "hardening and temper in the bench log");
  needs.lacking(!blade.dossier.handle.empty() && handle.empty(), "handle work in the bench log");
  for (const std::string& hand : other_hands(blade))
    needs.lacking(true, "work by the maker alone; " + hand + " is on record");
  for (const Source& source : blade.trail.sources())
    needs.lacking(source.lot && source.lot->sold_as != SoldAs::one_steel,
                  "a billet of the maker's own; " +
                      (source.lot ? lot_name(*source.lot) : std::string()) +
                      " was bought ready welded");
  if (needs.any()) return needs.missing(Claim::sole_author);
  std::vector<Evidence> evidence = {evidence_of(shape), evidence_of(harden), evidence_of(temper)};
  if (!handle.empty()) evidence.push_back(evidence_of(handle));
  for (const BilletUse& use : blade.trail.billets())
    evidence.push_back(stage_evidence(*use.billet));
  return stated(
      Claim::sole_author,
      "Made by " + blade.dossier.maker +
          " alone: every step on record was the maker's own; steel and handle material as "
          "named above.",
      evidence);
}

}  // namespace tangmark::certificate
