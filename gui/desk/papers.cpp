// SPDX-License-Identifier: MIT
#include "gui/desk/papers.h"

#include <algorithm>

#include "db/digest.h"
#include "db/listing/blade_rows.h"
#include "db/store/blade_store.h"
#include "db/store/certificate_store.h"
#include "db/store/dossier_reader.h"
#include "domain/certificate/certificate_record.h"
#include "gui/desk/cut_search.h"
#include "gui/desk/paper/certificate_page.h"
#include "gui/desk/paper/paper.h"
#include "reports/font_book.h"
#include "reports/page.h"
#include "reports/pdf.h"
#include "reports/picture.h"

namespace tangmark::desk {
namespace {

// A photo on a sheet of its own, as large as it goes.
Outcome<reports::Document> photo_sheet(const Sight& sight, const std::string& id) {
  const auto number = number_of(id);
  const auto bytes = number ? db::attachment_bytes(sight.shop, *number) : std::nullopt;
  if (!bytes) return Problem{"photo", "The photo is no longer there.", ""};
  auto picture = reports::decode_picture(*bytes, "photo");
  if (!picture) return picture.problems();
  constexpr reports::Points across = 842, down = 595, margin = 24;
  const double scale =
      std::min((across - 2 * margin) / picture->width_px, (down - 2 * margin) / picture->height_px);
  const reports::Box box{(across - picture->width_px * scale) / 2,
                         (down - picture->height_px * scale) / 2, picture->width_px * scale,
                         picture->height_px * scale};
  reports::Document sheet;
  sheet.title = "Photo " + id;
  sheet.created = sight.now;
  sheet.pages.push_back(
      {across, down, {}, {reports::PlacedPicture{box, std::move(picture).value()}}});
  return sheet;
}

Outcome<reports::Document> document_of(const Sight& sight, const std::string& kind,
                                       const std::string& id) {
  const Press press{sight.shop, fonts(), sight.now};
  if (kind == "quote") return quote_paper(press, id);
  if (kind == "receipt") return receipt_paper(press, id);
  if (kind == "invoice") return invoice_paper(press, id);
  if (kind == "paper") return issued_paper(press, id);
  if (kind == "cutting-sheet") {
    const auto plan = quick_cutting_plan(sight, id);
    if (!plan) return plan.problems();
    return cutting_sheet_paper(press, id, *plan);
  }
  if (kind == "letter") return delay_letter_paper(press, id, std::nullopt);
  if (kind == "traveller") return traveller_paper(press, id);
  if (kind == "firing-sheet") return firing_sheet_paper(press, id);
  if (kind == "record") return record_paper(press, id);
  if (kind == "trial") return trial_paper(press, id);
  if (kind == "lot-label") return label_paper(press, "lots", {id});
  if (kind == "piece-label") return label_paper(press, "pieces", {id});
  if (kind == "blade-label") return label_paper(press, "blades", {id});
  if (kind == "photo") return photo_sheet(sight, id);
  if (kind == "day-list") {
    const auto day = parse_date(id, "day");
    if (!day) return day.problems();
    return day_list_paper(press, *day);
  }
  return Problem{"kind", "There is no paper of the kind \"" + kind + "\".", ""};
}

Paper held(reports::Document document, const std::string& kind, const std::string& id) {
  return {std::make_shared<const reports::Document>(std::move(document)), kind + "-" + id};
}

// The picture of an issued certificate, if the shop still has it.
std::string frozen_photo(const Sight& sight, const certificate::CertificateSheet& sheet) {
  if (sheet.pictures.empty()) return {};
  const std::string bytes =
      db::attachment_bytes(sight.shop, sheet.pictures.back().number).value_or("");
  return db::sha256_hex(bytes) == sheet.pictures.back().sha256 ? bytes : std::string();
}

}  // namespace

const reports::FontBook& fonts() {
  static const reports::FontBook book = reports::FontBook::load();
  return book;
}

Outcome<Paper> paper_of(const Sight& sight, const std::string& kind, const std::string& id) {
  if (kind == "certificate") {
    auto drafted = draft_certificate(sight, id);
    if (!drafted) return drafted.problems();
    return std::move(drafted).value().paper;
  }
  auto document = document_of(sight, kind, id);
  if (!document) return document.problems();
  return held(std::move(document).value(), kind, id);
}

Outcome<DraftCertificate> draft_certificate(const Sight& sight, const std::string& blade) {
  const auto dossier = db::read_dossier(sight.shop, blade);
  if (!dossier) return dossier.problems();
  certificate::CertificateDraft draft = certificate::compose(*dossier);
  // A certificate that stands is shown as it was issued, not as a draft.
  const auto kept = db::blade_named(sight.shop, blade, "blade");
  const auto issues =
      kept ? db::certificates_of(sight.shop, kept->id) : std::vector<db::IssuedCertificate>{};
  const bool stands = !issues.empty() && !issues.front().revoked_at;
  const auto frozen =
      stands ? certificate::read_record(db::certificate_record(sight.shop, issues.front().id))
             : Outcome<certificate::CertificateSheet>(Problem{});
  auto document = draft_paper({sight.shop, fonts(), sight.now}, *dossier, draft);
  if (stands && !frozen)
    return frozen.problems();  // an issue of an earlier version is printed, not set
  if (frozen) {
    const PageDress dress{PageState::issued, issues.front().signed_by.value_or(""),
                          frozen_photo(sight, *frozen), 1600};
    document = certificate_page(*frozen, dress, fonts());
  }
  if (!document) return document.problems();
  return DraftCertificate{std::move(draft),
                          held(std::move(document).value(), "certificate", blade)};
}

std::vector<std::string> missing_words(const certificate::CertificateDraft& draft) {
  std::vector<std::string> all;
  for (const certificate::Refusal& block : draft.blocks) {
    all.push_back(block.sentence + (block.remedy.empty() ? "" : " " + block.remedy));
  }
  for (const certificate::Missing& missing : draft.missing) {
    all.push_back(std::string(certificate::claim_head(missing.claim)) +
                  " needs: " + certificate::needs_text(missing) + ".");
  }
  return all;
}

Outcome<std::string> printed_bytes(const Sight& sight, const std::string& kind,
                                   const std::string& id) {
  if (kind == "certificate") {
    const auto blade = db::blade_named(sight.shop, id, "blade");
    if (!blade) return blade.problems();
    const auto issues = db::certificates_of(sight.shop, blade->id);
    if (!issues.empty() && !issues.front().revoked_at)
      return db::certificate_pdf(sight.shop, issues.front().id);
  }
  const auto paper = paper_of(sight, kind, id);
  if (!paper) return paper.problems();
  return reports::pdf_bytes(*paper->document, fonts());
}

}  // namespace tangmark::desk
