// SPDX-License-Identifier: MIT
#pragma once

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// Pattern-welded by this shop: a billet with at least two steels as layers, every stack, fold and
/// cut closed by a logged weld, no stage done outside, and the blade traced to it.
/// **Source** of the term: two or more irons or steels forge-welded into one bar and manipulated
/// (Feuerbach 2006, in the literature on crucible steel); the trade also says "Damascus".
Judgement judge_pattern_welded(const BladeCase& blade);
/// Pattern-welded steel that was bought as such, or welded outside to the shop's order. Layers and
/// maker are given as stated by the supplier.
Judgement judge_pattern_welded_bought(const BladeCase& blade);
/// A hard core between other outer layers: welded here from core and cladding, or bought as a
/// laminated bar, which the text then says.
Judgement judge_laminated(const BladeCase& blade);
/// Number of layers by stacking arithmetic from the logged stages; a supplier's count is no count.
Judgement judge_layers(const BladeCase& blade);

/// Whether every stack, fold and cut of a billet is closed by a weld that is logged with it, after
/// it, or in the bench log of the blade.
bool welds_closed(const BladeCase& blade, const Billet& billet);

}  // namespace tangmark::certificate
