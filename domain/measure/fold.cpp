// SPDX-License-Identifier: MIT
#include <array>

#include "domain/measure/letter_tables.h"
#include "domain/measure/utf8.h"

namespace tangmark {
namespace {

struct Run {
  char32_t first;
  std::u16string_view small;
  std::u16string_view plain;
};

constexpr std::array<Run, 5> runs = {{
    {0xC0, letters::latin_small, letters::latin_plain},
    {0x370, letters::greek_small, letters::greek_plain},
    {0x400, letters::cyrillic_small, letters::cyrillic_plain},
    {0x1E00, letters::latin_additional_small, letters::latin_additional_plain},
    {0x1F00, letters::greek_extended_small, letters::greek_extended_plain},
}};

struct Spelling {
  char32_t letter;
  std::string_view spelled;
};

// Letters that no decomposition takes apart, as they are typed where the key is missing.
constexpr std::array<Spelling, 24> spellings = {{
    {U'ß', "ss"}, {U'æ', "ae"}, {U'œ', "oe"}, {U'þ', "th"}, {U'ø', "o"},  {U'ł', "l"},
    {U'đ', "d"},  {U'ð', "d"},  {U'ħ', "h"},  {U'ŧ', "t"},  {U'ı', "i"},  {U'ĳ', "ij"},
    {U'ŀ', "l"},  {U'ŉ', "n"},  {U'ŋ', "n"},  {U'ĸ', "k"},  {U'ſ', "s"},  {U'ǆ', "dz"},
    {U'ǉ', "lj"}, {U'ǌ', "nj"}, {U'ǳ', "dz"}, {U'ﬁ', "fi"}, {U'ﬂ', "fl"}, {U'ﬀ', "ff"},
}};

char32_t small_ascii(char32_t c) {
  return c >= 'A' && c <= 'Z' ? c + ('a' - 'A') : c;
}

char32_t looked_up(char32_t c, std::u16string_view Run::*table) {
  if (c < 0x80) return small_ascii(c);
  for (const Run& run : runs) {
    const std::u16string_view letters = run.*table;
    if (c >= run.first && c - run.first < letters.size()) return letters[c - run.first];
  }
  return c;
}

bool vanishes(char32_t c) {
  return (c >= 0x300 && c <= 0x36F) || c == 0xAD || c == 0x200B;
}
bool is_odd_space(char32_t c) {
  return c == 0xA0 || (c >= 0x2000 && c <= 0x200A) || c == 0x202F;
}

void append_folded(std::string& out, char32_t c) {
  if (vanishes(c)) return;
  if (is_odd_space(c)) return out.push_back(' ');
  const char32_t plain = looked_up(c, &Run::plain);
  for (const Spelling& s : spellings) {
    if (plain < 0x80) break;
    if (s.letter == plain) return void(out.append(s.spelled));
  }
  append_code_point(out, plain);
}

}  // namespace

std::string lower_case(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  while (!text.empty()) append_code_point(out, looked_up(take_code_point(text), &Run::small));
  return out;
}

std::string folded(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  while (!text.empty()) append_folded(out, take_code_point(text));
  return out;
}

FoldedText folded_with_origin(std::string_view text) {
  FoldedText out;
  for (std::string_view rest = text; !rest.empty();) {
    const std::size_t at = text.size() - rest.size();
    append_folded(out.text, take_code_point(rest));
    out.origin.resize(out.text.size(), at);
  }
  out.origin.push_back(text.size());
  return out;
}

}  // namespace tangmark
