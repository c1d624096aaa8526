// SPDX-License-Identifier: MIT
#include "gui/desk/paper/certificate_page.h"

#include <algorithm>

#include "db/digest.h"
#include "domain/certificate/certificate_record.h"
#include "domain/certificate/phrasing.h"
#include "reports/build_certificate.h"
#include "reports/picture.h"

namespace tangmark::desk {
namespace {

namespace cert = certificate;

double percent(Share share) { return static_cast<double>(share.millionths()) / 10'000; }

std::optional<double> percent(const std::optional<Share>& share) {
  if (!share) return std::nullopt;
  return percent(*share);
}

// As many places as the finest of figure and limits needs, so that nothing is rounded away.
int decimals_of(const cert::AnalysisRow& row) {
  int decimals = 2;
  for (const auto& share : {std::optional(row.amount), row.least, row.most}) {
    if (!share) continue;
    if (share->millionths() % 100 != 0) decimals = std::max(decimals, 3);
    if (share->millionths() % 10 != 0) decimals = 4;
  }
  return decimals;
}

// The page prints the subject before the sentence; saying it twice would only be noise.
std::string without_subject(const std::string& subject, const std::string& text) {
  const std::string prefix = subject + ": ";
  return text.starts_with(prefix) ? cert::capital(text.substr(prefix.size())) : text;
}

std::vector<reports::TrailBox> trail_of(const cert::CertificateSheet& sheet) {
  std::vector<reports::TrailBox> boxes;
  for (const cert::TrailBoxLine& line : sheet.trail) {
    reports::TrailBox box{line.title, line.lines, {}};
    for (const int from : line.from)
      box.from.push_back(static_cast<std::size_t>(std::max(0, from)));
    boxes.push_back(std::move(box));
  }
  return boxes;
}

std::vector<reports::Analysis> analyses_of(const cert::CertificateSheet& sheet) {
  std::vector<reports::Analysis> all;
  for (const cert::AnalysisBlock& block : sheet.analyses) {
    reports::Analysis analysis{block.lot, block.source, {}};
    for (const cert::AnalysisRow& row : block.rows)
      analysis.lines.push_back({row.element, percent(row.amount), percent(row.least),
                                percent(row.most), decimals_of(row)});
    all.push_back(std::move(analysis));
  }
  return all;
}

std::vector<reports::Curve> curves_of(const cert::CertificateSheet& sheet) {
  std::vector<reports::Curve> curves;
  for (const cert::RecordRow& row : sheet.records) {
    reports::Curve curve;
    curve.title = row.step;
    const std::size_t points = std::min(row.curve.at_s.size(), row.curve.read.size());
    for (std::size_t i = 0; i < points; ++i)
      curve.points.push_back(
          {row.from + std::chrono::seconds(row.curve.at_s[i]), row.curve.read[i]});
    if (row.curve.window_low && row.curve.window_high)
      curve.window = reports::Window{*row.curve.window_low, *row.curve.window_high};
    if (row.curve.blade_out && *row.curve.blade_out < row.to)
      curve.marks.push_back({*row.curve.blade_out, std::to_string(sheet.blade) + " out"});
    if (points > 1) curves.push_back(std::move(curve));
  }
  return curves;
}

// A reading whose place nobody measured is drawn in a row along the middle, and the note says so.
reports::Hardness hardness_of(const cert::CertificateSheet& sheet) {
  reports::Hardness hardness;
  hardness.note = sheet.hardness_note;
  const double length = sheet.edge_length ? sheet.edge_length->in_millimetres() : 0;
  const double height = sheet.height ? sheet.height->in_millimetres() : 0;
  std::size_t unplaced = 0;
  for (const cert::HardnessRow& row : sheet.hardness) {
    const bool placed = row.from_heel && length > 0;
    const double along = placed ? row.from_heel->in_millimetres() / length
                                : 0.12 + 0.17 * static_cast<double>(unplaced++ % 5);
    const double up = row.from_edge && height > 0 ? row.from_edge->in_millimetres() / height : 0.3;
    hardness.scale = row.scale;
    hardness.readings.push_back(
        {row.tenths / 10.0, std::clamp(along, 0.0, 1.0), std::clamp(up, 0.0, 1.0)});
  }
  return hardness;
}

std::string evidence_of(const cert::StatementRow& row) {
  std::string evidence;
  for (const std::string& one : row.evidence) evidence += (evidence.empty() ? "" : "; ") + one;
  return evidence.empty() ? evidence : evidence + ".";
}

// Long evidence that two statements in a row share is written out once.
bool says_it_again(const cert::StatementRow& row, const cert::StatementRow& before) {
  constexpr std::size_t long_evidence = 60;
  return row.level == before.level && row.evidence == before.evidence &&
         evidence_of(row).size() > long_evidence;
}

std::vector<reports::Statement> statements_of(const cert::CertificateSheet& sheet) {
  std::vector<reports::Statement> lines;
  for (std::size_t i = 0; i < sheet.statements.size(); ++i) {
    const cert::StatementRow& row = sheet.statements[i];
    std::string evidence = evidence_of(row);
    if (i > 0 && says_it_again(row, sheet.statements[i - 1]))
      evidence = "the same evidence as for " + sheet.statements[i - 1].head + ".";
    const auto level = row.level.size() == 1 ? std::optional<char>(row.level[0]) : std::nullopt;
    lines.push_back({row.head, without_subject(row.head, row.text), level, evidence});
  }
  return lines;
}

Outcome<std::optional<reports::Picture>> photo_of(const cert::CertificateSheet& sheet,
                                                  const PageDress& dress) {
  if (dress.photo.empty()) return std::optional<reports::Picture>{};
  if (sheet.pictures.empty() || sheet.pictures.back().sha256 != db::sha256_hex(dress.photo))
    return Problem{"photo", "The photograph is not the one of the record.",
                   "Issue the certificate anew."};
  auto picture = reports::decode_picture(dress.photo, "photo", dress.photo_side_px);
  if (!picture) return picture.problems();
  picture->jpeg = dress.photo;
  return std::optional(std::move(picture).value());
}

void add_seal(reports::BuildCertificate& page, const cert::CertificateSheet& sheet,
              const PageDress& dress) {
  if (!sheet.pictures.empty() && page.photo)
    page.seal.picture_sha256 = sheet.pictures.back().sha256;
  if (dress.state == PageState::draft) return;
  const std::string record = cert::record_text(sheet);
  page.seal.record_sha256 = db::sha256_hex(record);
  page.seal.key = dress.key;
  page.seal.qr = "TANGMARK CERTIFICATE " + sheet.number + "/" + std::to_string(sheet.issue) +
                 " BLADE " + std::to_string(sheet.blade) + " SHA256 " + page.seal.record_sha256;
  if (!dress.key.empty()) page.seal.qr += " KEY " + dress.key;
  page.attachments.push_back({"record.json", record});
}

void add_head(reports::BuildCertificate& page, const cert::CertificateSheet& sheet,
              const PageDress& dress) {
  page.shop.shop = sheet.shop;
  page.shop.maker = sheet.maker;
  page.shop.contact = sheet.contact;
  page.blade = std::to_string(sheet.blade);
  page.number = sheet.number;
  page.issue = sheet.issue;
  page.issued = sheet.issued;
  page.state =
      dress.state == PageState::draft ? reports::IssueState::draft : reports::IssueState::issued;
  page.replaces = sheet.replaces;
  page.title = sheet.title;
  page.name = sheet.name;
  page.knife = sheet.knife;
  page.buyer = sheet.buyer;
}

std::vector<reports::HeatLine> heat_of(const cert::CertificateSheet& sheet) {
  std::vector<reports::HeatLine> lines;
  for (const cert::HeatRow& row : sheet.heat) {
    lines.push_back({row.step, row.temperatures, row.time, row.evidence,
                     row.figures == cert::Figures::lowest_to_highest});
  }
  return lines;
}

}  // namespace

std::string certificate_words(const cert::CertificateSheet& sheet) {
  return "Build certificate " + sheet.number + ", issue " + std::to_string(sheet.issue);
}

Outcome<reports::Document> certificate_page(const cert::CertificateSheet& sheet,
                                            const PageDress& dress,
                                            const reports::FontBook& fonts) {
  const auto zone = Zone::of(sheet.zone);
  if (!zone) return zone.problems();
  auto photo = photo_of(sheet, dress);
  if (!photo) return photo.problems();
  reports::Look look;
  look.paper = sheet.paper == "letter" ? reports::Paper::letter : reports::Paper::a4;
  look.temperature =
      sheet.temperature == "F" ? TemperatureUnit::fahrenheit : TemperatureUnit::celsius;
  look.zone = *zone;
  reports::BuildCertificate page;
  page.photo = std::move(photo).value();
  add_head(page, sheet, dress);
  page.trail = trail_of(sheet);
  page.trail_note = sheet.trail_note;
  page.analyses = analyses_of(sheet);
  page.analysis_note = sheet.analysis_note;
  page.heat = heat_of(sheet);
  page.heat_note = sheet.heat_note;
  page.recorded = curves_of(sheet);
  page.hardness = hardness_of(sheet);
  page.statements = statements_of(sheet);
  page.explanations = sheet.explanations;
  page.told_openly = sheet.told_openly;
  page.notes = sheet.notes;
  page.care = sheet.care;
  page.cautions = sheet.cautions;
  page.legend = sheet.legend;
  add_seal(page, sheet, dress);
  return reports::certificate_document(page, look, fonts);
}

}  // namespace tangmark::desk
