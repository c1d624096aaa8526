// SPDX-License-Identifier: MIT
#include "domain/certificate/catches.h"

#include <algorithm>

#include "domain/certificate/hard_states.h"

namespace tangmark::certificate {
namespace {

// Claims that need a step of the bench log or of a billet.
bool needs_a_step(Claim claim) {
  switch (claim) {
    case Claim::grade:
    case Claim::analysis:
    case Claim::handle_species:
    case Claim::unidentified:
    case Claim::outside_work:
    case Claim::hardness:
      return false;
    default:
      return true;
  }
}

}  // namespace

Catch level_above_chain(const Statement& statement) {
  if (statement.level >= weakest(statement.evidence)) return std::nullopt;
  return Caught{16, Weight::stop, "level",
                "A statement claims a level above the weakest link of its evidence.",
                "State it at the level of its weakest link."};
}

Catch fault_not_told(const Finding& finding, const std::vector<Disclosure>& told) {
  const std::string name = "Finding " + std::to_string(finding.number);
  if (waits_for_decision(finding))
    return Caught{17, Weight::stop, "decision", name + " has no decision.",
                  "Decide what becomes of it."};
  const bool absent = std::none_of(told.begin(), told.end(), [&](const Disclosure& disclosure) {
    return disclosure.finding == finding.number;
  });
  if (!must_be_told(finding) || !absent) return std::nullopt;
  return Caught{17, Weight::stop, "disclosures", name + " is not told on the certificate.",
                "Compose the certificate again."};
}

Catch species_abroad(const HandleMaterial& material, const Dossier& dossier) {
  const bool abroad = dossier.destination_country && dossier.home_country &&
                      *dossier.destination_country != *dossier.home_country;
  if (material.watch == TreatyWatch::none || !abroad) return std::nullopt;
  return Caught{18, Weight::ask, "destination",
                "The " + material.material + " is on the watch list and goes to " +
                    *dossier.destination_country + ".",
                material.papers.empty()
                    ? "No papers are on file: check the rules of both countries before sending."
                    : "Check that the papers on file cover this shipment."};
}

Catches caught_at_certificate(const Dossier& dossier, const CertificateDraft& draft) {
  Catches caught;
  const auto take = [&](Catch one) {
    if (one) caught.push_back(std::move(*one));
  };
  for (const Missing& missing : draft.missing) {
    const std::string words = needs_text(missing);
    if (missing.claim == Claim::hardness)
      caught.push_back({14, Weight::stop, "hardness",
                        "Hardness is asked for with no reading that bears it.",
                        "Needed: " + words + "."});
    else if (needs_a_step(missing.claim))
      caught.push_back(
          {15, Weight::stop, std::string(claim_id(missing.claim)),
           "\"" + std::string(claim_id(missing.claim)) + "\" is asked for without its step.",
           "Needed: " + words + "."});
  }
  for (const Statement& statement : draft.statements) take(level_above_chain(statement));
  for (const Finding& finding : dossier.findings)
    if (!finding.superseded) take(fault_not_told(finding, draft.disclosures));
  for (const HandleMaterial& material : dossier.handle) take(species_abroad(material, dossier));
  return caught;
}

}  // namespace tangmark::certificate
