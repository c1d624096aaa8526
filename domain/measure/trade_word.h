// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cassert>
#include <string>
#include <string_view>
#include <utility>

#include "domain/measure/outcome.h"

namespace tangmark {

/// The one two-way table between an enum and the trade's words for it, which are what is stored,
/// typed and shown. Specialise `trade_words<E>` beside the enum, one row for each value:
///
///     template <> inline constexpr auto trade_words<Section> = std::array{
///         std::pair{Section::flat, std::string_view{"flat"}}, ...};
template <class E>
inline constexpr std::array<std::pair<E, std::string_view>, 0> trade_words{};

template <class E>
std::string_view word_of(E value) {
  for (const auto& [known, word] : trade_words<E>)
    if (known == value) return word;
  assert(false && "every value of an enum has its word");
  return {};
}

/// The value of a word; refuses an unknown one and lists the known.
template <class E>
Outcome<E> of_word(std::string_view word, std::string_view field) {
  std::string known_words;
  for (const auto& [known, name] : trade_words<E>) {
    if (name == word) return known;
    known_words += (known_words.empty() ? "" : ", ") + std::string(name);
  }
  return Problem{std::string(field), "\"" + std::string(word) + "\" is not a word known here.",
                 "Use one of: " + known_words + "."};
}

}  // namespace tangmark
