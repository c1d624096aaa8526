// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

enum class DisclosureKind {
  finding,
  hardened_again,
  tempered_again,
  straightened,
  work_by_others,
  customers_material,
  identity_gap,
  entered_later,
  estimate,
  species,
  treatment,
  health,
  finish,
  rusts,
  nickel,
  other_than_ordered,
  corrected,
};

/// Something told openly. It follows from the record and cannot be left out; `how` of a finding is
/// where the maker explains.
struct Disclosure {
  DisclosureKind kind = DisclosureKind::finding;
  std::string text;
  std::optional<int> finding;  ///< number of the finding it tells of
  std::optional<int> photo;
  friend bool operator==(const Disclosure&, const Disclosure&) = default;
};

/// Everything the record owes the buyer. **Source** of the list: common practice, no source; the
/// 10.5 % of chromium below which a steel is not stainless: EN 10020:2000, 3.2.2 (from memory).
std::vector<Disclosure> disclosures(const BladeCase& blade);

/// Whether a finding must be told: faults always, other results when they affect the blade.
bool must_be_told(const Finding& finding);

/// Whether every steel of the blade has at least 10.5 % chromium; none when it is not known of one.
std::optional<bool> stainless(const BladeCase& blade);

}  // namespace tangmark::certificate
