// SPDX-License-Identifier: MIT
#include "domain/certificate/claims_handle.h"

#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

EvidenceKind kind_of(SpeciesEvidence evidence) {
  switch (evidence) {
    case SpeciesEvidence::laboratory:
      return EvidenceKind::material_examined;
    case SpeciesEvidence::document:
      return EvidenceKind::material_papers;
    case SpeciesEvidence::label:
      return EvidenceKind::material_label;
    case SpeciesEvidence::suppliers_word:
      return EvidenceKind::material_word;
    case SpeciesEvidence::not_known:
      break;
  }
  return EvidenceKind::material_not_known;
}

std::string material_text(const HandleMaterial& material) {
  std::string text =
      capital(material.part.empty() ? "handle" : material.part) + ": " + material.material;
  if (material.species) text += ", " + *material.species;
  if (material.source) text += ", from " + *material.source;
  for (const std::string& treatment : material.treatments) text += ", " + treatment;
  if (!material.papers.empty()) text += "; papers on file: " + listed(material.papers);
  return text + ".";
}

}  // namespace

Judgement judge_handle_species(const BladeCase& blade) {
  Needs needs;
  needs.lacking(blade.dossier.handle.empty(), "the materials of the handle");
  std::string text;
  std::vector<Evidence> evidence;
  for (const HandleMaterial& material : blade.dossier.handle) {
    needs.lacking(material.material.empty(), "the name of a handle material");
    const std::string name = material.material;
    if (material.natural) {
      needs.lacking(!material.species || material.species->empty(), "the species of the " + name);
      needs.lacking(!material.source || material.source->empty(), "the source of the " + name);
      needs.lacking(material.evidence == SpeciesEvidence::not_known,
                    "somebody who answers for the species of the " + name);
    }
    text += (text.empty() ? "" : " ") + material_text(material);
    if (material.natural || material.evidence != SpeciesEvidence::not_known)
      evidence.push_back({kind_of(material.evidence), name});
    else
      evidence.push_back({EvidenceKind::seen_on_blade, name});
  }
  if (needs.any()) return needs.missing(Claim::handle_species);
  return stated(Claim::handle_species, text, evidence);
}

}  // namespace tangmark::certificate
