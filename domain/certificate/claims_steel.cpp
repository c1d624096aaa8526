// SPDX-License-Identifier: MIT
#include "domain/certificate/claims_steel.h"

#include "domain/certificate/limits_check.h"
#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {
namespace {

bool inspection_document(const Lot& lot) {
  return lot.document == SupplyDocument::type_3_1 || lot.document == SupplyDocument::type_3_2;
}

std::string type_name(SupplyDocument document) {
  switch (document) {
    case SupplyDocument::type_2_1:
      return "EN 10204 2.1";
    case SupplyDocument::type_2_2:
      return "EN 10204 2.2";
    case SupplyDocument::type_3_1:
      return "EN 10204 3.1";
    case SupplyDocument::type_3_2:
      return "EN 10204 3.2";
    default:
      return {};
  }
}

std::optional<std::string> melt_number(const Lot& lot) {
  const auto& number = lot.document_melt_number ? lot.document_melt_number : lot.melt_number;
  return number && !number->empty() ? number : std::nullopt;
}

bool laboratory_bears_grade(const Lot& lot) {
  return lot.analysis && lot.analysis_source == AnalysisSource::laboratory &&
         check_limits(lot).verdict == LimitsVerdict::inside;
}

EvidenceKind document_kind(const Lot& lot) {
  if (laboratory_bears_grade(lot)) return EvidenceKind::laboratory_analysis;
  switch (lot.document) {
    case SupplyDocument::type_3_1:
    case SupplyDocument::type_3_2: {
      const bool figures = lot.analysis && lot.analysis_source == AnalysisSource::document;
      if (!melt_number(lot) || !figures) return EvidenceKind::mill_document_no_results;
      if (check_limits(lot).verdict != LimitsVerdict::inside)
        return EvidenceKind::mill_document_uncompared;
      return lot.mark == BarMark::matched ? EvidenceKind::mill_document_on_bar
                                          : EvidenceKind::mill_document_not_on_bar;
    }
    case SupplyDocument::type_2_2:
      return EvidenceKind::test_report;
    case SupplyDocument::type_2_1:
      return EvidenceKind::compliance_declaration;
    case SupplyDocument::label:
      return EvidenceKind::supplier_label;
    case SupplyDocument::suppliers_word:
      return EvidenceKind::suppliers_word;
    case SupplyDocument::none:
      break;
  }
  return EvidenceKind::nothing_on_file;
}

Evidence document_evidence(const Lot& lot) {
  std::string what = lot_name(lot);
  if (const std::string type = type_name(lot.document); !type.empty()) what += ", " + type;
  if (lot.document_number) what += " no. " + *lot.document_number;
  if (const auto number = melt_number(lot)) what += ", melt number " + *number;
  return {document_kind(lot), what};
}

// Source: EN 10204:2004, 3 and 4. 3.1 is validated by the manufacturer's inspection representative,
// who is independent of the production; 3.2 by the purchaser's or an official inspector as well.
std::string validated(const Lot& lot) {
  return lot.document == SupplyDocument::type_3_2
             ? "validated by the manufacturer's inspector and one from outside"
             : "validated by the manufacturer's own inspector";
}

std::string mill_sentence(const Lot& lot, const std::string& grade) {
  const std::string paper =
      "inspection certificate (" + type_name(lot.document) + "), " + validated(lot);
  const auto number = melt_number(lot);
  if (document_kind(lot) == EvidenceKind::mill_document_no_results)
    return grade + ", " + paper + ", on file " +
           (number ? "but its analysis not entered here" : "without a melt number") + ".";
  std::string text =
      grade + ", analysis of melt " + *number + " on file: " + paper + "; the number ";
  switch (lot.mark) {
    case BarMark::matched:
      text += "found on the bar";
      break;
    case BarMark::none_on_bar:
      text += "not found on the bar, which bore no mark";
      break;
    default:
      text += "not matched to a mark on the bar";
  }
  if (check_limits(lot).verdict != LimitsVerdict::inside)
    text += "; not compared with limits of the grade";
  return text + ".";
}

std::string grade_sentence(const Lot& lot) {
  const std::string grade = sold_name(lot);
  const std::string supplier = lot.supplier.empty() ? "the supplier" : lot.supplier;
  if (laboratory_bears_grade(lot))
    return grade + ", by a laboratory's analysis inside the limits of the grade.";
  if (inspection_document(lot)) return mill_sentence(lot, grade);
  switch (lot.document) {
    case SupplyDocument::type_2_2:
      return "Supplied as " + grade +
             " with a test report (EN 10204 2.2); its results are of non-specific inspection and "
             "need not be of this delivery.";
    case SupplyDocument::type_2_1:
      return "Supplied as " + grade +
             " with a declaration of compliance with the order (EN 10204 2.1), no results.";
    case SupplyDocument::label:
      return "Supplied as " + grade + " by the label or invoice of " + supplier +
             ", no inspection document.";
    default:
      return "Supplied as " + grade + " by word of " + supplier + ", no document.";
  }
}

std::string unknown_sentence(const Source& source) {
  if (source.melt && source.open_gaps > 0)
    return "Steel not identified: a piece lost its mark, so that it cannot be proved to come from "
           "melt " +
           source.melt->tag.text + ".";
  if (source.melt) return "Melt " + source.melt->tag.text + ": the record of it is not complete.";
  const Lot& lot = *source.lot;
  std::string text;
  if (lot.recycled_from)
    text = "Made from " + *lot.recycled_from + "; grade unknown";
  else if (source.open_gaps > 0)
    text =
        "Steel not identified: a piece lost its mark, so that it cannot be proved to come from " +
        lot_name(lot);
  else
    text = "Steel not identified (" + lot_name(lot) + ")";
  // The shop's own opinion may stand only as a guess that is called one.
  if (lot.grade && !lot.grade->empty()) text += "; a guess of the shop, not a fact: " + *lot.grade;
  if (!lot.own_tests.empty()) text += ". Tried: " + listed(lot.own_tests);
  return text + ".";
}

bool melt_complete(const Melt& melt) {
  return !melt.charge.empty() && melt.ingot_mass.has_value();
}

}  // namespace

