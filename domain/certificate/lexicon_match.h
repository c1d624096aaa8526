// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "domain/certificate/lexicon.h"
#include "domain/certificate/lexicon_text.h"

namespace tangmark::certificate {

/// Whether a word is one of a table's.
template <std::size_t N>
bool among(const std::array<std::string_view, N>& table, std::string_view word) {
  return std::find(table.begin(), table.end(), word) != table.end();
}

/// A figure in a text with the words around it that change what it says.
struct SaidFigure {
  double value = 0;
  std::optional<double> from;  ///< lower end of a range: "58-60 HRC"
  bool about = false;          ///< "about", "ca.", "~"
  bool over = false;           ///< "over", "more than", "300+", "hundreds of"
  bool negative = false;       ///< "-196", "minus 196"
};

/// One find: the words [first, last) of the text match a form of an entry.
struct Found {
  const LexiconEntry* entry = nullptr;
  std::size_t first = 0;
  std::size_t last = 0;
  std::optional<SaidFigure> figure;
};

/// Every find in a text; where finds overlap the longest is taken, then the earlier row. Harmless
/// uses are found too (Proof::allow). `typed` is the text the words were taken from.
std::vector<Found> find_words(std::string_view typed, const std::vector<TextWord>& words,
                              const std::vector<LexiconEntry>& entries);

}  // namespace tangmark::certificate
