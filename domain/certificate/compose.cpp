// SPDX-License-Identifier: MIT
#include "domain/certificate/compose.h"

#include <algorithm>

#include "domain/certificate/claims_hardness.h"
#include "domain/certificate/contradictions.h"
#include "domain/certificate/hard_states.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

void add_missing(std::vector<Missing>& missing, Claim claim,
                 const std::vector<std::string>& needs) {
  auto known = std::find_if(missing.begin(), missing.end(),
                            [&](const Missing& m) { return m.claim == claim; });
  if (known == missing.end()) {
    missing.push_back({claim, {}});
    known = missing.end() - 1;
  }
  for (const std::string& need : needs)
    if (std::find(known->needs.begin(), known->needs.end(), need) == known->needs.end())
      known->needs.push_back(need);
}

// A grade stands on its own evidence; only what else its text says is read here.
bool about_grade_alone(const FreeText& text, const WordHit& hit) {
  return text.where.starts_with("grade of ") && hit.needs == Claim::grade;
}

void read_texts(const BladeCase& blade, const Judgements& judgements, CertificateDraft& draft) {
  for (const FreeText& text : printed_texts(blade)) {
    for (const WordHit& hit : denied_against_record(blade, judgements, text.text))
      draft.warnings.push_back("\"" + hit.word + "\" is denied in " + text.where +
                               ", but the record shows it.");
    for (const WordHit& hit : wording(blade, judgements, text.text)) {
      if (hit.proven || about_grade_alone(text, hit)) continue;
      draft.words.push_back({text.where, hit});
      if (hit.needs) {
        add_missing(draft.missing, *hit.needs, hit.lacking);
        continue;
      }
      draft.blocks.push_back(
          {"\"" + hit.word + "\" in " + text.where + ": " + listed(hit.lacking) + ".",
           hit.truthful.empty() ? "Leave it out." : "Write instead: " + hit.truthful.front() + ".",
           15});
    }
  }
}

void state_absences(const BladeCase& blade, const Judgements& judgements, CertificateDraft& draft) {
  const auto asked = [&](Claim claim) {
    return std::any_of(draft.missing.begin(), draft.missing.end(),
                       [&](const Missing& m) { return m.claim == claim; });
  };
  const Hardening* now = blade.heats.current();
  if (!holds(judgements.at(Claim::hardness)) && !asked(Claim::hardness))
    draft.statements.push_back(hardness_not_measured(blade));
  if (!holds(judgements.at(Claim::heat_treatment)) && !asked(Claim::heat_treatment))
    draft.absences.push_back({Claim::heat_treatment, "Not recorded."});
  if (now && !now->subzero && !asked(Claim::sub_zero))
    draft.absences.push_back({Claim::sub_zero, "Not done."});
  if (!blade.dossier.handle.empty() && !holds(judgements.at(Claim::handle_species)) &&
      !asked(Claim::handle_species))
    draft.absences.push_back({Claim::handle_species, "Species or source not recorded."});
}

void choose_name(const BladeCase& blade, const Judgements& judgements, CertificateDraft& draft) {
  draft.names = truthful_names(blade, judgements);
  const auto& wish = blade.dossier.chosen_name;
  const auto chosen =
      wish ? std::find_if(draft.names.begin(), draft.names.end(),
                          [&](const TruthfulName& name) { return name.name == *wish; })
           : draft.names.begin();
  if (chosen == draft.names.end()) {
    draft.blocks.push_back(
        {"The name \"" + *wish + "\" says more than the record of this blade.",
         "Choose one of: " + draft.names.front().name + ", or another that is offered.", 15});
    draft.name = draft.names.front().name;
  } else {
    draft.name = chosen->name;
  }
  if (!draft.names.front().explanation.empty())
    draft.explanations.push_back(draft.names.front().explanation);
}

void add_steel_texts(const BladeCase& blade, std::vector<FreeText>& texts) {
  const SteelTrail& steel = blade.dossier.steel;
  for (const Piece& piece : steel.pieces)
    if (piece.identity != Identity::kept && piece.identity_note)
      texts.push_back({"the note on piece " + piece.tag.text, *piece.identity_note});
  for (const Billet& billet : steel.billets)
    if (billet.pattern_name)
      texts.push_back({"pattern of billet " + billet.tag.text, *billet.pattern_name});
  for (const Lot& lot : steel.lots)
    if (lot.grade) texts.push_back({"grade of " + lot_name(lot), *lot.grade});
  // These print only where the trail of the blade reaches the lot.
  for (const Source& source : blade.trail.sources()) {
    if (source.lot == nullptr) continue;
    const Lot& lot = *source.lot;
    if (lot.recycled_from) texts.push_back({"what " + lot_name(lot) + " was", *lot.recycled_from});
    for (const std::string& test : lot.own_tests)
      texts.push_back({"own test of " + lot_name(lot), test});
  }
}

}  // namespace

std::vector<FreeText> printed_texts(const BladeCase& blade) {
  const Dossier& dossier = blade.dossier;
  std::vector<FreeText> texts = {{"title", dossier.title}, {"item", dossier.item}};
  texts.insert(texts.end(), dossier.free_texts.begin(), dossier.free_texts.end());
  for (const Finding& finding : dossier.findings)
    if (must_be_told(finding))
      texts.push_back({"finding " + std::to_string(finding.number),
                       finding.what + ". " + finding.place + ". " + finding.how});
  for (const Correction& one : log_corrections(dossier))
    texts.push_back({"reason for correcting " + one.of, one.why});
  for (const Correction& one : dossier.corrections)
    texts.push_back({"reason for correcting " + one.of, one.why});
  for (const BenchEntry& entry : dossier.log)
    if (entry.heat && entry.heat->record && entry.heat->record->set_right)
      texts.push_back({"reason for correcting the record of " + operation_text(entry),
                       entry.heat->record->set_right->why});
  for (const std::string& difference : dossier.order.differences)
    texts.push_back({"differences from the order", difference});
  for (const std::string& finish : dossier.finish) texts.push_back({"finish", finish});
  for (const Photo& photo : dossier.photos)
    texts.push_back({"what photo " + std::to_string(photo.number) + " shows", photo.shows});
  add_steel_texts(blade, texts);
  for (const HandleMaterial& material : dossier.handle) {
    for (const std::string& treatment : material.treatments)
      texts.push_back({"treatment of the " + material.part, treatment});
    for (const std::string& note : material.health_notes)
      texts.push_back({"health note on the " + material.part, note});
  }
  return texts;
}

CertificateDraft compose(const Dossier& dossier) {
  const BladeCase blade(dossier);
  const Judgements judgements = judge_all(blade);
  CertificateDraft draft;
  for (Claim claim : all_claims)
    if (const auto* statement = std::get_if<Statement>(&judgements.at(claim)))
      draft.statements.push_back(*statement);
  for (Claim claim : dossier.requested)
    if (const auto* missing = std::get_if<Missing>(&judgements.at(claim)))
      add_missing(draft.missing, claim, missing->needs);
  draft.blocks = hard_states(blade);
  for (Refusal& refusal : contradictions(blade)) draft.blocks.push_back(std::move(refusal));
  choose_name(blade, judgements, draft);
  read_texts(blade, judgements, draft);
  state_absences(blade, judgements, draft);
  draft.disclosures = disclosures(blade);
  return draft;
}

}  // namespace tangmark::certificate
