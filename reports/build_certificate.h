// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "reports/curve.h"
#include "reports/look.h"

namespace tangmark::reports {

class FontBook;

/// One box of the steel's family tree. `from` holds the places in the trail of what it was made of,
/// each before its own place.
struct TrailBox {
  std::string title;               ///< "Lot 17, 1084", "Bar 17-2", "Billet 31", "Blade 214"
  std::vector<std::string> lines;  ///< "Inspection document 3.1", "11 × 3 × 4"
  std::vector<std::size_t> from;
};

/// One element of an analysis beside the limits of the grade, in per cent by mass. A limit that the
/// grade does not have is left out; bars without a lower limit start at zero.
struct AnalysisLine {
  std::string element;
  double wt_percent = 0;
  std::optional<double> least_wt_percent;
  std::optional<double> most_wt_percent;
  int decimals = 2;
};

/// The analysis of one lot. Without lines the sheet says that there is none on file.
struct Analysis {
  std::string lot;     ///< "Lot 17, 1084"
  std::string source;  ///< "from the mill document"
  std::vector<AnalysisLine> lines;
};

/// One line of the heat-treatment table.
struct HeatLine {
  std::string step;
  std::vector<Temperature> temperatures;
  std::string time;      ///< "12:20 soak", "2 h 00", "9:01"
  std::string evidence;  ///< level and words: "A, recorded"
  bool range = false;    ///< two temperatures are lowest and highest, not two heats
};

/// A reading, with its place on the blade: `along` 0 at the heel to 1 at the tip, `up` 0 at the
/// edge to 1 at the spine.
struct HardnessPlace {
  double hrc = 0;
  double along = 0;
  double up = 0;
};

/// The hardness of this blade. Without readings `note` says "Not measured.", and why.
struct Hardness {
  std::string scale = "HRC";
  std::vector<HardnessPlace> readings;
  std::string note;  ///< day, tester, block check, margin
};

/// One statement with its evidence.
struct Statement {
  std::string subject;        ///< "Steel", "Construction", "Sub-zero"
  std::string sentence;       ///< "Not done." has the same rank as a claim
  std::optional<char> level;  ///< 'A' to 'E'; none for a statement of absence
  std::string evidence;       ///< the level in words; may be empty
};

/// The seal at the foot.
struct Seal {
  std::string record_sha256;   ///< 64 hex digits
  std::string picture_sha256;  ///< 64 hex digits, or empty
  std::string key;             ///< fingerprint of the signing key, or empty when unsigned
  std::string qr;              ///< ASCII
};

enum class IssueState { draft, issued, revoked };

/// A certificate as it is printed: every field was computed from evidence elsewhere.
struct BuildCertificate {
  Letterhead shop;
  std::string blade;
  std::string number;  ///< of the certificate
  int issue = 1;
  Instant issued{};
  IssueState state = IssueState::issued;
  /// "Issue 1 of 24 Nov 2026: length was mistyped."; empty for a first issue.
  std::string replaces;
  std::string title;  ///< what the maker calls it
  std::string name;   ///< the truthful name of what was made
  std::string knife;  ///< sizes and mass in a sentence
  std::string buyer;  ///< only when the buyer asked for it
  std::optional<Picture> photo;
  std::vector<TrailBox> trail;
  std::string trail_note;  ///< what is said where there is no trail
  std::vector<Analysis> analyses;
  std::string analysis_note;  ///< "All inside the limits."
  std::vector<HeatLine> heat;
  std::string heat_note;
  std::vector<Curve> recorded;
  Hardness hardness;
  std::vector<Statement> statements;
  std::vector<std::string> explanations;  ///< sentences that keep looser words apart
  std::vector<std::string> told_openly;
  std::vector<std::string> notes;
  std::vector<std::string> care;
  std::vector<std::string> cautions;
  std::vector<std::string> legend;  ///< each level that the page uses
  Seal seal;
  std::vector<Attachment> attachments;
};

/// Sets the certificate. What does not fit on the first page goes on over designed further pages,
/// the seal stands on the last. A draft carries DRAFT across each page and no seal code.
/// Refuses, naming the field: no statements, a trail that points forward, a level outside A to E, a
/// place off the blade, a picture whose bytes do not match its size, a character out of the fonts.
Outcome<Document> certificate_document(const BuildCertificate& certificate, const Look& look,
                                       const FontBook& fonts);

}  // namespace tangmark::reports
