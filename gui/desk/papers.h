// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/certificate/compose.h"
#include "domain/measure/outcome.h"
#include "gui/desk/place_view.h"
#include "gui/desk/sight.h"

namespace tangmark::reports {
class FontBook;
}

namespace tangmark::desk {

/// The fonts of this machine, read at their first use.
const reports::FontBook& fonts();

/// A document of the shop by its kind: "quote", "receipt", "invoice" of a commission; "traveller",
/// "certificate" of a blade; "firing-sheet" and "record" of a firing; "trial"; "day-list" of a day;
/// "lot-label", "piece-label", "blade-label". The very page that is printed.
Outcome<Paper> paper_of(const Sight& sight, const std::string& kind, const std::string& id);

/// The certificate of a blade as it would be issued now: what the record bears, and its page.
struct DraftCertificate {
  certificate::CertificateDraft draft;
  Paper paper;
};
Outcome<DraftCertificate> draft_certificate(const Sight& sight, const std::string& blade);

/// What stands between the blade and its certificate, in words; empty when it may be issued.
std::vector<std::string> missing_words(const certificate::CertificateDraft& draft);

/// The bytes of a document to be printed. Of a blade whose certificate stands, the frozen paper.
Outcome<std::string> printed_bytes(const Sight& sight, const std::string& kind,
                                   const std::string& id);

}  // namespace tangmark::desk