std::string sold_name(const Lot& lot) {
  if (lot.grade && !lot.grade->empty()) return *lot.grade;
  return listed(lot.stated_steels);
}

bool identified(const Source& source) {
  if (source.open_gaps > 0) return false;
  if (source.melt) return false;
  const Lot& lot = *source.lot;
  if (sold_name(lot).empty() || check_limits(lot).verdict == LimitsVerdict::outside) return false;
  if (lot.mark == BarMark::differs) return false;
  if (lot.recycled_from || lot.document == SupplyDocument::none) return laboratory_bears_grade(lot);
  return true;
}

std::string source_name(const Source& source) {
  if (source.melt) {
    const bool smelted = source.melt->kind == MeltKind::bloomery;
    return std::string(smelted ? "steel smelted as melt " : "steel of melt ") +
           source.melt->tag.text;
  }
  if (!identified(source)) return "a steel that is not identified (" + lot_name(*source.lot) + ")";
  return sold_name(*source.lot) + " (" + lot_name(*source.lot) + ")";
}

Judgement judge_grade(const BladeCase& blade) {
  Needs needs;
  needs.lacking(!blade.dossier.steel.blade_piece, "the piece this blade was cut from");
  std::vector<Evidence> evidence;
  std::vector<std::string> sentences;
  bool all = true;
  for (const Source& source : blade.trail.sources()) {
    if (identified(source)) {
      sentences.push_back(grade_sentence(*source.lot));
      evidence.push_back(document_evidence(*source.lot));
      evidence.push_back(chain_evidence(source));
      continue;
    }
    all = false;
    if (source.melt) {
      needs.lacking(true, "a bought lot with a grade; melt " + source.melt->tag.text + " has none");
      continue;
    }
    const std::string name = lot_name(*source.lot);
    needs.lacking(source.open_gaps > 0, "an unbroken record of the pieces from " + name);
    needs.lacking(sold_name(*source.lot).empty(), "the grade of " + name);
    needs.lacking(check_limits(*source.lot).verdict == LimitsVerdict::outside,
                  "an analysis of " + name + " inside the limits of its grade");
    needs.lacking(source.lot->mark == BarMark::differs,
                  "a mark on the bar of " + name + " that is the number on its document");
    needs.lacking(source.lot->document == SupplyDocument::none || source.lot->recycled_from,
                  "somebody who answers for the grade of " + name +
                      ": a document, a label, the supplier's word or a laboratory");
  }
  needs.lacking(blade.dossier.steel.blade_piece && !blade.trail.leads_somewhere(),
                "a trail from the piece to a lot");
  if (sentences.empty()) return needs.missing(Claim::grade);

  std::string text;
  if (all && blade.trail.only_source() &&
      blade.trail.sources()[0].lot->sold_as == SoldAs::one_steel)
    text = "One steel throughout. ";
  for (std::size_t i = 0; i < sentences.size(); ++i) text += (i ? " " : "") + sentences[i];
  return stated(Claim::grade, text, evidence);
}

