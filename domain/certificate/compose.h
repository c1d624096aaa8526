// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/certificate/blade_case.h"
#include "domain/certificate/disclosures.h"
#include "domain/certificate/dossier.h"
#include "domain/certificate/pattern_name.h"
#include "domain/certificate/statement.h"
#include "domain/certificate/wording.h"

namespace tangmark::certificate {

/// A word of the maker's own text that the record does not bear, with where it stands.
struct RefusedWord {
  std::string where;  ///< "title", "notes", "finding 3"
  WordHit hit;
  friend bool operator==(const RefusedWord&, const RefusedWord&) = default;
};

/// Everything a certificate would say, and everything that stops it.
struct CertificateDraft {
  std::string name;                       ///< the truthful name that was chosen, or the plainest
  std::vector<TruthfulName> names;        ///< what the maker may choose among
  std::vector<std::string> explanations;  ///< sentences that keep looser words apart
  std::vector<Statement> statements;
  std::vector<Absence> absences;  ///< printed with the rank of statements
  std::vector<Missing> missing;   ///< claims asked for, by request or by word, without evidence
  std::vector<Disclosure> disclosures;
  std::vector<Refusal> blocks;        ///< hard states, contradictions, words no record could show
  std::vector<RefusedWord> words;     ///< the words behind `missing` and `blocks`
  std::vector<std::string> warnings;  ///< a text that denies what the record shows
  bool may_issue() const { return missing.empty() && blocks.empty(); }
};

/// Composes the certificate of a blade. Statements follow from the record alone; what the maker
/// asks for beyond it lands in `missing` and stops the issue. Never fails: a dossier without any
/// fact gives a draft that says so and may not be issued.
CertificateDraft compose(const Dossier& dossier);

/// Every text the maker typed that a certificate would print, with where it stands.
std::vector<FreeText> printed_texts(const BladeCase& blade);

}  // namespace tangmark::certificate
