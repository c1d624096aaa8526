// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"

namespace tangmark::steel {

/// Minutes for a switched-off kiln to fall from one temperature to another:
/// tau x ln((from - ambient) / (to - ambient)). **Source**: Newton's law of cooling; tau is fitted
/// to two logged readings of the kiln itself. **Valid**: one tau over the whole fall, door
/// unchanged. Refuses a rise, an end at or below ambient, and a tau that is not above zero.
Outcome<double> cooling_minutes(Temperature from, Temperature to, Temperature ambient,
                                double tau_min);

}  // namespace tangmark::steel
