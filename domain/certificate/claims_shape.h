// SPDX-License-Identifier: MIT
#pragma once

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// Forged to shape: at least one forge step logged on this blade. Drawing out a billet is not it.
Judgement judge_forged(const BladeCase& blade);
/// Cut and ground: profile or grind steps logged, and no forge step.
Judgement judge_stock_removal(const BladeCase& blade);
/// Work done elsewhere, each named with who did it.
Judgement judge_outside_work(const BladeCase& blade);
/// One maker alone: shape, hardening, temper and, where there is one, handle logged by the maker;
/// no step, billet, melt or part from another hand in or out of the shop, and no bought billet.
Judgement judge_sole_author(const BladeCase& blade);

}  // namespace tangmark::certificate
