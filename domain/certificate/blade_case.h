// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/certificate/dossier.h"
#include "domain/certificate/heat_history.h"
#include "domain/certificate/statement.h"
#include "domain/certificate/trail.h"

namespace tangmark::certificate {

/// One dossier with its trail and its heats read once, for the judges of all claims. A view: the
/// dossier must outlive it.
struct BladeCase {
  explicit BladeCase(const Dossier& d) : dossier(d), trail(d.steel), heats(d.log) {}
  const Dossier& dossier;
  Trail trail;
  HeatHistory heats;
};

/// Collects what a claim lacks.
class Needs {
 public:
  /// Adds a need when something is lacking.
  void lacking(bool lacks, std::string need) {
    if (lacks) needs_.push_back(std::move(need));
  }
  bool any() const { return !needs_.empty(); }
  Missing missing(Claim claim) const { return {claim, needs_}; }

 private:
  std::vector<std::string> needs_;
};

/// How a line of the log counts: at the time or entered later, by whom.
Evidence log_evidence(const BenchEntry& entry);
/// The same for a stage of a billet.
Evidence stage_evidence(const Billet& billet);
/// A live finding of this kind, or nullptr.
const Finding* finding_of(const BladeCase& blade, FindingKind kind);
/// Whether a finding was seen after an etch, or after a polish: as noted with it, or by its time
/// against the log. Hand sanding counts as polish.
bool seen_after_etch(const BladeCase& blade, const Finding& finding);
bool seen_after_polish(const BladeCase& blade, const Finding& finding);
/// The names of all outside hands in a list of log lines, each once.
std::vector<std::string> outside_names(const std::vector<const BenchEntry*>& entries);
/// Outside work of a kind, or nullptr.
const OutsideWork* outside_of(const BladeCase& blade, OutsideKind kind);

}  // namespace tangmark::certificate
