// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "reports/block.h"
#include "reports/font_book.h"

namespace tangmark::reports {

/// Text of one font within a paragraph.
struct Span {
  std::string text;
  Font font;
  Grey grey = ink;
};

enum class Align { left, right, centre };

/// One line as set: its runs stand on y = 0 from x = 0.
struct SetLine {
  std::vector<TextRun> runs;
  Points width = 0;
};

/// Breaks text into lines no wider than `width`: after spaces, after hyphens and slashes between
/// letters, at line ends of the text; a word wider than the line is broken between characters. A
/// figure stays with its unit ("2 h 06 min", "C 0.85"), and a last line has two words where the
/// last two are short. Always at least one line.
std::vector<SetLine> broken_lines(const FontBook& fonts, const std::vector<Span>& spans,
                                  Points width);

/// Where the baseline stands in a line of this height.
constexpr Points baseline_in(Points leading) {
  return 0.76 * leading;
}

/// Adds a line to a block: baseline at y, between x and x + width.
void put_line(Block& block, const SetLine& line, Points x, Points y, Points width, Align align);

/// A paragraph, one block for each line; its first two and last two lines stay together.
Flow paragraph(const FontBook& fonts, const std::vector<Span>& spans, Points width, Points leading,
               Align align = Align::left);

/// A single run, measured, for charts and labels. It is not broken.
TextRun run_at(const FontBook& fonts, Place baseline, std::string_view text, const Font& font,
               Grey grey = ink, Align align = Align::left);

/// The text in the largest of the sizes from font.size down to `least` that fits the width; what
/// still does not fit is cut between characters and closed with "…".
TextRun fitted_run(const FontBook& fonts, Place baseline, std::string_view text, Font font,
                   Points width, Points least, Align align = Align::left);

}  // namespace tangmark::reports