Judgement judge_analysis(const BladeCase& blade) {
  Needs needs;
  std::vector<Evidence> evidence;
  std::string text;
  for (const Source& source : blade.trail.sources()) {
    if (!source.lot) continue;
    const Lot& lot = *source.lot;
    const std::string name = lot_name(lot);
    if (!lot.analysis || lot.analysis->empty()) {
      needs.lacking(true, "an analysis of " + name);
      continue;
    }
    const bool from_paper = lot.analysis_source == AnalysisSource::document;
    const bool paper_has_results =
        inspection_document(lot) || lot.document == SupplyDocument::type_2_2;
    const bool outside = check_limits(lot).verdict == LimitsVerdict::outside;
    needs.lacking(from_paper && !paper_has_results,
                  "a document of " + name + " that carries results (EN 10204 2.2, 3.1 or 3.2)");
    needs.lacking(source.open_gaps > 0, "an unbroken record of the pieces from " + name);
    needs.lacking(outside, "an analysis of " + name + " inside the limits of its grade");
    if ((from_paper && !paper_has_results) || source.open_gaps > 0 || outside) continue;

    EvidenceKind kind = EvidenceKind::laboratory_analysis;
    if (lot.analysis_source == AnalysisSource::handheld_xray) kind = EvidenceKind::handheld_xray;
    if (from_paper) kind = document_evidence(lot).kind;
    evidence.push_back({kind, document_evidence(lot).what});
    evidence.push_back(chain_evidence(source));
    text +=
        (text.empty() ? "" : " ") + capital(name) + ", % by mass: " + analysis_text(*lot.analysis);
    if (check_limits(lot).verdict == LimitsVerdict::inside)
      text += "; inside the limits of " + sold_name(lot) + " (" + lot.facts->source + ")";
    text += kind == EvidenceKind::handheld_xray ? "; carbon not measured." : ".";
  }
  needs.lacking(blade.trail.sources().empty(), "a blade traced to a lot with an analysis");
  if (text.empty()) {
    needs.lacking(!needs.any(), "a bought lot with an analysis");
    return needs.missing(Claim::analysis);
  }
  return stated(Claim::analysis, text, evidence);
}

Judgement judge_unidentified(const BladeCase& blade) {
  if (!blade.trail.leads_somewhere())
    return stated(Claim::unidentified, "Steel not identified: the blade is traced to no lot.",
                  {{EvidenceKind::nothing_on_file, ""}});
  std::string text;
  std::vector<Evidence> evidence;
  for (const Source& source : blade.trail.sources()) {
    if (identified(source)) continue;
    if (source.melt && source.open_gaps == 0 && melt_complete(*source.melt)) continue;
    text += (text.empty() ? "" : " ") + unknown_sentence(source);
    const std::string what = source.lot ? lot_name(*source.lot) : "melt " + source.melt->tag.text;
    evidence.push_back({EvidenceKind::nothing_on_file, what});
    if (source.open_gaps > 0) evidence.push_back(chain_evidence(source));
    if (source.lot && !source.lot->own_tests.empty())
      evidence.push_back({EvidenceKind::own_test, listed(source.lot->own_tests)});
  }
  if (text.empty())
    return Missing{Claim::unidentified, {"a steel in the blade that nobody answers for"}};
  return stated(Claim::unidentified, text, evidence);
}

}  // namespace tangmark::certificate
