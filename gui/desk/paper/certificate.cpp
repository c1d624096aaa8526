// SPDX-License-Identifier: MIT
#include "db/store/certificate_sheet_reader.h"
#include "gui/desk/paper/certificate_page.h"
#include "gui/desk/paper/paper.h"

namespace tangmark::desk {

Outcome<reports::Document> draft_paper(const Press& press, const certificate::Dossier& dossier,
                                       const certificate::CertificateDraft& draft) {
  certificate::IssueFacts facts = db::issue_facts(press.shop);
  facts.number = "draft";
  facts.issued = press.now;
  return certificate_page(certificate_sheet(dossier, draft, facts),
                          {PageState::draft, "", db::shown_photo(press.shop, dossier), 1600},
                          press.fonts);
}

}  // namespace tangmark::desk
