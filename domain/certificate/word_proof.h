// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/certificate/judge.h"
#include "domain/certificate/lexicon_match.h"

namespace tangmark::certificate {

/// A text being read against the record of one blade.
struct TextAgainstRecord {
  const BladeCase& blade;
  const Judgements& judgements;
  const std::vector<TextWord>& words;
};

/// Whether the record bears what a find says.
bool proven(const TextAgainstRecord& text, const Found& found);

/// What the record lacks for it, in words, for the list of what is missing.
std::vector<std::string> lacking(const TextAgainstRecord& text, const Found& found);

}  // namespace tangmark::certificate
