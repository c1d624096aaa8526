// SPDX-License-Identifier: MIT
#include "domain/certificate/certificate_sheet.h"

#include <algorithm>

#include "domain/certificate/sheet_parts.h"

namespace tangmark::certificate {
namespace {

std::size_t printing_order(Claim claim) {
  return static_cast<std::size_t>(std::find(all_claims.begin(), all_claims.end(), claim) -
                                  all_claims.begin());
}

StatementRow row_of(const Statement& statement) {
  StatementRow row{std::string(claim_id(statement.claim)),
                   std::string(claim_head(statement.claim)),
                   statement.text,
                   std::string(1, letter(statement.level)),
                   {}};
  for (const Evidence& link : statement.evidence) row.evidence.push_back(evidence_text(link));
  return row;
}

// Statements and absences together, in the printing order of their claims: an absence has the rank
// of a statement.
std::vector<StatementRow> statement_rows(const CertificateDraft& draft) {
  std::vector<std::pair<std::size_t, StatementRow>> ordered;
  for (const Statement& statement : draft.statements)
    ordered.emplace_back(printing_order(statement.claim), row_of(statement));
  for (const Absence& absence : draft.absences)
    ordered.emplace_back(printing_order(absence.claim),
                         StatementRow{std::string(claim_id(absence.claim)),
                                      std::string(claim_head(absence.claim)),
                                      absence.text,
                                      "",
                                      {}});
  std::stable_sort(ordered.begin(), ordered.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<StatementRow> rows;
  for (auto& [order, row] : ordered) rows.push_back(std::move(row));
  return rows;
}

// The levels that the page uses, each explained once.
std::vector<std::string> legend_rows(const std::vector<StatementRow>& statements) {
  std::vector<std::string> rows;
  for (Level level : {Level::a, Level::b, Level::c, Level::d, Level::e})
    if (std::any_of(statements.begin(), statements.end(), [&](const StatementRow& row) {
          return row.level == std::string(1, letter(level));
        }))
      rows.emplace_back(legend(level));
  return rows;
}

}  // namespace

CertificateSheet certificate_sheet(const Dossier& dossier, const CertificateDraft& draft,
                                   const IssueFacts& issue) {
  const BladeCase blade(dossier);
  CertificateSheet sheet;
  sheet.number = issue.number;
  sheet.issue = issue.issue;
  sheet.issued = issue.issued;
  sheet.zone = dossier.manner.zone.name();
  if (issue.replaces) sheet.replaces = *issue.replaces + ": " + issue.why;
  sheet.shop = dossier.shop;
  sheet.maker = dossier.maker;
  sheet.buyer = dossier.buyer.value_or("");
  sheet.blade = dossier.blade;
  sheet.title = dossier.title;
  sheet.item = dossier.item;
  sheet.name = draft.name;
  sheet.knife = knife_sentence(dossier);
  sheet.edge_length = dossier.size.edge_length;
  for (const Photo& photo : dossier.photos)
    sheet.pictures.push_back({photo.number, photo.shows, photo.sha256});
  sheet.trail = trail_boxes(blade);
  sheet.analyses = analysis_blocks(blade);
  sheet.analysis_note = analysis_note(blade);
  sheet.heat = heat_rows(blade);
  sheet.records = record_rows(blade);
  sheet.hardness = hardness_rows(blade);
  sheet.hardness_note = hardness_note(blade);
  sheet.statements = statement_rows(draft);
  sheet.explanations = draft.explanations;
  for (const Disclosure& told : draft.disclosures) sheet.told_openly.push_back(told.text);
  for (const FreeText& text : dossier.free_texts)
    (text.where == "care" ? sheet.care : sheet.notes).push_back(text.text);
  sheet.legend = legend_rows(sheet.statements);
  return sheet;
}

}  // namespace tangmark::certificate
