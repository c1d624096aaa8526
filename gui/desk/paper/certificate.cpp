// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "db/row.h"
#include "db/store/blade_store.h"
#include "db/store/settings_store.h"
#include "gui/desk/paper/certificate_heat.h"
#include "gui/desk/paper/certificate_trail.h"
#include "gui/desk/paper/letterhead.h"
#include "gui/desk/paper/paper.h"
#include "reports/build_certificate.h"

namespace tangmark::desk {
namespace {

namespace cert = certificate;

std::string knife_sentence(const cert::Dossier& dossier, const std::string& name) {
  const LengthUnit unit = dossier.manner.length;
  std::string text = dossier.title;
  text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
  text += name.empty() ? "." : ", " + name + ".";
  if (dossier.size.edge_length) text += " Blade " + to_text(*dossier.size.edge_length, unit) + " long";
  if (dossier.size.height) text += ", " + to_text(*dossier.size.height, unit) + " high";
  if (dossier.size.thickness) text += ", " + to_text(*dossier.size.thickness, unit) + " thick at the spine";
  if (dossier.size.edge_length) text += ".";
  if (dossier.size.knife_mass) text += " Knife " + to_text(*dossier.size.knife_mass, dossier.manner.mass) + ".";
  return text;
}

// The page prints the level itself, and the subject before the sentence.
std::string evidence_words(const std::vector<cert::Evidence>& chain) {
  std::string words;
  for (const cert::Evidence& e : chain) words += (words.empty() ? "" : "; ") + cert::evidence_text(e);
  return words.empty() ? words : words + ".";
}

std::string without_subject(std::string_view subject, const std::string& text) {
  const std::string prefix = std::string(subject) + ": ";
  if (!text.starts_with(prefix)) return text;
  std::string rest = text.substr(prefix.size());
  rest[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(rest[0])));
  return rest;
}

std::vector<reports::Statement> statements_of(const cert::CertificateDraft& draft) {
  std::vector<reports::Statement> lines;
  for (const cert::Statement& s : draft.statements)
    lines.push_back({std::string(cert::claim_head(s.claim)), without_subject(cert::claim_head(s.claim), s.text),
                     static_cast<char>(std::toupper(cert::letter(s.level))), evidence_words(s.evidence)});
  for (const cert::Absence& a : draft.absences) lines.push_back({std::string(cert::claim_head(a.claim)), a.text, std::nullopt, ""});
  return lines;
}

std::vector<std::string> care_of() {
  return {"Wash by hand, dry at once, oil before storing. Sharpen on stones; never dry-grind: heat softens the edge.",
          "Not for bones, frozen food or prying."};
}

std::vector<std::string> cautions_of() {
  return {"A sharp edge: keep it from children. Laws on knives differ from place to place: ask yours before you carry or send it."};
}

// Hardness with its places on the drawing: readings on this blade, in HRC, that count.
reports::Hardness hardness_of(const cert::Dossier& dossier) {
  reports::Hardness hardness;
  std::string day, tester, block;
  std::size_t unplaced = 0;
  for (const cert::HardnessReading& r : dossier.hardness) {
    const bool counts = !r.superseded && r.on == cert::MeasuredOn::this_blade && r.after != cert::AfterHeat::earlier_one &&
                        r.scale == cert::HardnessScale::hrc;
    if (!counts) continue;
    const double length = dossier.size.edge_length ? dossier.size.edge_length->in_millimetres() : 0;
    const double height = dossier.size.height ? dossier.size.height->in_millimetres() : 0;
    // A reading whose place nobody measured is drawn in a row along the middle.
    const double along = r.from_heel && length > 0 ? r.from_heel->in_millimetres() / length : 0.12 + 0.17 * static_cast<double>(unplaced++ % 5);
    const double up = r.from_edge && height > 0 ? r.from_edge->in_millimetres() / height : 0.4;
    hardness.readings.push_back({r.tenths / 10.0, std::min(1.0, along), std::min(1.0, up)});
    if (r.taken) day = to_text(dossier.manner.zone.date_of(*r.taken));
    tester = r.tester;
    if (r.block)
      block = "Block " + fmt::format("{}.{}", r.block->block_tenths / 10, r.block->block_tenths % 10) + " read " +
              fmt::format("{}.{}", r.block->read_tenths / 10, r.block->read_tenths % 10) + ".";
  }
  if (hardness.readings.empty()) {
    hardness.note = "Not measured on this blade after its last heat.";
    return hardness;
  }
  hardness.note = std::to_string(hardness.readings.size()) + " places, " + day + ", after the last heat. " +
                  (tester.empty() ? "" : "Tester: " + tester + ". ") + block + (unplaced > 0 ? " Places on the drawing are not to scale." : "");
  return hardness;
}

}  // namespace

Outcome<reports::Document> certificate_paper(const Press& press, const cert::Dossier& dossier, const cert::CertificateDraft& draft,
                                             const CertificateIssue& issue) {
  const auto settings = db::load_settings(press.shop);
  const auto kept = db::find_blade(press.shop, dossier.blade);
  reports::BuildCertificate paper;
  paper.shop = letterhead_of(settings);
  paper.blade = std::to_string(dossier.blade);
  paper.number = issue.number;
  paper.issue = issue.issue;
  paper.issued = press.now;
  paper.state = issue.draft ? reports::IssueState::draft : reports::IssueState::issued;
  paper.replaces = issue.replaces;
  paper.knife = knife_sentence(dossier, draft.name);
  if (kept) paper.photo = photo_of(press.shop, "blade", kept->id.row());
  paper.trail = trail_boxes(dossier);
  paper.analyses = analyses_of(dossier);
  paper.analysis_note = analysis_note(dossier);
  paper.heat = heat_lines(dossier);
  if (kept) paper.recorded = recorded_curves(press.shop, *kept, dossier);
  paper.heat_note = paper.recorded.empty() ? "No kiln record is on file for this blade." : "Grey band: window set for this steel.";
  paper.hardness = hardness_of(dossier);
  paper.statements = statements_of(draft);
  for (const cert::Disclosure& d : draft.disclosures) paper.told_openly.push_back(d.text);
  for (const std::string& sentence : draft.explanations) paper.told_openly.push_back(sentence);
  paper.care = care_of();
  paper.cautions = cautions_of();
  paper.seal.record_sha256 = issue.digest;
  if (!dossier.photos.empty()) paper.seal.picture_sha256 = dossier.photos.back().sha256;
  if (!issue.draft) {
    paper.seal.qr = "TANGMARK CERTIFICATE " + issue.number + "/" + std::to_string(issue.issue) + " BLADE " + paper.blade + " SHA256 " + issue.digest;
    paper.attachments.push_back({"record.json", issue.record});
  }
  return reports::certificate_document(paper, look_of(settings), press.fonts);
}

}  // namespace tangmark::desk
