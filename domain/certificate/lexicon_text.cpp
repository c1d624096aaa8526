// SPDX-License-Identifier: MIT
#include "domain/certificate/lexicon_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "domain/certificate/number_words.h"
#include "domain/measure/utf8.h"

namespace tangmark::certificate {
namespace {

bool digit_of(char c) {
  return c >= '0' && c <= '9';
}

// Small letters, and the letters of other scripts that are left after folding.
bool letter_of(char32_t c) {
  if (c < 0x80) return c >= 'a' && c <= 'z';
  if (c < 0x2000) return c >= 0xC0 && c != 0xD7 && c != 0xF7;
  return c >= 0x2C00 && c < 0xFE00;
}

// The bytes of the word at the front, 0 when no letter stands there.
std::size_t word_length(std::string_view text) {
  const std::size_t all = text.size();
  while (!text.empty()) {
    std::string_view rest = text;
    if (!letter_of(take_code_point(rest))) break;
    text = rest;
  }
  return all - text.size();
}

// Cyrillic and Greek letters that are drawn like Latin ones, and small capitals.
constexpr auto look_alikes = std::to_array<std::pair<char32_t, char>>({
    {U'а', 'a'}, {U'в', 'b'}, {U'с', 'c'}, {U'е', 'e'}, {U'һ', 'h'}, {U'н', 'h'}, {U'і', 'i'},
    {U'ј', 'j'}, {U'к', 'k'}, {U'м', 'm'}, {U'о', 'o'}, {U'р', 'p'}, {U'ԛ', 'q'}, {U'ѕ', 's'},
    {U'т', 't'}, {U'у', 'y'}, {U'ԝ', 'w'}, {U'х', 'x'}, {U'α', 'a'}, {U'ο', 'o'}, {U'ρ', 'p'},
    {U'ν', 'v'}, {U'ι', 'i'}, {U'κ', 'k'}, {U'τ', 't'}, {U'υ', 'u'}, {U'А', 'a'}, {U'В', 'b'},
    {U'С', 'c'}, {U'Е', 'e'}, {U'Н', 'h'}, {U'І', 'i'}, {U'К', 'k'}, {U'М', 'm'}, {U'О', 'o'},
    {U'Р', 'p'}, {U'Ѕ', 's'}, {U'Т', 't'}, {U'У', 'y'}, {U'Х', 'x'}, {U'Α', 'a'}, {U'Β', 'b'},
    {U'Ε', 'e'}, {U'Ζ', 'z'}, {U'Η', 'h'}, {U'Ι', 'i'}, {U'Κ', 'k'}, {U'Μ', 'm'}, {U'Ν', 'n'},
    {U'Ο', 'o'}, {U'Ρ', 'p'}, {U'Τ', 't'}, {U'Υ', 'y'}, {U'Χ', 'x'}, {U'ԁ', 'd'}, {U'ɡ', 'g'},
    {U'ɑ', 'a'}, {U'ı', 'i'}, {U'ᴀ', 'a'}, {U'ʙ', 'b'}, {U'ᴄ', 'c'}, {U'ᴅ', 'd'}, {U'ᴇ', 'e'},
    {U'ꜰ', 'f'}, {U'ɢ', 'g'}, {U'ʜ', 'h'}, {U'ɪ', 'i'}, {U'ᴊ', 'j'}, {U'ᴋ', 'k'}, {U'ʟ', 'l'},
    {U'ᴍ', 'm'}, {U'ɴ', 'n'}, {U'ᴏ', 'o'}, {U'ᴘ', 'p'}, {U'ʀ', 'r'}, {U'ꜱ', 's'}, {U'ᴛ', 't'},
    {U'ᴜ', 'u'}, {U'ᴠ', 'v'}, {U'ᴡ', 'w'}, {U'ʏ', 'y'}, {U'ᴢ', 'z'},
});

char32_t plain(char32_t c) {
  if (c >= 0xFF21 && c <= 0xFF3A) return c - 0xFF21 + 'a';
  if (c >= 0xFF01 && c <= 0xFF5E) return c - 0xFF01 + '!';  // full-width forms
  if (c >= 0x1D400 && c <= 0x1D6A3) {                       // mathematical letters
    const char32_t letter = (c - 0x1D400) % 52;
    return letter % 26 + 'a';
  }
  if (c >= 0x1D7CE && c <= 0x1D7FF) return (c - 0x1D7CE) % 10 + '0';  // mathematical figures
  if (c >= 0x24B6 && c <= 0x24CF) return c - 0x24B6 + 'a';            // in circles
  if (c >= 0x24D0 && c <= 0x24E9) return c - 0x24D0 + 'a';
  if (c == 0x2010 || c == 0x2011) return '-';
  if (c == 0x2019 || c == 0x02BC || c == 0x2032) return '\'';
  if (c == 0x2212) return '-';
  if (c >= 'A' && c <= 'Z') return c - 'A' + 'a';
  return c;
}

// What takes no room of its own, and marks that are laid over letters.
bool invisible(char32_t c) {
  return c == 0xAD || c == 0x61C || c == 0x115F || c == 0x1160 || c == 0x180E || c == 0x3164 ||
         c == 0xFEFF || (c >= 0x300 && c <= 0x36F) || (c >= 0x1AB0 && c <= 0x1AFF) ||
         (c >= 0x1DC0 && c <= 0x1DFF) || (c >= 0x200B && c <= 0x200F) ||
         (c >= 0x202A && c <= 0x202E) || (c >= 0x2060 && c <= 0x206F) ||
         (c >= 0x20D0 && c <= 0x20FF) || (c >= 0xFE00 && c <= 0xFE0F) ||
         (c >= 0xE0000 && c <= 0xE01EF);
}

// The folded text with the offsets of its bytes in the original.
struct Plain {
  std::string text;
  std::vector<std::size_t> at;
  std::vector<std::size_t> end;
};

Plain plain_text(std::string_view text) {
  const FoldedText folded = folded_with_origin(text);
  Plain result;
  std::string_view rest = folded.text;
  while (!rest.empty()) {
    const std::size_t before = folded.text.size() - rest.size();
    const char32_t c = plain(take_code_point(rest));
    const std::size_t after = folded.text.size() - rest.size();
    if (invisible(c)) continue;
    const std::size_t start = result.text.size();
    append_code_point(result.text, c);
    std::size_t end = folded.origin[after];
    if (end <= folded.origin[before]) {  // one letter was spelled as two: take all of it
      std::string_view one = text.substr(folded.origin[before]);
      const std::size_t length = one.size();
      take_code_point(one);
      end = folded.origin[before] + length - one.size();
    }
    for (std::size_t i = start; i < result.text.size(); ++i) {
      result.at.push_back(folded.origin[before]);
      result.end.push_back(end);
    }
  }
  return result;
}

// Reads letters of other scripts that look Latin as Latin, when the whole word can be read so.
std::string latin(std::string_view word) {
  std::string result;
  while (!word.empty()) {
    const char32_t c = take_code_point(word);
    const auto alike = std::find_if(look_alikes.begin(), look_alikes.end(),
                                    [&](const auto& pair) { return pair.first == c; });
    if (alike != look_alikes.end())
      result += alike->second;
    else
      append_code_point(result, c);
  }
  return result;
}

// The length of a figure at the front: "62", "62.5", "62,5", "1'000", "1.000", "1 000".
std::size_t figure_length(std::string_view text) {
  std::size_t n = 0;
  while (n < text.size() && digit_of(text[n])) ++n;
  for (;;) {
    const bool separated = n + 1 < text.size() &&
                           (text[n] == '.' || text[n] == ',' || text[n] == '\'' || text[n] == ' ');
    if (!separated) return n;
    std::size_t m = n + 1;
    while (m < text.size() && digit_of(text[m])) ++m;
    const std::size_t digits = m - n - 1;
    const bool thousands = digits == 3;
    const bool decimals = (text[n] == '.' || text[n] == ',') && digits > 0;
    if (!(thousands || decimals)) return n;
    n = m;
    if (!thousands) return n;
  }
}

double figure_value(std::string_view figure) {
  double value = 0;
  std::size_t i = 0;
  const auto digits_from = [&](std::size_t k) {
    std::size_t m = k;
    while (m < figure.size() && digit_of(figure[m])) ++m;
    return m - k;
  };
  for (; i < figure.size(); ++i) {
    if (digit_of(figure[i])) {
      value = value * 10 + (figure[i] - '0');
      continue;
    }
    const std::size_t digits = digits_from(i + 1);
    if (digits == 3) continue;  // a mark between thousands
    double part = 0;
    for (std::size_t k = 0; k < digits; ++k) part = part * 10 + (figure[i + 1 + k] - '0');
    return value + part / std::pow(10.0, static_cast<double>(digits));
  }
  return value;
}

}  // namespace

std::vector<TextWord> words_of_text(std::string_view text) {
  const Plain plain = plain_text(text);
  const std::string& t = plain.text;
  std::vector<TextWord> words;
  std::size_t last = 0;
  for (std::size_t i = 0; i < t.size();) {
    std::size_t end = i;
    TextWord word;
    if (digit_of(t[i])) {
      end = i + figure_length(std::string_view(t).substr(i));
      word.text = t.substr(i, end - i);
      word.value = figure_value(word.text);
    } else if (const std::size_t letters = word_length(std::string_view(t).substr(i))) {
      end = i + letters;
      word.text = latin(std::string_view(t).substr(i, end - i));
      word.value = number_word(word.text);
    } else {
      ++i;
      continue;
    }
    word.gap = t.substr(last, i - last);
    word.at = plain.at[i];
    word.end = plain.end[end - 1];
    words.push_back(std::move(word));
    i = last = end;
  }
  return words;
}

bool ends_clause(std::string_view gap) {
  if (gap.find_first_of(".;:!?()[]\n\r\"") != std::string_view::npos) return true;
  return gap.find(" - ") != std::string_view::npos ||
         gap.find(" \u2013 ") != std::string_view::npos ||
         gap.find("\u2014") != std::string_view::npos;
}

bool nearly(std::string_view known, std::string_view typed) {
  if (known == typed) return true;
  if (known.size() < 5 || typed.empty() || known[0] != typed[0]) return false;
  const std::size_t allowed = known.size() >= 8 ? 2 : 1;
  const std::size_t difference =
      known.size() > typed.size() ? known.size() - typed.size() : typed.size() - known.size();
  if (difference > allowed) return false;
  // Optimal string alignment distance.
  const std::size_t n = known.size();
  const std::size_t m = typed.size();
  std::vector<std::vector<std::size_t>> d(n + 1, std::vector<std::size_t>(m + 1));
  for (std::size_t i = 0; i <= n; ++i) d[i][0] = i;
  for (std::size_t j = 0; j <= m; ++j) d[0][j] = j;
  for (std::size_t i = 1; i <= n; ++i)
    for (std::size_t j = 1; j <= m; ++j) {
      const std::size_t cost = known[i - 1] == typed[j - 1] ? 0 : 1;
      d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + cost});
      if (i > 1 && j > 1 && known[i - 1] == typed[j - 2] && known[i - 2] == typed[j - 1])
        d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
    }
  return d[n][m] <= allowed;
}

}  // namespace tangmark::certificate
