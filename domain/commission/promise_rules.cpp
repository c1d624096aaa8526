// SPDX-License-Identifier: MIT
#include "domain/commission/promise_rules.h"

#include <fmt/format.h>

namespace tangmark::commission {

Catch promise_before_forecast(CalendarDate day, std::optional<CalendarDate> forecast) {
  if (!forecast || day >= *forecast) return std::nullopt;
  return Caught{19, Weight::ask, "day",
                fmt::format("{} is earlier than the forecast: {} is met in 80 of 100 runs.",
                            to_text(day), to_text(*forecast)),
                fmt::format("Promise {} or later.", to_text(*forecast))};
}

Catch moved_without_telling(const std::optional<Promise>& before, CalendarDate day,
                            const std::optional<std::string>& told) {
  if (!before || day <= before->day || told) return std::nullopt;
  return Caught{19, Weight::stop, "told",
                fmt::format("{} was promised, and nobody says that the buyer was told of {}.",
                            to_text(before->day), to_text(day)),
                "Tell the buyer and give told, or use tell_delay, which also asks for consent."};
}

}  // namespace tangmark::commission
