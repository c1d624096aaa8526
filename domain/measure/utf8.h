// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace tangmark {

/// Whether c is one of 0 to 9, whatever the locale.
constexpr bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

/// Whether text is well-formed UTF-8: no overlong forms, no surrogates, nothing above U+10FFFF.
/// Source: The Unicode Standard, table 3-7 "Well-Formed UTF-8 Byte Sequences"; RFC 3629.
bool is_valid_utf8(std::string_view text);
/// Byte offset of the first byte that breaks UTF-8, or npos.
std::size_t first_broken_byte(std::string_view text);

/// The code point at the front of text, which is cut off text. A broken byte is taken alone and
/// read as U+FFFD, so that walking over any bytes ends. text must not be empty.
char32_t take_code_point(std::string_view& text);
/// Writes a code point behind out. A surrogate or a number above U+10FFFF is written as U+FFFD.
void append_code_point(std::string& out, char32_t code_point);
/// Number of code points; a broken byte counts as one.
std::size_t count_code_points(std::string_view text);
/// The first n code points, or all when there are fewer. A view into text.
std::string_view first_code_points(std::string_view text, std::size_t n);

/// Small letters for Latin, Greek and Cyrillic capitals; everything else is kept.
/// Source: Unicode Character Database, simple lower case mapping.
std::string lower_case(std::string_view text);
/// For finding: small letters without diacritics, so that "Ä" and "a" are found by each other.
/// Ligatures and letters of their own are spelled ("ß" ss, "æ" ae, "þ" th, "ø" o, "ł" l), the
/// final sigma is a sigma, combining marks vanish, no-break and thin spaces become a space.
/// Source: Unicode Character Database, canonical decomposition; spelled letters common practice.
std::string folded(std::string_view text);

/// A folded text that still knows where it came from.
struct FoldedText {
  std::string text;
  /// For each byte of text the byte offset in the original of the code point it came from, and one
  /// more at the end: the length of the original.
  std::vector<std::size_t> origin;
};
/// As folded(), for pointing at a find in the original.
FoldedText folded_with_origin(std::string_view text);

}  // namespace tangmark
