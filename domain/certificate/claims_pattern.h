// SPDX-License-Identifier: MIT
#pragma once

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// A carbide pattern raised in one bought bar: one bar, enough carbon or carbide formers by its
/// analysis or grade, thermal cycles logged, etch logged, the pattern found after it. The text
/// always adds that this is neither crucible steel of this shop nor pattern-welded.
/// **Source** of the composition rule (C above 0.76 %, or V, Mo or W above 0.10 %, or Cr above
/// 0.30 %): eutectoid carbon of the iron-carbon diagram (Callister); carbide formers behind banding
/// after Verhoeven, Pendray & Dauksch, JOM 50(9) 1998, 58; the figures are this project's reading.
Judgement judge_carbide_banded(const BladeCase& blade);
/// A pattern that is an etched image on one steel: etched through a stencil or resist, no layers.
Judgement judge_etched_image(const BladeCase& blade);

}  // namespace tangmark::certificate
