// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <array>

#include "domain/measure/figure.h"
#include "domain/measure/when.h"

namespace tangmark {
namespace {

constexpr std::array<const char*, 7> weekdays = {"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
constexpr std::array<const char*, 12> months = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

const char* name_of(date::month month) {
  return months[unsigned{month} - 1];
}

// Beyond two days the hours are said in days, and below an hour the seconds are said.
constexpr std::int64_t minute_s = 60;
constexpr std::int64_t hour_s = 3600;
constexpr std::int64_t day_s = 86'400;

std::string pair_text(std::int64_t large, const char* large_unit, std::string_view small,
                      const char* small_unit) {
  if (small == "0" || small == "00") return fmt::format("{} {}", large, large_unit);
  return fmt::format("{} {} {} {}", large, large_unit, small, small_unit);
}

std::string span_text(std::int64_t s) {
  if (s < minute_s) return fmt::format("{} s", s);
  if (s < hour_s) return pair_text(s / minute_s, "min", fmt::format("{}", s % minute_s), "s");
  const std::int64_t whole_minutes = (s + minute_s / 2) / minute_s;
  if (whole_minutes < 2 * 24 * 60) {
    return pair_text(whole_minutes / 60, "h", fmt::format("{:02}", whole_minutes % 60), "min");
  }
  const std::int64_t whole_hours = (s + hour_s / 2) / hour_s;
  return pair_text(whole_hours / 24, "d", fmt::format("{}", whole_hours % 24), "h");
}

}  // namespace

std::string to_stored(Instant at) {
  const auto day = date::floor<date::days>(at);
  const std::int64_t s = (at - day).count();
  return fmt::format("{}T{:02}:{:02}:{:02}Z", to_stored(CalendarDate{day}), s / hour_s,
                     s % hour_s / minute_s, s % minute_s);
}

std::string to_stored(CalendarDate day) {
  return fmt::format("{:04}-{:02}-{:02}", int{day.year()}, unsigned{day.month()},
                     unsigned{day.day()});
}

std::string to_text(Instant at, const Zone& zone) {
  return to_text(zone.date_of(at)) + ", " + clock_text(at, zone);
}

std::string clock_text(Instant at, const Zone& zone) {
  const auto minutes = zone.clock_of(at).count();
  return fmt::format("{:02}:{:02}", minutes / 60, minutes % 60);
}

std::string to_text(CalendarDate day) {
  const date::weekday weekday{date::sys_days{day}};
  return fmt::format("{} {} {} {}", weekdays[weekday.c_encoding()], unsigned{day.day()},
                     name_of(day.month()), int{day.year()});
}

std::string short_text(CalendarDate day) {
  return fmt::format("{} {}", unsigned{day.day()}, name_of(day.month()));
}

std::string to_text(Duration span) {
  const std::int64_t s = span.count();
  return s < 0 ? "-" + span_text(-s) : span_text(s);
}

std::string hours_text(Duration span) {
  const auto tenths = figures::half_even(figures::Wide{span.count()} * 10, hour_s);
  return figures::fixed(static_cast<std::int64_t>(tenths), 1);
}

}  // namespace tangmark
