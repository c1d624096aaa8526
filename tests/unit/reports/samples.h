// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "reports/build_certificate.h"
#include "reports/day_list.h"
#include "reports/firing_sheet.h"
#include "reports/font_book.h"
#include "reports/invoice_paper.h"
#include "reports/label_sheet.h"
#include "reports/quote_paper.h"
#include "reports/receipt_paper.h"
#include "reports/traveller_card.h"

/// Papers of an invented shop: an ordinary one of each kind, and a strained one with everything
/// long, many and in other scripts.
namespace tangmark::reports::samples {

enum class Strain { ordinary, hard };

const FontBook& fonts();
Instant noon();    ///< 24 November 2026, 11:00 UTC
Look metric();     ///< A4, C, mm, Europe/Vienna
Look customary();  ///< Letter, F, inch, America/Chicago

Letterhead letterhead(Strain strain);
QuotePaper quote(Strain strain);
ReceiptPaper receipt(Strain strain);
InvoicePaper invoice(Strain strain);
TravellerCard traveller(Strain strain);
FiringSheet firing(Strain strain);
std::vector<LotLabel> lots(Strain strain);
std::vector<PieceLabel> pieces(Strain strain);
std::vector<BladeLabel> blades(Strain strain);
DayList day_list(Strain strain);
BuildCertificate certificate(Strain strain);

/// A picture drawn by arithmetic: a blade-like shape on light ground.
Picture drawn_picture(int width_px, int height_px);

/// Every kind of document, set.
struct Named {
  std::string name;
  Outcome<Document> document;
};
std::vector<Named> every_document(Strain strain, const Look& look);

}  // namespace tangmark::reports::samples
