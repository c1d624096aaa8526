// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/commission/commission.h"
#include "domain/measure/caught.h"

namespace tangmark::commission {

/// Catch 26: a waiting buyer has not been spoken to for longer than the maker's own rule. A remark:
/// the cure is a message, not a refusal.
Catch silent_too_long(const Commission& commission, CalendarDate last_contact, CalendarDate today,
                      int rule_days);

/// Catch 26, at the first work on a commission: the specification was not confirmed within the
/// maker's rule. After a year buyers forget or change. Asks. Agreeing to the quote confirms it.
Catch specification_not_confirmed(const Commission& commission, CalendarDate today, int rule_days);

}  // namespace tangmark::commission
