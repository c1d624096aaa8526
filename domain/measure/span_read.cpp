// SPDX-License-Identifier: MIT
#include <array>
#include <optional>

#include "domain/measure/figure.h"
#include "domain/measure/utf8.h"
#include "domain/measure/when.h"

namespace tangmark {
namespace {

constexpr std::int64_t minute_s = 60;
constexpr std::int64_t hour_s = 3600;
constexpr std::int64_t day_s = 86'400;

constexpr figures::Unit minute = {"min", minute_s};
constexpr std::array<figures::Unit, 20> span_units = {{
    {"s", 1},      {"sec", 1},      {"secs", 1},        {"second", 1},        {"seconds", 1},
    minute,        {"m", minute_s}, {"mins", minute_s}, {"minute", minute_s}, {"minutes", minute_s},
    {"h", hour_s}, {"hr", hour_s},  {"hrs", hour_s},    {"hour", hour_s},     {"hours", hour_s},
    {"d", day_s},  {"day", day_s},  {"days", day_s},    {"week", 7 * day_s},  {"weeks", 7 * day_s},
}};

constexpr figures::Kind span_kind = {.noun = "a span of time",
                                     .measure = "time",
                                     .example = "90 min, 1:30 or 1 h 20 min",
                                     .units = span_units,
                                     .most = 3653 * day_s,
                                     .most_text = "ten years"};

// Up to `most` digits at the front.
std::optional<std::int64_t> take_digits(std::string_view& rest, std::size_t most) {
  std::int64_t value = 0;
  std::size_t n = 0;
  for (; n < rest.size() && is_digit(rest[n]); ++n) {
    if (n == most) return std::nullopt;
    value = value * 10 + (rest[n] - '0');
  }
  rest.remove_prefix(n);
  return n == 0 ? std::nullopt : std::optional(value);
}

// ":30" at the front, always two digits below 60.
std::optional<std::int64_t> take_sixtieth(std::string_view& rest) {
  if (!rest.starts_with(':') || rest.size() < 3 || !is_digit(rest[2])) return std::nullopt;
  rest.remove_prefix(1);
  const auto value = take_digits(rest, 2);
  return value && *value < 60 ? value : std::nullopt;
}

// "1:30" or "1:30:15": hours, minutes and seconds.
Outcome<Duration> clock_span(std::string_view text, std::string_view field) {
  std::string_view rest = figures::trimmed(text);
  const auto hours = take_digits(rest, 9);
  const auto minutes = take_sixtieth(rest);
  const auto seconds = rest.empty() ? std::optional<std::int64_t>(0) : take_sixtieth(rest);
  if (!hours || !minutes || !seconds || !rest.empty())
    return figures::not_a(text, span_kind, field);
  const std::int64_t span = *hours * hour_s + *minutes * minute_s + *seconds;
  if (span > span_kind.most) return figures::too_much(text, span_kind, field);
  return Duration{span};
}

}  // namespace

Outcome<Duration> parse_duration(std::string_view text, std::string_view field) {
  if (text.find(':') != std::string_view::npos) return clock_span(text, field);
  const auto span = figures::read_quantity(text, span_kind, minute, field);
  if (!span) return span.problems();
  return Duration{*span};
}

}  // namespace tangmark
