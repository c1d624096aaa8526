// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/caught.h"
#include "domain/measure/mass.h"
#include "domain/measure/share.h"
#include "domain/stock/billet.h"

namespace tangmark::stock {

/// in = out + crop + scale + swarf + gap, of one cut or one stage of a billet.
struct MassBalance {
  Mass in, out;
  Mass crop, scale, swarf;
  /// What nobody explains; negative when more came out than went in.
  Mass gap() const { return in - out - crop - scale - swarf; }
  friend bool operator==(const MassBalance&, const MassBalance&) = default;
};

/// Catch 2, at a cut: more out than in, or a gap above what the shop lets pass. Both ask. A smaller
/// gap is a remark, so that it is always shown.
Catches mass_at_cut(const MassBalance& balance, Share gap_allowed, MassUnit shown_in);

/// Catch 2, at a stage of a billet: the same, and a loss (all but the crop) beyond what the stage
/// usually costs. Ranges: a whole cycle of weld, draw, clean and restack keeps 85 to 93 %, of which
/// scale is 2 to 5 % and cleaning 3 to 6 %; common practice, no source.
Catches mass_at_stage(StageWork work, const MassBalance& balance, Share gap_allowed,
                      MassUnit shown_in);

/// The largest part of the mass that a stage usually costs, the crop not counted.
Share usual_loss_at_most(StageWork work);

/// Catch 2, at a melt: an ingot heavier than its charge asks.
Catch mass_at_melt(Mass charge, Mass ingot, MassUnit shown_in);

}  // namespace tangmark::stock
