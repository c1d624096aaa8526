// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>

#include "domain/certificate/compose.h"
#include "domain/certificate/dossier.h"

namespace tangmark::certificate {

/// Number, issue and time of an issue, as they stand in its record.
struct IssueHead {
  std::int64_t number = 0, issue = 1;
  Instant issued{};
};

/// The record behind a certificate: what it says, on what evidence, and the facts it was computed
/// from, as one JSON object (RFC 8259). The same dossier and head give the same bytes: keys stand in
/// a fixed order, measures are whole counts with their unit in the key, times are UTC.
std::string record_text(const Dossier& dossier, const CertificateDraft& draft, const IssueHead& head);

}  // namespace tangmark::certificate
