// SPDX-License-Identifier: MIT
#pragma once

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// Crucible steel: a melt record with charge, lining, peak temperature, time and ingot mass, and
/// the blade traced to that ingot. **Source** of the term: steel fully melted and solidified in a
/// crucible as an ingot; solid-state welding plays no part (Feuerbach 2006).
Judgement judge_crucible(const BladeCase& blade);
/// Wootz: crucible steel of one ingot with a carbide pattern seen after etching. **Source**:
/// Verhoeven, Pendray & Dauksch, JOM 50(9) 1998, 58 (carbide bands from one ingot).
Judgement judge_wootz(const BladeCase& blade);
/// Smelted from ore: a smelt record with charge and mass won, and the blade traced to it.
Judgement judge_smelted(const BladeCase& blade);

}  // namespace tangmark::certificate
