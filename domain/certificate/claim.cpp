// SPDX-License-Identifier: MIT
#include "domain/certificate/claim.h"

namespace tangmark::certificate {
namespace {

struct ClaimWords {
  Claim claim;
  std::string_view id;
  std::string_view head;
};

constexpr ClaimWords words[] = {
    {Claim::grade, "grade", "Steel"},
    {Claim::analysis, "analysis", "Analysis"},
    {Claim::pattern_welded, "pattern_welded", "Construction"},
    {Claim::pattern_welded_bought, "pattern_welded_bought", "Construction"},
    {Claim::crucible, "crucible", "Crucible steel"},
    {Claim::wootz, "wootz", "Wootz"},
    {Claim::carbide_banded, "carbide_banded", "Pattern"},
    {Claim::laminated, "laminated", "Construction"},
    {Claim::hamon, "hamon", "Hamon"},
    {Claim::differential, "differential", "Differential hardening"},
    {Claim::hardness, "hardness", "Hardness"},
    {Claim::heat_treatment, "heat_treatment", "Heat treatment"},
    {Claim::forged, "forged", "Shape"},
    {Claim::stock_removal, "stock_removal", "Shape"},
    {Claim::outside_work, "outside_work", "Outside work"},
    {Claim::sole_author, "sole_author", "Authors"},
    {Claim::layers, "layers", "Layers"},
    {Claim::sub_zero, "sub_zero", "Sub-zero"},
    {Claim::smelted, "smelted", "Smelted steel"},
    {Claim::etched_image, "etched_image", "Pattern"},
    {Claim::handle_species, "handle_species", "Handle"},
    {Claim::unidentified, "unidentified", "Steel"},
};

const ClaimWords& words_of(Claim claim) {
  for (const ClaimWords& w : words)
    if (w.claim == claim) return w;
  return words[0];  // unreachable: the table holds every claim, and a test reads all of them
}

}  // namespace

std::string_view claim_id(Claim claim) {
  return words_of(claim).id;
}
std::string_view claim_head(Claim claim) {
  return words_of(claim).head;
}

std::optional<Claim> claim_of(std::string_view id) {
  for (const ClaimWords& w : words)
    if (w.id == id) return w.claim;
  return std::nullopt;
}

}  // namespace tangmark::certificate
