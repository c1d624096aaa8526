// SPDX-License-Identifier: MIT
#include "domain/certificate/evidence.h"

#include <algorithm>
#include <array>
#include <cassert>

#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

struct KindRow {
  EvidenceKind kind;
  Level level;
  std::string_view words;
};

using K = EvidenceKind;
using L = Level;

constexpr std::array rows = {
    KindRow{K::mill_document_on_bar, L::a,
            "inspection certificate, its melt number found on the bar"},
    KindRow{K::mill_document_not_on_bar, L::b,
            "inspection certificate, its melt number not matched to a mark on the bar"},
    KindRow{K::mill_document_uncompared, L::b,
            "inspection certificate, analysis not compared with limits of the grade"},
    KindRow{K::mill_document_no_results, L::c, "inspection certificate without a usable analysis"},
    KindRow{K::test_report, L::c, "test report, its results not tied to this delivery"},
    KindRow{K::compliance_declaration, L::c,
            "declaration of compliance with the order, no results"},
    KindRow{K::supplier_label, L::c, "supplier's label or invoice, no inspection document"},
    KindRow{K::suppliers_word, L::e, "supplier's word, no document"},
    KindRow{K::own_test, L::d, "own test at the bench"},
    KindRow{K::nothing_on_file, L::e, "nothing on file"},
    KindRow{K::laboratory_analysis, L::a, "analysis by a laboratory"},
    KindRow{K::handheld_xray, L::d, "hand-held X-ray, which does not give carbon"},
    KindRow{K::chain_unbroken, L::a, "piece records unbroken from the lot to this blade"},
    KindRow{K::gap_closed_by_test, L::b, "one gap in the piece records, closed by a test"},
    KindRow{K::gaps_closed_by_tests, L::c,
            "more than one gap in the piece records, closed by tests"},
    KindRow{K::chain_gap, L::e, "the piece lost its mark"},
    KindRow{K::logged_at_the_time, L::a, "logged at the time"},
    KindRow{K::logged_later, L::c, "entered later, from memory"},
    KindRow{K::photograph, L::a, "photograph on file"},
    KindRow{K::outside_slip, L::c, "slip of the outside service on file"},
    KindRow{K::outside_word, L::e, "word of the outside service, no slip"},
    KindRow{K::seen_on_blade, L::a, "seen on this blade"},
    KindRow{K::no_entry, L::e, "no entry"},
    KindRow{K::thermocouple_record, L::a, "recorded by independent thermocouple, kiln checked"},
    KindRow{K::thermocouple_record_unchecked, L::b,
            "recorded by independent thermocouple, no kiln check within a year"},
    KindRow{K::thermocouple_record_set_right, L::b,
            "recorded by independent thermocouple, its readings corrected by the maker"},
    KindRow{K::controller_record, L::b, "recorded by the kiln's own controller"},
    KindRow{K::controller_record_set_right, L::b,
            "recorded by the kiln's own controller, its readings corrected by the maker"},
    KindRow{K::display_noted, L::b, "read off the kiln's display and noted"},
    KindRow{K::set_point_only, L::c, "as set, not recorded"},
    KindRow{K::judged_by_eye, L::d, "judged by eye"},
    KindRow{K::heat_not_recorded, L::e, "not recorded"},
    KindRow{K::hardness_checked, L::a,
            "measured on this blade after its last heat, tester checked on a block that day"},
    KindRow{K::hardness_unchecked, L::b,
            "measured on this blade after its last heat, a single reading or an unchecked tester"},
    KindRow{K::hardness_coupon, L::c, "measured on a coupon, not on this blade"},
    KindRow{K::hardness_files, L::d, "compared with a set of files"},
    KindRow{K::hardness_expected, L::e, "expected, not measured"},
    KindRow{K::hardness_not_measured, L::e, "not measured"},
    KindRow{K::material_examined, L::a, "examined by a laboratory"},
    KindRow{K::material_papers, L::b, "document on file"},
    KindRow{K::material_label, L::c, "as stated by the supplier's label or invoice"},
    KindRow{K::material_word, L::e, "by word of the supplier"},
    KindRow{K::material_not_known, L::e, "not known"},
    KindRow{K::by_count_of_stacking, L::a, "by count of stacking"},
    KindRow{K::estimated, L::d, "an estimate, not a measurement"},
};

const KindRow& row_of(EvidenceKind kind) {
  const auto found =
      std::find_if(rows.begin(), rows.end(), [&](const KindRow& row) { return row.kind == kind; });
  assert(found != rows.end() && "every kind of evidence has its level");
  return *found;
}

}  // namespace

char letter(Level level) {
  return static_cast<char>('A' + static_cast<int>(level));
}

std::string_view legend(Level level) {
  switch (level) {
    case Level::a:
      return "A: measured, recorded or logged at the time; chain unbroken";
    case Level::b:
      return "B: a document or record with one link unchecked";
    case Level::c:
      return "C: supplier's paper only, as set only, or entered later";
    case Level::d:
      return "D: own test or judgement by eye";
    case Level::e:
      return "E: not known, or by word of mouth";
  }
  return {};
}

Level level_of(EvidenceKind kind) {
  return row_of(kind).level;
}
std::string_view kind_words(EvidenceKind kind) {
  return row_of(kind).words;
}

Level weakest(const std::vector<Evidence>& chain) {
  if (chain.empty()) return Level::e;
  Level level = Level::a;
  for (const Evidence& link : chain) level = weaker(level, link.level());
  return level;
}

std::string evidence_text(const Evidence& evidence) {
  const std::string words(kind_words(evidence.kind));
  return evidence.what.empty() ? words : evidence.what + ": " + words;
}

std::vector<std::string> evidence_lines(const std::vector<Evidence>& chain) {
  std::vector<std::string> lines;
  std::vector<EvidenceKind> said;
  for (const Evidence& link : chain) {
    if (std::find(said.begin(), said.end(), link.kind) != said.end()) continue;
    said.push_back(link.kind);
    std::vector<std::string> whats;
    for (const Evidence& other : chain)
      if (other.kind == link.kind && !other.what.empty() &&
          std::find(whats.begin(), whats.end(), other.what) == whats.end())
        whats.push_back(other.what);
    lines.push_back(evidence_text({link.kind, listed(whats)}));
  }
  return lines;
}

std::string level_line(const std::vector<Evidence>& chain) {
  std::string line = std::string("Level ") + letter(weakest(chain)) + ": ";
  const std::vector<std::string> lines = evidence_lines(chain);
  for (std::size_t i = 0; i < lines.size(); ++i) line += (i ? "; " : "") + lines[i];
  return line + ".";
}

}  // namespace tangmark::certificate
