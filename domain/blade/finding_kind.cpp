// SPDX-License-Identifier: MIT
#include "domain/blade/finding_kind.h"

#include <algorithm>
#include <array>

namespace tangmark::blade {

std::span<const KnownFinding> known_findings() {
  static constexpr std::array findings{
      KnownFinding{"crack", true},
      KnownFinding{"delamination", true},
      KnownFinding{"warp", true},
      KnownFinding{"soft area", true},
      KnownFinding{"overheated edge", true},
      KnownFinding{"inclusion", true},
      KnownFinding{"pit", true},
      KnownFinding{"weld line", true},
      KnownFinding{"cold shut", true},
      KnownFinding{"decarb", true},
      KnownFinding{"handle fault", true},
      KnownFinding{"shorter than drawn", true},
      KnownFinding{"layers seen", false},
      KnownFinding{"carbide pattern seen", false},
      KnownFinding{"no pattern seen", false},
      KnownFinding{"hamon seen", false},
      KnownFinding{"other", true},
  };
  return findings;
}

bool is_result(std::string_view kind) {
  const auto all = known_findings();
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const KnownFinding& k) { return k.kind == kind; });
  return found != all.end() && !found->fault;
}

bool waits_for_decision(const Finding& finding) {
  return finding.decision == Decision::open && (finding.affects || !is_result(finding.kind));
}

}  // namespace tangmark::blade
