// SPDX-License-Identifier: MIT
#pragma once

#include "domain/certificate/compose.h"
#include "domain/measure/caught.h"

namespace tangmark::certificate {

/// The slips of the trade that a certificate is the moment to catch, from the draft of a dossier:
/// 14 hardness asked for with no reading on this blade after its last heat; 15 a word with no
/// supporting step; 16 a level above the weakest link of its chain; 17 a fault with no decision, or
/// decided and absent from the certificate; 18 a species on the watch list that goes abroad.
Catches caught_at_certificate(const Dossier& dossier, const CertificateDraft& draft);

/// 16, for one statement: its level must be that of its weakest link.
Catch level_above_chain(const Statement& statement);
/// 17, for one finding against what is told.
Catch fault_not_told(const Finding& finding, const std::vector<Disclosure>& told);
/// 18, for one handle material.
Catch species_abroad(const HandleMaterial& material, const Dossier& dossier);

}  // namespace tangmark::certificate
