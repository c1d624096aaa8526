// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/commission/promise.h"
#include "domain/measure/caught.h"

namespace tangmark::commission {

/// Catch 19: a day promised that is earlier than the day met in 80 of 100 runs of the forecast.
/// Asks. Without a forecast nothing is said.
Catch promise_before_forecast(CalendarDate day, std::optional<CalendarDate> forecast);

/// Catch 19: a promised day moved later while nobody says that the buyer was told. An earlier day
/// is good news and goes through.
Catch moved_without_telling(const std::optional<Promise>& before, CalendarDate day,
                            const std::optional<std::string>& told);

}  // namespace tangmark::commission
