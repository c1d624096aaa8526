// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace tangmark::certificate {

/// What a build certificate can state about a blade. The identifiers (`claim_id`) are part of the
/// machine-readable record and never change.
///
/// What the words mean here, and who defines them so:
/// - pattern-welded: several pieces of iron or steel joined by forge-welding into a pattern;
///   crucible steel: steel made by melting in a crucible. The two are told apart, as are inlaid and
///   selectively etched patterns, which go by the same loose name. **Source**: A. Feuerbach,
///   "Crucible steel: production and identification", in R. D. Smith (ed.), The conservation and
///   restoration of arms and armour, 2006, introduction.
/// - wootz: crucible steel whose pattern is of carbide particles in bands. **Source**: J. D.
///   Verhoeven, A. H. Pendray, W. E. Dauksch, JOM 50 (1998) no. 9, 58 (from memory).
/// - carbide-banded: the same kind of bands raised by thermal cycling in a steel that nobody melted
///   in a crucible for it; for the elements that band see claims_pattern.h. **Source**: the same.
/// - laminated (san mai): a core between two outer layers of other steel, the core being the edge.
///   **Source**: common practice, no source.
/// - inspection certificate, test report, declaration of compliance: EN 10204:2004, clauses 3
/// and 4.
enum class Claim {
  grade,
  analysis,
  pattern_welded,
  pattern_welded_bought,
  crucible,
  wootz,
  carbide_banded,
  laminated,
  hamon,
  differential,
  hardness,
  heat_treatment,
  forged,
  stock_removal,
  outside_work,
  sole_author,
  layers,
  sub_zero,
  smelted,
  etched_image,
  handle_species,
  unidentified,
};

/// Every claim, in the order in which a certificate prints them.
inline constexpr std::array<Claim, 22> all_claims = {
    Claim::grade,
    Claim::unidentified,
    Claim::analysis,
    Claim::pattern_welded,
    Claim::pattern_welded_bought,
    Claim::layers,
    Claim::laminated,
    Claim::crucible,
    Claim::wootz,
    Claim::smelted,
    Claim::carbide_banded,
    Claim::etched_image,
    Claim::forged,
    Claim::stock_removal,
    Claim::heat_treatment,
    Claim::sub_zero,
    Claim::differential,
    Claim::hamon,
    Claim::hardness,
    Claim::handle_species,
    Claim::outside_work,
    Claim::sole_author,
};

/// The stored word: "pattern_welded".
std::string_view claim_id(Claim claim);
/// The claim of a stored word; none for any other word.
std::optional<Claim> claim_of(std::string_view id);
/// The short head printed before a statement: "Construction", "Sub-zero".
std::string_view claim_head(Claim claim);

}  // namespace tangmark::certificate
