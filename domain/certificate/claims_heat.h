// SPDX-License-Identifier: MIT
#pragma once

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// The hardening that the blade carries and its tempers, each heat in words that say how it is
/// known; or an outside heat treatment, with who did it.
Judgement judge_heat_treatment(const BladeCase& blade);
/// A cold step after the quench with its real temperature and time.
Judgement judge_sub_zero(const BladeCase& blade);
/// Differentially hardened: quenched with clay or edge only, in a bath and in a steel that allow
/// it, and shown by a hamon seen after etch or polish, or by hardness at edge and spine that differ
/// by at least `differential_hrc`. **Source**: a line that is only etched or sanded is cosmetic
/// (common practice).
Judgement judge_differential(const BladeCase& blade);
/// A hamon: the same quench, and the line seen on this blade after etch or polish.
Judgement judge_hamon(const BladeCase& blade);

/// Edge over spine in HRC that shows differential hardening. Common practice, no source.
inline constexpr int differential_hrc = 5;

/// Whether a steel of the blade hardens in air, so that a hamon cannot be: by the table of grades,
/// or by chromium of 3 % and more (common practice, no source).
bool air_hardening(const BladeCase& blade);

}  // namespace tangmark::certificate
