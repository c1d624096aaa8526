// SPDX-License-Identifier: MIT
#pragma once

#include "domain/kiln/plan_check.h"
#include "domain/measure/caught.h"

namespace tangmark::kiln {

/// What the trade's list of slips calls a broken rule of a firing plan: 5 a blade that does not
/// fit, 7 blades that may not share a firing, 8 a temper that comes too late after the quench, 21
/// work planned when nobody is there, on a loaded circuit, or in a kiln that is not free or not at
/// heat in time, 22 a bath that would get too hot. What could never work is a stop; what a maker
/// may know better is asked about.
Catches catches_of(const PlanCheck& check);

}  // namespace tangmark::kiln
