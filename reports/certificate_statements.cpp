// SPDX-License-Identifier: MIT
#include <algorithm>

#include "reports/certificate_parts.h"
#include "reports/paragraph.h"

namespace tangmark::reports {

namespace {

Flow list_part(const CertificateSetting& set, const std::string& head,
               const std::vector<std::string>& points, const std::string& none, Points width) {
  Flow flow = part_heading(set, head, width);
  flow.front().space_before = set.type.half();
  const std::vector<std::string> nothing{none};
  bool first = true;
  for (const std::string& point : points.empty() ? nothing : points) {
    Flow lines = text_flow(set, {{point, set.type.text, ink}}, width);
    if (!first) lines.front().space_before = set.type.half() / 2;
    first = false;
    append(flow, std::move(lines));
  }
  return flow;
}

// What each level on this page means, once, in small letters.
Flow legend_part(const CertificateSetting& set, const BuildCertificate& c, Spread spread,
                 Points width) {
  if (spread == Spread::one_page) {
    std::string levels;
    for (const std::string& level : c.legend) levels += level + ". ";
    Flow lines = paragraph(
        set.fonts, {{"Levels. ", sans(7, Weight::bold), second_ink}, {levels, sans(7), second_ink}},
        width, 9.5);
    Flow block{glued(lines)};
    block.front().space_before = set.type.half();
    return block;
  }
  Flow lines;
  for (const std::string& level : c.legend) {
    append(lines, paragraph(set.fonts, {{level + ".", set.type.note, second_ink}}, width, 9.5));
  }
  Flow head = part_heading(set, "Levels of evidence", width);
  head.front().space_before = set.type.half();
  append(head, {glued(lines)});
  return head;
}

}  // namespace

std::vector<Flow> fact_parts(const CertificateSetting& set, const BuildCertificate& c,
                             Spread spread, Points width) {
  std::vector<std::string> care = c.care;
  care.insert(care.end(), c.cautions.begin(), c.cautions.end());
  std::vector<Flow> parts;
  parts.push_back(list_part(set, "Told openly", c.told_openly,
                            "Nothing to tell: no finding on this blade is on record.", width));
  parts.push_back(list_part(set, "Care and cautions", care, "None entered.", width));
  if (!c.notes.empty()) parts.push_back(list_part(set, "From the maker", c.notes, "", width));
  if (!c.explanations.empty()) parts.push_back(list_part(set, "Words", c.explanations, "", width));
  if (!c.legend.empty()) parts.push_back(legend_part(set, c, spread, width));
  return parts;
}

Flow statement_flow(const CertificateSetting& set, const Statement& s, Points width) {
  std::vector<Span> spans{{s.subject + ".", set.type.text_bold, ink},
                          {" " + s.sentence, set.type.text, ink}};
  std::string evidence;
  if (s.level) evidence = std::string("Level ") + *s.level;
  if (!s.evidence.empty()) evidence += (evidence.empty() ? "" : ": ") + s.evidence;
  if (!evidence.empty()) spans.push_back({"\n" + evidence, set.type.text_italic, second_ink});
  return text_flow(set, spans, width);
}

Flow statements_flow(const CertificateSetting& set, const BuildCertificate& c, std::size_t first,
                     std::size_t end, Points width) {
  Flow flow;
  for (std::size_t i = first; i < end; ++i) {
    Flow lines = statement_flow(set, c.statements[i], width);
    if (i > first) lines.front().space_before = set.type.half() / 2;
    append(flow, std::move(lines));
  }
  return flow;
}

}  // namespace tangmark::reports
