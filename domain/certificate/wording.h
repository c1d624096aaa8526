// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/certificate/dossier.h"
#include "domain/certificate/judge.h"

namespace tangmark::certificate {

/// A word in a text that says something about a blade.
struct WordHit {
  std::string word;            ///< as typed: "300 layers"
  std::size_t at = 0;          ///< byte offset in the text
  std::optional<Claim> needs;  ///< the claim that would bear it; none when no record could
  bool proven = false;
  std::vector<std::string> lacking;   ///< evidence the record lacks; empty when proven
  std::vector<std::string> truthful;  ///< wordings that would be true; empty when proven
  friend bool operator==(const WordHit&, const WordHit&) = default;
};

/// Reads a text in English, German, French, Italian or Spanish against the record of a blade. What
/// a text denies ("not crucible steel") is no hit, unless the denial itself claims something ("no
/// cracks").
///
///     wording(dossier, "Wootz, 62 HRC")  ->  {"Wootz", 0, wootz, false, ...}, {"62 HRC", 7, ...}
std::vector<WordHit> wording(const Dossier& dossier, std::string_view text);
/// The same for a blade whose claims are judged already.
std::vector<WordHit> wording(const BladeCase& blade, const Judgements& judgements,
                             std::string_view text);

/// What a text denies although the record shows it ("not forged" of a forged blade).
std::vector<WordHit> denied_against_record(const BladeCase& blade, const Judgements& judgements,
                                           std::string_view text);

}  // namespace tangmark::certificate
