// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

#include "domain/blade/finding.h"

namespace tangmark::blade {

/// What is seen on blades. A fault waits for a decision; a result (layers, carbides, a hamon) is
/// what came out and waits for one only when it is marked as affecting the blade. Source: common
/// practice, no source.
struct KnownFinding {
  std::string_view kind;  ///< "crack"
  bool fault;
};

std::span<const KnownFinding> known_findings();
/// Whether something of this kind is a result and no fault; an unknown kind is a fault.
bool is_result(std::string_view kind);
/// Whether a finding still waits for the maker's decision.
bool waits_for_decision(const Finding& finding);

}  // namespace tangmark::blade
