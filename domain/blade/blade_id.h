// SPDX-License-Identifier: MIT
#pragma once

#include "domain/measure/id.h"

namespace tangmark::blade {

/// Not the short number that is stamped into a tang: that is a blade's `number`.
using BladeId = Id<struct BladeTag>;
using RouteStepId = Id<struct RouteStepTag>;
using LogEntryId = Id<struct LogEntryTag>;
using ReadingId = Id<struct ReadingTag>;
using FindingId = Id<struct FindingTag>;
using TrialId = Id<struct TrialTag>;

}  // namespace tangmark::blade
