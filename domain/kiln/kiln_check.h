// SPDX-License-Identifier: MIT
#pragma once

#include "domain/kiln/kiln.h"
#include "domain/measure/caught.h"

namespace tangmark::kiln {

/// Catch 22: the kiln's thermocouple was not compared with another within the shop's own rule. A
/// kiln without a rule is not asked about. A remark: the firing goes on, the evidence is weaker.
Catch thermocouple_check_overdue(const Kiln& kiln, CalendarDate today);

}  // namespace tangmark::kiln
