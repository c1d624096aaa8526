// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <variant>

#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/outcome.h"
#include "domain/measure/share.h"

namespace tangmark::costing {

struct FlatSection {
  Length width, thickness;
  friend bool operator==(const FlatSection&, const FlatSection&) = default;
};
struct RoundSection {
  Length diameter;
  friend bool operator==(const RoundSection&, const RoundSection&) = default;
};
using BarSection = std::variant<FlatSection, RoundSection>;

/// The bar a blank is expected to come from, when its unusable rest shall be paid by its blanks.
struct WholeBar {
  Length length;
  Length keep;  ///< a rest this long or longer goes back to the rack and costs the blanks nothing
  friend bool operator==(const WholeBar&, const WholeBar&) = default;
};

struct BarCut {
  Length blank_length;
  BarSection section;
  Density density;
  /// Part of the mass taken that is still there in the blank: below whole for crop, scale and the
  /// end held in the tongs. Whole for plain cutting.
  Share yield = Share::whole();
  Length kerf;
  std::optional<WholeBar> bar;  ///< none: the rest of the bar always stays on the rack
  friend bool operator==(const BarCut&, const BarCut&) = default;
};

/// What one blank takes from the rack. The parts sum to `total`.
struct MassTaken {
  Mass blank;      ///< blank volume x density
  Mass yield_loss; ///< blank / yield - blank
  Mass kerf;       ///< one saw cut
  Mass rest;       ///< its part of a rest too short to keep
  Mass total;
  std::int64_t blanks_per_bar = 0;  ///< 0 when no bar is named
  std::string rule;                 ///< the kerf and offcut rule in one sentence
  friend bool operator==(const MassTaken&, const MassTaken&) = default;
};

/// Steel is costed on the mass taken from the bar, not on the mass of the blade. A bar cut into n
/// blanks needs n lengths and n - 1 kerfs; a rest below `keep` is paid by the n blanks alike.
/// Common practice, no source. Refuses lengths of zero, a yield outside (0, 1], and a blank that is
/// longer than the bar.
Outcome<MassTaken> mass_from_bar(const BarCut& cut);

}  // namespace tangmark::costing
