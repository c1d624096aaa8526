// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "domain/certificate/lexicon_match.h"

namespace tangmark::certificate {

/// Whether a folded word can deny what follows it: "no", "kein", "sans".
bool is_negator(std::string_view word);

/// For each find whether the text denies it: "not crucible steel", "kein Tiegelstahl", "n'est pas
/// du damas", "hamon: none", "neither wootz nor damascus". A negator counts when only small words
/// stand between it and the find; "not only", "nothing but", "not without", "why not", "no
/// ordinary" and "not X but Y" (for Y) deny nothing. A denial that is asked ("Is this not
/// damascus?") denies nothing either.
std::vector<bool> denied(std::string_view typed, const std::vector<TextWord>& words,
                         const std::vector<Found>& finds);

}  // namespace tangmark::certificate
