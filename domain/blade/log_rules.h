// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "domain/blade/log_entry.h"
#include "domain/blade/state.h"
#include "domain/measure/caught.h"

namespace tangmark::blade {

/// Catch 13: a firing after the handle was fitted. Asks: a handle can be taken off again.
/// `hot` says whether the operation is done in a kiln, oven or forge.
Catch fired_with_handle(std::int64_t blade, std::string_view operation, bool hot,
                        std::optional<Instant> handle_fitted_at);

/// Catch 23, within one entry: it ends before it starts, or comes out of the kiln before it went
/// in.
Catches times_out_of_order(const LogEntry& entry);

/// Catch 23, between entries: a temper before the quench it follows; an entry before the blade was
/// begun. Stops. An entry that starts while an earlier one of the heat treatment still runs asks.
Catches out_of_order_with_log(const LogEntry& entry, std::span<const KeptLogEntry> log,
                              Instant blade_started_at, const Zone& zone);

/// Catch 23: the clock reads earlier than when the newest entry was typed. Asks: correct the clock.
Catch clock_went_backwards(Instant now, std::optional<Instant> newest_entered_at, const Zone& zone);

/// Catch 23: the clock on the wall shows this time twice that day. A remark.
Catch shown_twice(Instant at, const Zone& zone);

/// Catch 24: a done step without hours, a forgotten timer. A remark; kiln time alone is no hours.
Catch no_hours(const LogEntry& entry);

/// Catch 24: a span or timer longer than the shop holds possible. Asks; not of kiln soaks.
Catch span_too_long(const LogEntry& entry, Duration timer_limit);

}  // namespace tangmark::blade
