// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "reports/page.h"

namespace tangmark::reports {

/// Part of a line that one font file sets. `text` views the line it was cut from.
struct FontSegment {
  std::string_view text;
  std::size_t file = 0;
  Points width = 0;
};

/// The fonts on this machine and what each character takes, read once from the font files. Noto
/// Serif and Noto Sans set the text; a sign they lack (≤ − → ☐) comes from DejaVu Sans. Together
/// they cover the European languages, Greek and Cyrillic. Bold italic is set as bold.
///
/// Read-only after load, so any number of threads may measure with one book.
class FontBook {
 public:
  /// Throws PageFailure naming the font file that is missing and the package that holds it.
  static FontBook load();

  /// How wide the text is, as the PDF will set it: advances in whole thousandths of the size,
  /// without kerning. Source: ISO 32000-1, 9.2.4 (glyph widths in thousandths of text space).
  Points width(std::string_view text, const Font& font) const;
  /// The line cut where the font file changes; empty for an empty text.
  std::vector<FontSegment> segments(std::string_view text, const Font& font) const;
  /// How far an accented capital stands above the baseline, and g below it.
  static Points ascent(const Font& font) { return 0.95 * font.size; }
  static Points descent(const Font& font) { return 0.24 * font.size; }
  /// The path of a font file, by the number in FontSegment.
  const std::string& path(std::size_t file) const { return files_[file].path; }
  static constexpr std::size_t file_count = 10;
  /// Sixteen digits that stand for the measures of all characters: machines with the same digest
  /// set a page alike. It guards against a mistake, not against an enemy.
  std::string digest() const;

  /// The first character of the text that no font here can print, as a problem of that field. Right
  /// to left writing counts as such: the pages cannot order or join its letters.
  std::optional<Problem> unprintable(std::string_view text, std::string_view field) const;

 private:
  static constexpr std::uint16_t lacking = 0xFFFF;
  struct FontFile {
    std::string path;
    // In thousandths for each character of the basic plane; `lacking` where there is no glyph.
    std::vector<std::uint16_t> advance;
    bool has(char32_t code) const { return code < advance.size() && advance[code] != lacking; }
  };
  FontBook() = default;
  std::size_t file_for(char32_t code, const Font& font) const;

  std::array<FontFile, file_count> files_;
};

}  // namespace tangmark::reports
