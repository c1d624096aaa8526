// SPDX-License-Identifier: MIT
#include "reports/certificate_problems.h"

#include "reports/text_check.h"

namespace tangmark::reports {
namespace {

void check_trail(TextCheck& check, const std::vector<TrailBox>& trail) {
  for (std::size_t i = 0; i < trail.size(); ++i) {
    check.needed(trail[i].title, "trail of the steel");
    check.texts(trail[i].lines, "trail of the steel");
    for (const std::size_t parent : trail[i].from) {
      if (parent >= i) {
        check.add({"trail of the steel",
                   "“" + trail[i].title + "” is said to be made of something that comes after it.",
                   "Enter the trail from the lot to the blade."});
      }
    }
  }
}

void check_statements(TextCheck& check, const std::vector<Statement>& statements) {
  if (statements.empty()) {
    check.add({"statements", "The certificate states nothing.", "Record how the blade was made."});
  }
  for (const Statement& s : statements) {
    check.needed(s.subject, "subject of a statement");
    check.needed(s.sentence, "statement");
    check.text(s.evidence, "evidence of a statement");
    if (s.level && (*s.level < 'A' || *s.level > 'E')) {
      check.add({"evidence level", "The statement “" + s.subject + "” has no level from A to E.",
                 "Compute its level from the evidence."});
    }
  }
}

void check_hardness(TextCheck& check, const Hardness& hardness) {
  check.text(hardness.scale, "hardness scale");
  check.text(hardness.note, "note on hardness");
  for (const HardnessPlace& reading : hardness.readings) {
    const bool on_blade =
        reading.along >= 0 && reading.along <= 1 && reading.up >= 0 && reading.up <= 1;
    if (!on_blade || !(reading.hrc > 0 && reading.hrc < 100)) {
      check.add({"hardness", "A hardness reading has no place on the blade or no sensible figure.",
                 "Give its place from heel to tip and edge to spine, and the figure read."});
    }
  }
}

void check_heat(TextCheck& check, const BuildCertificate& c) {
  for (const HeatLine& line : c.heat) {
    check.needed(line.step, "step of the heat treatment");
    check.text(line.time, "time of a heat step");
    check.text(line.evidence, "evidence of a heat step");
  }
  check.text(c.heat_note, "note on the heat treatment");
  for (const Curve& curve : c.recorded) {
    check.text(curve.title, "title of a record");
    for (const CurveMark& mark : curve.marks) check.text(mark.text, "mark on a record");
  }
}

}  // namespace

Problems certificate_problems(const BuildCertificate& c, const FontBook& fonts) {
  TextCheck check(fonts);
  check.letterhead(c.shop);
  check.needed(c.blade, "blade number");
  check.text(c.number, "certificate number");
  check.text(c.replaces, "note on the issue replaced");
  check.text(c.title, "title");
  check.text(c.name, "name of the pattern");
  check.text(c.knife, "description of the knife");
  check.text(c.buyer, "name of the buyer");
  check.text(c.trail_note, "note on the trail");
  check.texts(c.explanations, "explanation");
  check.texts(c.notes, "note");
  check.texts(c.legend, "legend");
  if (c.photo) check.picture(*c.photo, "photograph");
  check_trail(check, c.trail);
  for (const Analysis& analysis : c.analyses) {
    check.needed(analysis.lot, "lot of an analysis");
    check.text(analysis.source, "source of an analysis");
    for (const AnalysisLine& line : analysis.lines) check.needed(line.element, "element");
  }
  check.text(c.analysis_note, "note on the analysis");
  check_heat(check, c);
  check_hardness(check, c.hardness);
  check_statements(check, c.statements);
  check.texts(c.told_openly, "disclosure");
  check.texts(c.care, "care");
  check.texts(c.cautions, "caution");
  check.text(c.seal.key, "key of the seal");
  check.text(c.seal.record_sha256, "digest of the record");
  check.text(c.seal.picture_sha256, "digest of the photograph");
  check.code(c.seal.qr, "code of the seal");
  return check.problems();
}

}  // namespace tangmark::reports
