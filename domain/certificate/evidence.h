// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tangmark::certificate {

/// How well a fact is known, from A (measured or recorded on this very blade, chain unbroken) to E
/// (unknown, or told by someone). A chain is as strong as its weakest link.
/// Source of the five steps: common practice, no source.
enum class Level { a, b, c, d, e };

char letter(Level level);
/// The line of the legend: "A: measured or recorded on this blade, chain unbroken".
std::string_view legend(Level level);
/// The lower of two levels.
constexpr Level weaker(Level x, Level y) {
  return x < y ? y : x;
}

/// Every kind of evidence the record can hold. `level_of` and `kind_words` are the one table behind
/// the levels of a certificate.
enum class EvidenceKind {
  // Identity of the steel.
  mill_document_on_bar,      ///< EN 10204 3.1 or 3.2, its melt number found on the bar
  mill_document_not_on_bar,  ///< the same, the number not found or not looked for
  mill_document_uncompared,  ///< the same, analysis not compared with limits
  mill_document_no_results,  ///< 3.1 or 3.2 without melt number or without analysis entered
  test_report,               ///< EN 10204 2.2
  compliance_declaration,    ///< EN 10204 2.1
  supplier_label,
  suppliers_word,
  own_test,
  nothing_on_file,
  laboratory_analysis,
  handheld_xray,
  // The way from the lot to the blade.
  chain_unbroken,
  gap_closed_by_test,
  gaps_closed_by_tests,
  chain_gap,
  // Work.
  logged_at_the_time,
  logged_later,
  photograph,
  outside_slip,
  outside_word,
  seen_on_blade,
  no_entry,
  // Heats.
  thermocouple_record,  ///< independent, kiln checked within kiln_check_days
  thermocouple_record_unchecked,
  thermocouple_record_set_right,  ///< the maker corrected its readings
  controller_record,
  controller_record_set_right,
  display_noted,
  set_point_only,
  judged_by_eye,
  heat_not_recorded,
  // Hardness.
  hardness_checked,    ///< two or more readings after the last heat, block read that day
  hardness_unchecked,  ///< one reading, or no block that day
  hardness_coupon,
  hardness_files,
  hardness_expected,
  hardness_not_measured,
  // Handle.
  material_examined,  ///< by a laboratory
  material_papers,
  material_label,
  material_word,
  material_not_known,
  // Computed from the record.
  by_count_of_stacking,
  estimated,
};

/// A kiln and its sensor count as checked for this many days. Common practice, no source.
inline constexpr int kiln_check_days = 365;

Level level_of(EvidenceKind kind);
/// The kind in words: "supplier's label, no inspection document".
std::string_view kind_words(EvidenceKind kind);

/// One link of a chain: what kind it is, and which paper, entry or reading.
struct Evidence {
  EvidenceKind kind = EvidenceKind::nothing_on_file;
  std::string what;  ///< "lot 17, document 4711, melt number Q4471"; may be empty
  Level level() const { return level_of(kind); }
  friend bool operator==(const Evidence&, const Evidence&) = default;
};

/// The weakest of all; nothing at all is E.
Level weakest(const std::vector<Evidence>& chain);
/// "lot 17, melt number Q4471: inspection document, number found on the bar".
std::string evidence_text(const Evidence& evidence);
/// A chain in words, links of one kind said together, in the order in which the kinds first come:
/// "lot 5 and lot 7: piece records unbroken from the lot to this blade".
std::vector<std::string> evidence_lines(const std::vector<Evidence>& chain);
/// "Level B: ..., ...": the line printed under a statement.
std::string level_line(const std::vector<Evidence>& chain);

}  // namespace tangmark::certificate
