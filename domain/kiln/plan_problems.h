// SPDX-License-Identifier: MIT
#pragma once

#include "domain/kiln/plan_case.h"
#include "domain/measure/outcome.h"

namespace tangmark::kiln {

/// What stops a case from being planned at all: names used twice, ranges upside down, windows out
/// of order, a temperature below the room, locked firings that break a rule between themselves. The
/// field is a path as in the case's text ("blades[3].ops[1].t_lo"). Empty: the case is sound.
Problems problems_of(const PlanCase& a_case);

}  // namespace tangmark::kiln
