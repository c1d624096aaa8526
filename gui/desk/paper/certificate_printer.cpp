// SPDX-License-Identifier: MIT
#include "gui/desk/paper/certificate_printer.h"

#include "db/actions/issue_certificate.h"
#include "gui/desk/paper/paper.h"
#include "reports/pdf.h"

namespace tangmark::desk {

void lend_certificate_printer() {
  db::set_certificate_printer([](const db::ShopFile& shop, const db::CertificateToPrint& print) -> Outcome<std::string> {
    static const reports::FontBook fonts = reports::FontBook::load();
    const CertificateIssue issue{std::to_string(print.number), static_cast<int>(print.issue), false, print.digest, print.record, print.replaces};
    auto document = certificate_paper({shop, fonts, print.now}, print.dossier, print.draft, issue);
    if (!document) return document.problems();
    return reports::pdf_bytes(*document, fonts);
  });
}

}  // namespace tangmark::desk
