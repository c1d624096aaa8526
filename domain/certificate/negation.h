// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/certificate/lexicon_match.h"

namespace tangmark::certificate {

/// For each find whether the text denies it: "not crucible steel", "kein Tiegelstahl", "n'est pas
/// du damas", "hamon: none", "neither wootz nor damascus". A negator counts when only small words
/// stand between it and the find; "not only", "nothing but", "not without", "why not", "no
/// ordinary" and "not X but Y" (for Y) deny nothing.
std::vector<bool> denied(const std::vector<TextWord>& words, const std::vector<Found>& finds);

}  // namespace tangmark::certificate
