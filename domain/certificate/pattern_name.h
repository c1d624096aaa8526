// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/certificate/judge.h"

namespace tangmark::certificate {

/// What a blade is made of, as far as the record bears it.
enum class Making {
  wootz,
  crucible,
  laminated_patterned,  ///< laminated with pattern-welded steel in it
  pattern_welded,
  pattern_welded_bought,
  laminated,
  smelted,
  carbide_banded,
  etched_image,
  hamon,
  one_steel,
  unidentified,
};

/// A true name for what was made, and the sentence that keeps a looser word from being read into
/// it.
struct TruthfulName {
  std::string name;
  std::string explanation;
  friend bool operator==(const TruthfulName&, const TruthfulName&) = default;
};

Making making_of(const BladeCase& blade, const Judgements& judgements);

/// The names the maker may choose among, the plainest first; never empty. None says more than the
/// claims that hold. **Source** of the terms: pattern-welded and crucible steel, Feuerbach 2006;
/// banding from one ingot, Verhoeven, Pendray & Dauksch, JOM 50(9) 1998, 58; that the trade calls
/// pattern-welded steel Damascus: common usage.
std::vector<TruthfulName> truthful_names(const BladeCase& blade, const Judgements& judgements);

/// The plain name of a making in "en", "de", "fr", "it" or "es"; English for any other.
std::string making_words(Making making, std::string_view language);

}  // namespace tangmark::certificate
