// SPDX-License-Identifier: MIT
#pragma once

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// Readings on this blade after its last heat, with place, scale and tester, printed as a range
/// with the tester's margin; else a coupon's, which the text says; else a set of files.
/// **Source** of the margin of 1 HRC: usual reproducibility of shop testers (common practice).
Judgement judge_hardness(const BladeCase& blade);
/// What is said when there is no such reading: "Not measured.", with the estimate, labelled, when
/// the record has one.
Statement hardness_not_measured(const BladeCase& blade);

/// The readings that count as measured on this blade after its last heat, of one scale, best first.
std::vector<const HardnessReading*> readings_that_count(const BladeCase& blade);
/// A tester whose reading on the block is off by more than this many tenths is not a checked one.
inline constexpr int block_margin_tenths = 10;

}  // namespace tangmark::certificate
