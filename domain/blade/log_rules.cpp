// SPDX-License-Identifier: MIT
#include "domain/blade/log_rules.h"

#include <fmt/format.h>

#include <algorithm>

#include "domain/blade/operation.h"

namespace tangmark::blade {
namespace {

Caught out_of_order(Weight weight, std::string field, std::string sentence) {
  return {23, weight, std::move(field), std::move(sentence), "Check the times and their dates."};
}

bool is_kiln_work(std::string_view operation) {
  const auto known = trade_operation(operation);
  return known &&
         (known->heat != Heat::none || operation == "hold warm" || operation == "sub-zero");
}

bool is_temper(std::string_view operation) {
  return operation == "temper" || operation == "snap temper";
}

Instant end_of(const LogEntry& entry) {
  if (entry.time_out) return *entry.time_out;
  return entry.ended_at.value_or(entry.started_at);
}

std::optional<Instant> last_quench(std::span<const KeptLogEntry> log) {
  std::optional<Instant> last;
  for (const KeptLogEntry& entry : log)
    if (entry.operation == "harden") last = end_of(entry);
  return last;
}

}  // namespace

Catch fired_with_handle(std::int64_t blade, std::string_view operation, bool hot,
                        std::optional<Instant> handle_fitted_at) {
  if (!hot || !handle_fitted_at) return std::nullopt;
  return Caught{
      13, Weight::ask, "operation",
      fmt::format("Blade {} has its handle fitted, and \"{}\" would burn it.", blade, operation),
      "Take the handle off first."};
}

Catches times_out_of_order(const LogEntry& entry) {
  Catches found;
  if (entry.ended_at && *entry.ended_at < entry.started_at)
    found.push_back(out_of_order(Weight::stop, "started", "The step ends before it starts."));
  if (entry.time_in && entry.time_out && *entry.time_out < *entry.time_in)
    found.push_back(out_of_order(Weight::stop, "time_in",
                                 "The blade comes out of the heat before it went in."));
  if (entry.time_in && !entry.time_out && entry.ended_at && *entry.ended_at < *entry.time_in)
    found.push_back(out_of_order(Weight::stop, "time_in",
                                 "The step ends before the blade went into the heat."));
  return found;
}

Catches out_of_order_with_log(const LogEntry& entry, std::span<const KeptLogEntry> log,
                              Instant blade_started_at, const Zone& zone) {
  Catches found;
  if (entry.started_at < blade_started_at)
    found.push_back(out_of_order(
        Weight::stop, "at",
        fmt::format("That is before the blade was begun ({}).", to_text(blade_started_at, zone))));
  const auto quenched_at = last_quench(log);
  if (is_temper(entry.operation) && quenched_at && end_of(entry) <= *quenched_at)
    found.push_back(out_of_order(Weight::stop, "at",
                                 fmt::format("That temper ends before the quench it follows ({}).",
                                             to_text(*quenched_at, zone))));
  if (!is_temper(entry.operation)) return found;
  for (const KeptLogEntry& earlier : log)
    if (is_temper(earlier.operation) && earlier.started_at <= entry.started_at &&
        end_of(earlier) > entry.started_at)
      found.push_back(out_of_order(Weight::ask, "at",
                                   fmt::format("The {} before it ran until {}.", earlier.operation,
                                               to_text(end_of(earlier), zone))));
  return found;
}

Catch clock_went_backwards(Instant now, std::optional<Instant> newest_entered_at,
                           const Zone& zone) {
  if (!newest_entered_at || now >= *newest_entered_at) return std::nullopt;
  return out_of_order(
      Weight::ask, "at",
      fmt::format("The clock reads {}, earlier than when the newest entry was typed ({}).",
                  to_text(now, zone), to_text(*newest_entered_at, zone)));
}

Catch shown_twice(Instant at, const Zone& zone) {
  const CalendarDate day = zone.date_of(at);
  if (!zone.happens_twice(day, zone.clock_of(at))) return std::nullopt;
  return Caught{23, Weight::remark, "at",
                fmt::format("The clock on the wall shows {} twice that day.", clock_text(at, zone)),
                "Write the offset to say which, such as +01:00."};
}

Catch no_hours(const LogEntry& entry) {
  if (entry.hands_on + entry.attended > Duration() || is_kiln_work(entry.operation))
    return std::nullopt;
  return Caught{24, Weight::remark, "hands_on",
                fmt::format("\"{}\" is logged with no hours.", entry.operation),
                "Correct the entry if a timer was forgotten."};
}

Catch span_too_long(const LogEntry& entry, Duration timer_limit) {
  Duration longest = std::max(entry.hands_on, entry.attended);
  if (entry.ended_at && !is_kiln_work(entry.operation))
    longest = std::max(longest, Duration(*entry.ended_at - entry.started_at));
  if (longest <= timer_limit) return std::nullopt;
  return Caught{24, Weight::ask, "hands_on",
                fmt::format("{} is longer than your timer limit of {}: was a timer left running?",
                            to_text(longest), to_text(timer_limit)),
                "Write the true time."};
}

}  // namespace tangmark::blade
