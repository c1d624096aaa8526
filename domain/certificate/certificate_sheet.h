// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/certificate/compose.h"

namespace tangmark::certificate {

/// Which certificate this is. `replaces` names the issue it stands for, `why` the reason.
struct IssueFacts {
  std::string number;  ///< of the certificate; the same for all its issues
  int issue = 1;
  Instant issued{};
  std::optional<std::string> replaces;
  std::string why;
  std::string paper = "a4";  ///< "a4" or "letter"
  std::string contact;       ///< how to reach the shop, one line
  std::string fonts;         ///< what the page is set with; see CertificateSheet
};

/// One box of the steel's family tree; `from` holds places of earlier boxes.
struct TrailBoxLine {
  std::string title;
  std::vector<std::string> lines;
  std::vector<int> from;
  friend bool operator==(const TrailBoxLine&, const TrailBoxLine&) = default;
};

struct AnalysisRow {
  std::string element;
  Share amount;
  std::optional<Share> least;
  std::optional<Share> most;
  friend bool operator==(const AnalysisRow&, const AnalysisRow&) = default;
};

/// The analysis of one lot beside the limits of its grade; without rows there is none on file.
struct AnalysisBlock {
  std::string lot;
  std::string source;
  std::vector<AnalysisRow> rows;
  friend bool operator==(const AnalysisBlock&, const AnalysisBlock&) = default;
};

/// What the temperatures of a row are: one for each heat, or the ends of what was read in one.
enum class Figures { each, lowest_to_highest };

struct HeatRow {
  std::string step;
  std::vector<Temperature> temperatures;
  Figures figures = Figures::each;
  std::string time;
  std::string evidence;  ///< "A, recorded"
  friend bool operator==(const HeatRow&, const HeatRow&) = default;
};

/// A kiln record whose curve is drawn on the page.
struct RecordRow {
  std::string step;
  Instant from{};
  Instant to{};
  RecordedCurve curve;
  friend bool operator==(const RecordRow&, const RecordRow&) = default;
};

struct HardnessRow {
  std::string scale;
  int tenths = 0;
  std::string place;
  std::optional<Length> from_heel;
  std::optional<Length> from_edge;
  friend bool operator==(const HardnessRow&, const HardnessRow&) = default;
};

/// A statement as printed; a statement of absence has no level and no evidence.
struct StatementRow {
  std::string claim;  ///< its identifier
  std::string head;
  std::string text;
  std::string level;  ///< "A" to "E", or empty
  std::vector<std::string> evidence;
  friend bool operator==(const StatementRow&, const StatementRow&) = default;
};

struct PictureRow {
  int number = 0;
  std::string shows;
  std::string sha256;
  friend bool operator==(const PictureRow&, const PictureRow&) = default;
};

/// Everything a certificate prints, as words and exact figures: what the record is made of, and
/// what a page is filled from, so that the page of an issued certificate can be made again from its
/// record.
struct CertificateSheet {
  std::string number;
  int issue = 1;
  Instant issued{};
  std::string zone;
  std::string replaces;  ///< "Issue 1: length was mistyped."; empty for a first issue
  std::string paper;        ///< "a4" or "letter"
  std::string temperature;  ///< "C" or "F": how the page writes degrees
  /// Digest of the fonts' measures: with the same ones the page comes out alike.
  std::string fonts;
  std::string shop;
  std::string maker;
  std::string contact;
  std::string buyer;
  int blade = 0;
  std::string title;
  std::string item;
  std::string name;
  std::string knife;  ///< sizes and mass in a sentence
  std::optional<Length> edge_length;
  std::optional<Length> height;
  std::vector<PictureRow> pictures;
  std::vector<TrailBoxLine> trail;
  std::string trail_note;  ///< why there is no trail; empty with one
  std::vector<AnalysisBlock> analyses;
  std::string analysis_note;
  std::vector<HeatRow> heat;
  std::string heat_note;
  std::vector<RecordRow> records;
  std::vector<HardnessRow> hardness;
  std::string hardness_note;
  std::vector<StatementRow> statements;
  std::vector<std::string> explanations;
  std::vector<std::string> told_openly;
  std::vector<std::string> notes;
  std::vector<std::string> care;
  std::vector<std::string> cautions;
  std::vector<std::string> legend;
  friend bool operator==(const CertificateSheet&, const CertificateSheet&) = default;
};

/// The sheet of a draft. Also made of a draft that may not be issued, for its preview; whether it
/// may be is CertificateDraft::may_issue().
CertificateSheet certificate_sheet(const Dossier& dossier, const CertificateDraft& draft,
                                   const IssueFacts& issue);

}  // namespace tangmark::certificate
