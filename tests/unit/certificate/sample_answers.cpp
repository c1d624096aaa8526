// SPDX-License-Identifier: MIT
#include <algorithm>

#include "sample_blades.h"

namespace tangmark::certificate::sample {

const Statement* statement(const CertificateDraft& draft, Claim claim) {
  for (const Statement& s : draft.statements)
    if (s.claim == claim) return &s;
  return nullptr;
}

const Missing* missing(const CertificateDraft& draft, Claim claim) {
  for (const Missing& m : draft.missing)
    if (m.claim == claim) return &m;
  return nullptr;
}

CertificateDraft asked(Dossier dossier, Claim claim) {
  dossier.requested.push_back(claim);
  return compose(dossier);
}

bool granted(const Dossier& dossier, Claim claim) {
  const CertificateDraft draft = asked(dossier, claim);
  return statement(draft, claim) && !missing(draft, claim);
}

bool refused(const Dossier& dossier, Claim claim, std::string_view need) {
  const CertificateDraft draft = asked(dossier, claim);
  const Missing* lacking = missing(draft, claim);
  return lacking && !draft.may_issue() && needs_text(*lacking).find(need) != std::string::npos;
}

bool blocked(const Dossier& dossier, std::string_view words) {
  const CertificateDraft draft = compose(dossier);
  return !draft.may_issue() &&
         std::any_of(draft.blocks.begin(), draft.blocks.end(), [&](const Refusal& block) {
           return block.sentence.find(words) != std::string::npos;
         });
}

bool told(const Dossier& dossier, std::string_view words) {
  const CertificateDraft draft = compose(dossier);
  return std::any_of(draft.disclosures.begin(), draft.disclosures.end(),
                     [&](const Disclosure& d) { return d.text.find(words) != std::string::npos; });
}

}  // namespace tangmark::certificate::sample
