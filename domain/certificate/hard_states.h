// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/certificate/blade_case.h"

namespace tangmark::certificate {

/// States of a blade in which nothing is certified: quenched and not tempered, tempered fewer times
/// than planned (a temper begun before the blade had cooled does not count), a finding with no
/// decision, a scrapped blade, planned hardening or temper that nobody logged, outside work that is
/// not back, a certificate without blade number or maker.
std::vector<Refusal> hard_states(const BladeCase& blade);

/// Whether a finding is a fault that waits for a decision. Pattern results and a hamon wait for
/// none.
bool waits_for_decision(const Finding& finding);

}  // namespace tangmark::certificate
