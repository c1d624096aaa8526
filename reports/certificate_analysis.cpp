// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "reports/certificate_parts.h"
#include "reports/paragraph.h"

namespace tangmark::reports {

namespace {

constexpr Points bar_width = 50;
constexpr Points bar_height = 5.5;

std::string fixed(double figure, int decimals) {
  std::array<char, 48> text{};
  std::snprintf(text.data(), text.size(), "%.*f", std::clamp(decimals, 0, 4), figure);
  return text.data();
}

bool outside(const AnalysisLine& line) {
  return (line.least_wt_percent && line.wt_percent < *line.least_wt_percent) ||
         (line.most_wt_percent && line.wt_percent > *line.most_wt_percent);
}

std::string limits_text(const AnalysisLine& line) {
  std::string words;
  if (line.least_wt_percent && line.most_wt_percent) {
    words = fixed(*line.least_wt_percent, line.decimals) + "–" +
            fixed(*line.most_wt_percent, line.decimals);
  } else if (line.most_wt_percent) {
    words = "max " + fixed(*line.most_wt_percent, line.decimals);
  } else if (line.least_wt_percent) {
    words = "min " + fixed(*line.least_wt_percent, line.decimals);
  } else {
    words = "no limit";
  }
  return (outside(line) ? "outside " : "") + words;
}

// The limits take the middle eight tenths of the bar's room, so that a figure beyond them shows
// beside the grey.
void put_bar(Block& block, const AnalysisLine& line, Points x, Points middle) {
  if (!line.least_wt_percent && !line.most_wt_percent) return;
  const double low = line.least_wt_percent.value_or(0);
  const double high = line.most_wt_percent.value_or(std::max(low, line.wt_percent) * 1.25);
  const double range = std::max(high - low, 1e-9);
  const Points margin = line.least_wt_percent ? bar_width * 0.1 : 0;
  const Points room = bar_width * 0.9 - margin;
  block.elements.push_back(Rectangle{{x + margin, middle - bar_height / 2, room, bar_height},
                                     {false, 0, ink, true, band_grey}});
  const double part = (line.wt_percent - low) / range;
  const Points at = x + std::clamp(margin + part * room, 0.8, bar_width - 0.8);
  block.elements.push_back(Line{{at, middle - 4.2}, {at, middle + 4.2}, 1.8, ink, 0});
}

struct Places {
  Points figure_point;  ///< where the decimal points stand
  Points bar;
};

Block analysis_row(const CertificateSetting& set, const AnalysisLine& line, const Places& places,
                   Points width) {
  Block block = blank(set.type.leading);
  const Points y = baseline_in(set.type.leading);
  const std::string figure = fixed(line.wt_percent, line.decimals);
  const std::string whole = figure.substr(0, std::min(figure.find('.'), figure.size()));
  const Points before = set.fonts.width(whole, set.type.table_bold);
  block.elements.push_back(
      fitted_run(set.fonts, {0, y}, line.element, set.type.table, places.figure_point - 14, 5));
  block.elements.push_back(
      run_at(set.fonts, {places.figure_point - before, y}, figure, set.type.table_bold));
  put_bar(block, line, places.bar, set.type.leading / 2);
  block.elements.push_back(
      run_at(set.fonts, {width, y}, limits_text(line), set.type.table, ink, Align::right));
  block.marks = {{Role::cell, 0, 1, false, true},
                 {Role::cell, 1, 1},
                 {Role::cell, block.elements.size() - 1, 1}};
  return block;
}

Flow one_analysis(const CertificateSetting& set, const Analysis& analysis, Points width) {
  std::string head = analysis.lot;
  if (!analysis.source.empty()) head += ", " + analysis.source;
  Flow flow = paragraph(set.fonts, {{head, set.type.table_bold, ink}}, width, set.type.leading);
  for (Block& line : flow) line.keep_with_next = true;
  if (analysis.lines.empty()) {
    append(flow, paragraph(set.fonts, {{"No analysis on file.", set.type.table, ink}}, width,
                           set.type.leading));
  }
  const Places places{width * 0.2, width * 0.41};
  for (const AnalysisLine& line : analysis.lines) {
    flow.push_back(analysis_row(set, line, places, width));
    flow.back().marks.front().opens_table = &line == &analysis.lines.front();
  }
  return flow;
}

}  // namespace

Flow analysis_part(const CertificateSetting& set, const std::vector<Analysis>& analyses,
                   const std::string& note, Points width) {
  Flow flow = part_heading(set, "Composition", width);
  if (analyses.empty()) {
    append(flow, paragraph(set.fonts, {{"No analysis on file.", set.type.text, ink}}, width,
                           set.type.leading));
  } else {
    append(
        flow,
        paragraph(set.fonts,
                  {{"Per cent by mass; grey: the limits of the grade.", set.type.note, second_ink}},
                  width, set.type.leading));
  }
  for (const Analysis& analysis : analyses) append(flow, one_analysis(set, analysis, width));
  if (!note.empty()) {
    append(flow, paragraph(set.fonts, {{note, set.type.table, ink}}, width, set.type.leading));
  }
  return flow;
}

}  // namespace tangmark::reports
