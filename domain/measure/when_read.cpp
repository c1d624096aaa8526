// SPDX-License-Identifier: MIT
#include <array>
#include <optional>

#include "domain/measure/figure.h"
#include "domain/measure/utf8.h"
#include "domain/measure/when.h"

namespace tangmark {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

constexpr int first_year = 1900;
constexpr int last_year = 2199;

constexpr std::array<std::string_view, 12> month_names = {
    "january", "february", "march",     "april",   "may",      "june",
    "july",    "august",   "september", "october", "november", "december"};

Problem refuse(std::string_view text, std::string_view field, std::string_view why,
               std::string_view remedy) {
  return {std::string(field), figures::quoted(text) + std::string(why), std::string(remedy)};
}

// Exactly `width` digits at the front.
std::optional<int> take_number(std::string_view& rest, std::size_t width) {
  if (rest.size() < width) return std::nullopt;
  int value = 0;
  for (std::size_t i = 0; i < width; ++i) {
    if (!is_digit(rest[i])) return std::nullopt;
    value = value * 10 + (rest[i] - '0');
  }
  rest.remove_prefix(width);
  return value;
}

bool take(std::string_view& rest, char c) {
  if (!rest.starts_with(c)) return false;
  rest.remove_prefix(1);
  return true;
}

CalendarDate make_date(int year, int month, int day) {
  return date::year{year} / date::month{static_cast<unsigned>(month)} /
         date::day{static_cast<unsigned>(day)};
}

// "2026-11-25" at the front; the day may still be one that the month does not have.
std::optional<CalendarDate> take_iso_date(std::string_view& rest) {
  std::string_view ahead = rest;
  const auto year = take_number(ahead, 4);
  if (!year || !take(ahead, '-')) return std::nullopt;
  const auto month = take_number(ahead, 2);
  if (!month || !take(ahead, '-')) return std::nullopt;
  const auto day = take_number(ahead, 2);
  if (!day) return std::nullopt;
  rest = ahead;
  return make_date(*year, *month, *day);
}

// "25 Nov 2026" or "25 November 2026", the whole text.
std::optional<CalendarDate> worded_date(std::string_view text) {
  auto day = take_number(text, 2);
  if (!day) day = take_number(text, 1);
  text = figures::trimmed(text);
  std::string word;
  while (!text.empty() && !is_digit(text.front()) && text.front() != ' ') {
    const char c = text.front();
    word.push_back(c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c);
    text.remove_prefix(1);
  }
  text = figures::trimmed(text);
  const auto year = take_number(text, 4);
  if (!day || !year || !text.empty()) return std::nullopt;
  for (std::size_t m = 0; m < month_names.size(); ++m) {
    if (word == month_names[m] || word == month_names[m].substr(0, 3)) {
      return make_date(*year, static_cast<int>(m) + 1, *day);
    }
  }
  return std::nullopt;
}

Outcome<CalendarDate> accepted(CalendarDate day, std::string_view text, std::string_view field) {
  if (!day.ok()) {
    return refuse(text, field, " is a day that does not exist.", "Check the month and the day.");
  }
  if (int{day.year()} < first_year || int{day.year()} > last_year) {
    return refuse(text, field, " is not between the years 1900 and 2199.", "Check the year.");
  }
  return day;
}

// "07:51" or "07:51:30" at the front; a part of a second is cut off.
std::optional<seconds> take_clock(std::string_view& rest) {
  const auto hour = take_number(rest, 2);
  if (!hour || !take(rest, ':')) return std::nullopt;
  const auto minute = take_number(rest, 2);
  if (!minute) return std::nullopt;
  int second = 0;
  if (take(rest, ':')) {
    const auto read = take_number(rest, 2);
    if (!read) return std::nullopt;
    second = *read;
    if (rest.size() > 1 && rest[0] == '.' && is_digit(rest[1])) {
      rest.remove_prefix(1);
      while (!rest.empty() && is_digit(rest.front())) rest.remove_prefix(1);
    }
  }
  if (*hour > 23 || *minute > 59 || second > 59) return std::nullopt;
  return hours{*hour} + minutes{*minute} + seconds{second};
}

// "Z", "+01:00", "-0500" or "+01", the whole text.
std::optional<seconds> read_offset(std::string_view text) {
  if (text == "Z" || text == "z") return seconds{0};
  const bool west = text.starts_with('-');
  if (!take(text, '+') && !take(text, '-')) return std::nullopt;
  const auto hour = take_number(text, 2);
  take(text, ':');
  const auto minute = text.empty() ? std::optional<int>(0) : take_number(text, 2);
  if (!hour || !minute || !text.empty() || *hour > 14 || *minute > 59) return std::nullopt;
  const seconds offset = hours{*hour} + minutes{*minute};
  return west ? -offset : offset;
}

constexpr std::string_view instant_remedy =
    "Write a time such as 2026-11-25 07:51, 2026-11-25T07:51:00+01:00, 07:51 or now.";

Outcome<Instant> dated_instant(CalendarDate day, std::string_view rest, const Zone& zone,
                               std::string_view text, std::string_view field) {
  const auto accepted_day = accepted(day, text, field);
  if (!accepted_day) return accepted_day.problems();
  if (rest.empty()) return zone.at(day, seconds{0});
  if (!take(rest, 'T') && !take(rest, ' ')) {
    return refuse(text, field, " is not a time.", instant_remedy);
  }
  const auto clock = take_clock(rest);
  if (!clock) return refuse(text, field, " has no time of day such as 07:51.", instant_remedy);
  if (rest.empty()) return zone.at(day, *clock);
  const auto offset = read_offset(figures::trimmed(rest));
  if (!offset) {
    return refuse(text, field, " has words behind the time that are not an offset.",
                  instant_remedy);
  }
  return Instant{date::sys_days{day} + *clock - *offset};
}

}  // namespace

Outcome<Instant> parse_instant(std::string_view text, const Zone& zone, Instant now,
                               std::string_view field) {
  std::string_view rest = figures::trimmed(text);
  if (rest == "now") return now;
  if (const auto day = take_iso_date(rest)) return dated_instant(*day, rest, zone, text, field);
  const auto clock = take_clock(rest);
  if (clock && rest.empty()) return zone.at(zone.date_of(now), *clock);
  return refuse(text, field, " is not a time.", instant_remedy);
}

Outcome<CalendarDate> parse_date(std::string_view text, std::string_view field) {
  const std::string_view day_text = figures::trimmed(text);
  std::string_view rest = day_text;
  auto day = take_iso_date(rest);
  if (day && !rest.empty()) day.reset();
  if (!day) day = worded_date(day_text);
  if (!day) {
    return refuse(text, field, " is not a date.",
                  "Write a date such as 2026-11-25 or 25 Nov 2026.");
  }
  return accepted(*day, text, field);
}

Outcome<Instant> from_stored_instant(std::string_view text, std::string_view field) {
  std::string_view rest = text;
  const auto day = take_iso_date(rest);
  const auto clock = day && take(rest, 'T') ? take_clock(rest) : std::nullopt;
  if (!clock || rest != "Z" || text.size() != 20 || !day->ok()) {
    return refuse(text, field, " is not a stored time.",
                  "A stored time is written as 2026-11-25T06:51:00Z.");
  }
  return Instant{date::sys_days{*day} + *clock};
}

}  // namespace tangmark
