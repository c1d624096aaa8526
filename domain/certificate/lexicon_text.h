// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tangmark::certificate {

/// One word or figure of a text, folded for finding: small ASCII letters, no diacritics, letters
/// that only look Latin read as Latin, invisible characters taken out.
struct TextWord {
  std::string text;             ///< "damast", "300"
  std::string gap;              ///< what stands between it and the word before, folded
  std::size_t at = 0;           ///< byte offset in the text as typed
  std::size_t end = 0;          ///< one past its last byte there
  std::optional<double> value;  ///< of a figure or a number word: "62,5" 62.5, "1'000" 1000
};

/// Splits a text into words and figures; a figure and letters written together are two words
/// ("300lagig", "62HRC"). Broken bytes separate words.
std::vector<TextWord> words_of_text(std::string_view text);

/// Whether a gap ends a clause: full stop, semicolon, colon, question or exclamation mark, bracket,
/// dash between blanks, line end.
bool ends_clause(std::string_view gap);

/// Whether two words are the same up to a common slip: one letter wrong, missing, doubled or
/// swapped in words of five to seven letters, two in longer ones; the first letter must agree.
bool nearly(std::string_view known, std::string_view typed);

}  // namespace tangmark::certificate
