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
  StatementRow row{std::string(claim_id(statement.claim)), std::string(claim_head(statement.claim)),
                   statement.text, std::string(1, letter(statement.level)),
                   evidence_lines(statement.evidence)};
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

// The levels that the page uses, in its statements and in its table of heats, each explained once.
std::vector<std::string> legend_rows(const CertificateSheet& sheet) {
  std::vector<std::string> rows;
  for (Level level : {Level::a, Level::b, Level::c, Level::d, Level::e}) {
    const char sign = letter(level);
    if (std::any_of(sheet.statements.begin(), sheet.statements.end(),
                    [&](const StatementRow& row) { return row.level == std::string(1, sign); }) ||
        std::any_of(sheet.heat.begin(), sheet.heat.end(),
                    [&](const HeatRow& row) { return row.evidence.starts_with(sign); }))
      rows.emplace_back(legend(level));
  }
  return rows;
}

// Common practice, no source. Printed where the maker wrote no care of his own.
std::vector<std::string> usual_care() {
  return {
      "Wash by hand, dry at once, oil before storing. Sharpen on stones; never dry-grind: heat "
      "softens the edge.",
      "Not for bones, frozen food or prying."};
}

// Common practice, no source; defers to local law, and is never left out.
std::vector<std::string> usual_cautions() {
  return {
      "A sharp edge: keep it from children. Laws on knives differ from place to place: ask yours "
      "before you carry or send it."};
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
  sheet.paper = issue.paper;
  sheet.temperature = dossier.manner.temperature == TemperatureUnit::fahrenheit ? "F" : "C";
  sheet.fonts = issue.fonts;
  sheet.contact = issue.contact;
  sheet.shop = dossier.shop;
  sheet.maker = dossier.maker;
  sheet.buyer = dossier.buyer.value_or("");
  sheet.blade = dossier.blade;
  sheet.title = dossier.title;
  sheet.item = dossier.item;
  sheet.name = draft.name;
  sheet.knife = knife_sentence(dossier);
  sheet.edge_length = dossier.size.edge_length;
  sheet.height = dossier.size.height;
  for (const Photo& photo : dossier.photos)
    sheet.pictures.push_back({photo.number, photo.shows, photo.sha256});
  sheet.trail = trail_boxes(blade);
  sheet.trail_note = trail_note(blade);
  sheet.analyses = analysis_blocks(blade);
  sheet.analysis_note = analysis_note(blade);
  sheet.heat = heat_rows(blade);
  sheet.heat_note = heat_note(blade);
  sheet.records = record_rows(blade);
  sheet.hardness = hardness_rows(blade);
  sheet.hardness_note = hardness_note(blade);
  sheet.statements = statement_rows(draft);
  sheet.explanations = draft.explanations;
  for (const Disclosure& told : draft.disclosures) sheet.told_openly.push_back(told.text);
  for (const FreeText& text : dossier.free_texts)
    (text.where == "care" ? sheet.care : sheet.notes).push_back(text.text);
  if (sheet.care.empty()) sheet.care = usual_care();
  sheet.cautions = usual_cautions();
  sheet.legend = legend_rows(sheet);
  return sheet;
}

}  // namespace tangmark::certificate
