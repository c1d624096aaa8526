// SPDX-License-Identifier: MIT
#include "domain/kiln/record_time.h"

#include <fmt/format.h>

#include <algorithm>

#include "domain/kiln/record_cell.h"
#include "domain/steel/figure_text.h"

namespace tangmark::kiln {
namespace {

constexpr std::int64_t ms_per_min = 60'000;
constexpr std::int64_t ms_per_hour = 60 * ms_per_min;
constexpr std::int64_t ms_per_day = 24 * ms_per_hour;

// Takes up to `most` digits off the front; none when there is no digit or one too many.
std::optional<std::int64_t> take_digits(std::string_view& text, std::size_t most) {
  std::size_t n = 0;
  std::int64_t value = 0;
  while (n < text.size() && text[n] >= '0' && text[n] <= '9') {
    if (n == most) return std::nullopt;
    value = value * 10 + (text[n++] - '0');
  }
  if (n == 0) return std::nullopt;
  text.remove_prefix(n);
  return value;
}

bool take(std::string_view& text, char c) {
  if (text.empty() || text.front() != c) return false;
  text.remove_prefix(1);
  return true;
}

bool take_date(std::string_view& text, WrittenTime& written) {
  std::string_view rest = text;
  const std::size_t before = rest.size();
  const auto first = take_digits(rest, 4);
  const std::size_t width = before - rest.size();
  if (!first || rest.empty()) return false;
  const char mark = rest.front();
  if (mark != '-' && mark != '/' && mark != '.') return false;
  rest.remove_prefix(1);
  const auto second = take_digits(rest, 2);
  if (!second || !take(rest, mark)) return false;
  const auto third = take_digits(rest, 4);
  if (!third) return false;
  written.has_date = true;
  written.first = *first;
  written.second = *second;
  written.third = *third;
  written.year_leads = width == 4;
  written.date_mark = mark;
  text = rest;
  return true;
}

bool take_clock(std::string_view& text, WrittenTime& written) {
  std::string_view rest = text;
  const auto hours = take_digits(rest, 5);
  if (!hours || !take(rest, ':')) return false;
  const auto minutes = take_digits(rest, 2);
  if (!minutes || *minutes > 59) return false;
  written.ms = *hours * ms_per_hour + *minutes * ms_per_min;
  if (take(rest, ':')) {
    const char point = rest.find(',') < rest.find('.') ? ',' : '.';
    const std::string_view seconds_text = rest;
    const auto seconds = take_decimal(rest, point);
    if (!seconds || seconds_text.front() == '-' || seconds_text.front() == '+') return false;
    const std::int64_t ms = scaled(*seconds, 1000);
    if (ms >= ms_per_min) return false;
    written.ms += ms;
    written.has_seconds = true;
  }
  written.has_clock = true;
  text = rest;
  return true;
}

// "AM" and "PM" behind a clock of twelve hours.
bool take_half_of_day(std::string_view& text, WrittenTime& written) {
  const std::string_view rest = bare_cell(text);
  if (rest.size() != 2 || (rest[1] != 'M' && rest[1] != 'm')) return true;
  const bool noon_on = rest[0] == 'P' || rest[0] == 'p';
  if (!noon_on && rest[0] != 'A' && rest[0] != 'a') return true;
  const std::int64_t hour = written.ms / ms_per_hour;
  if (hour < 1 || hour > 12) return false;
  written.ms += (hour == 12 ? -12 : 0) * ms_per_hour + (noon_on ? 12 : 0) * ms_per_hour;
  text = {};
  return true;
}

bool take_offset(std::string_view& text, WrittenTime& written) {
  std::string_view rest = bare_cell(text);
  if (rest == "Z" || rest == "z" || rest == "UTC") {
    written.offset_min = 0;
    text = {};
    return true;
  }
  if (rest.empty() || (rest.front() != '+' && rest.front() != '-')) return true;
  const std::int64_t sign = rest.front() == '-' ? -1 : 1;
  rest.remove_prefix(1);
  std::string digits(rest);
  std::erase(digits, ':');
  std::string_view figures = digits;
  const auto value = take_digits(figures, 4);
  if (!value || !figures.empty() || digits.size() % 2 != 0) return false;
  const std::int64_t hours = digits.size() == 2 ? *value : *value / 100;
  const std::int64_t minutes = digits.size() == 2 ? 0 : *value % 100;
  if (hours > 15 || minutes > 59) return false;
  written.offset_min = sign * (hours * 60 + minutes);
  text = {};
  return true;
}

// Exactly "hh:mm:ss".
std::optional<std::int64_t> plain_clock_ms(std::string_view text) {
  const auto two = [&](std::size_t i) -> std::int64_t {
    const int tens = text[i] - '0', ones = text[i + 1] - '0';
    return tens < 0 || tens > 9 || ones < 0 || ones > 9 ? 99 : tens * 10 + ones;
  };
  if (text.size() != 8 || text[2] != ':' || text[5] != ':') return std::nullopt;
  const std::int64_t hours = two(0), minutes = two(3), seconds = two(6);
  if (hours > 23 || minutes > 59 || seconds > 59) return std::nullopt;
  return ((hours * 60 + minutes) * 60 + seconds) * 1000;
}

std::int64_t ms_of(Instant at) { return at.time_since_epoch().count() * 1000; }

std::int64_t floored(std::int64_t ms, std::int64_t step) {
  return ms / step - (ms % step < 0 ? 1 : 0);
}

std::string clock_of(std::int64_t ms_of_day) {
  const auto seconds = ms_of_day / 1000;
  std::string text =
      fmt::format("{:02}:{:02}:{:02}", seconds / 3600, seconds / 60 % 60, seconds % 60);
  if (ms_of_day % 1000 != 0) text += fmt::format(".{:03}", ms_of_day % 1000);
  return text;
}

std::string zoned_text(std::int64_t ms, const Zone& zone) {
  const std::int64_t seconds = floored(ms, 1000);
  const Instant at{std::chrono::seconds(seconds)};
  const auto wall_min = date::sys_days(zone.date_of(at)).time_since_epoch().count() * 1440LL +
                        zone.clock_of(at).count();
  const std::int64_t offset_min = wall_min - floored(seconds, 60);
  const std::int64_t wall_ms = ms + offset_min * ms_per_min;
  const std::int64_t day = floored(wall_ms, ms_per_day);
  const std::int64_t size = offset_min < 0 ? -offset_min : offset_min;
  return fmt::format("{}T{}{}{:02}:{:02}", to_stored(zone.date_of(at)),
                     clock_of(wall_ms - day * ms_per_day), offset_min < 0 ? '-' : '+', size / 60,
                     size % 60);
}

}  // namespace

std::optional<WrittenTime> read_written_time(std::string_view cell) {
  cell = bare_cell(cell);
  WrittenTime written;
  if (take_date(cell, written)) {
    if (cell.empty()) return written;
    if (!take(cell, 'T') && !take(cell, ' ') && !take(cell, '_')) return std::nullopt;
    while (take(cell, ' ')) {}
  }
  if (!take_clock(cell, written)) return std::nullopt;
  if (!take_half_of_day(cell, written) || !take_offset(cell, written)) return std::nullopt;
  if (!bare_cell(cell).empty() || (written.has_date && written.ms >= ms_per_day))
    return std::nullopt;
  return written;
}

std::optional<std::int64_t> RecordTimes::read(std::string_view time_cell,
                                              std::string_view date_cell) {
  if (auto ms = like_the_last(time_cell)) return last_ = ms;
  std::optional<std::int64_t> ms;
  if (shape_.clock == RecordClock::elapsed) {
    ms = elapsed(time_cell);
  } else {
    auto written = read_written_time(time_cell);
    if (!written && shape_.clock == RecordClock::instant) {
      ms = elapsed(time_cell);  // seconds since 1970
    } else if (written && shape_.clock == RecordClock::time_of_day) {
      ms = time_of_day(*written);
    } else if (written) {
      const auto dated = shape_.date_column ? read_written_time(date_cell) : written;
      const auto day = dated ? date_of(*dated) : std::nullopt;
      if (!day || !written->has_clock) return std::nullopt;
      ms = written->offset_min
               ? ms_of(date::sys_days(*day)) + written->ms - *written->offset_min * ms_per_min
               : local(*day, written->ms);
      if (!shape_.date_column) {
        remember(time_cell, *ms, written->offset_min.has_value() || day_excess_ms_ == 0);
      }
    }
  }
  if (ms) last_ = ms;
  return ms;
}

// "2026-11-25T", then hh:mm:ss in figures of two, then the rest.
std::optional<std::int64_t> RecordTimes::like_the_last(std::string_view cell) const {
  constexpr std::size_t clock_size = 8;
  if (before_clock_.empty() ||
      cell.size() != before_clock_.size() + clock_size + behind_clock_.size() ||
      !cell.starts_with(before_clock_) || !cell.ends_with(behind_clock_)) {
    return std::nullopt;
  }
  const auto ms = plain_clock_ms(cell.substr(before_clock_.size(), clock_size));
  if (!ms) return std::nullopt;
  return midnight_ms_ + *ms;
}

void RecordTimes::remember(std::string_view cell, std::int64_t ms, bool plain_day) {
  before_clock_.clear();
  constexpr std::size_t date_size = 11;
  constexpr std::size_t clock_size = 8;
  if (!plain_day || cell.size() < date_size + clock_size) return;
  const auto clock_ms = plain_clock_ms(cell.substr(date_size, clock_size));
  const std::string_view behind = cell.substr(date_size + clock_size);
  const bool half_day = behind.find_first_of("AaPp.,") != std::string_view::npos;
  if (!clock_ms || half_day) return;
  before_clock_ = cell.substr(0, date_size);
  behind_clock_ = behind;
  midnight_ms_ = ms - *clock_ms;
}

std::optional<std::int64_t> RecordTimes::elapsed(std::string_view cell) const {
  cell = bare_cell(cell);
  if (cell.find(':') != std::string_view::npos) {
    const auto written = read_written_time(cell);
    if (!written || written->has_date) return std::nullopt;
    const bool mm_ss = shape_.elapsed_unit == ElapsedUnit::minute && !written->has_seconds;
    return mm_ss ? written->ms / 60 : written->ms;
  }
  const auto figure = take_decimal(cell, shape_.point);
  if (!figure || !cell.empty()) return std::nullopt;
  switch (shape_.elapsed_unit) {
    case ElapsedUnit::millisecond: return scaled(*figure, 1);
    case ElapsedUnit::second: return scaled(*figure, 1000);
    case ElapsedUnit::minute: return scaled(*figure, ms_per_min);
    case ElapsedUnit::hour: break;
  }
  return scaled(*figure, ms_per_hour);
}

std::optional<std::int64_t> RecordTimes::time_of_day(const WrittenTime& written) {
  if (written.has_date || written.ms >= ms_per_day) return std::nullopt;
  // Falling back by more than half a day is midnight; by less, a clock that jumped.
  std::int64_t ms = written.ms + carried_days_ms_;
  if (last_ && *last_ - ms > ms_per_day / 2) {
    carried_days_ms_ += ms_per_day;
    ms += ms_per_day;
  }
  return ms;
}

std::optional<std::int64_t> RecordTimes::local(CalendarDate day, std::int64_t ms) {
  using namespace std::chrono_literals;
  if (day_ != day) {
    day_ = day;
    day_start_ms_ = ms_of(zone_.at(day, 0s));
    const CalendarDate next = date::sys_days(day) + date::days(1);
    day_excess_ms_ = ms_of(zone_.at(next, 0s)) - day_start_ms_ - ms_per_day;
  }
  if (day_excess_ms_ == 0) return day_start_ms_ + ms;
  const std::chrono::seconds since_midnight(ms / 1000);
  std::int64_t at = ms_of(zone_.at(day, since_midnight)) + ms % 1000;
  if (last_ && at < *last_ && day_excess_ms_ > 0 && zone_.happens_twice(day, since_midnight)) {
    at += day_excess_ms_;
  }
  return at;
}

std::optional<CalendarDate> RecordTimes::date_of(const WrittenTime& written) const {
  if (!written.has_date) return std::nullopt;
  std::int64_t year = written.first, month = written.second, day = written.third;
  if (!written.year_leads) {
    year = written.third;
    month = shape_.date_order == DateOrder::month_first ? written.first : written.second;
    day = shape_.date_order == DateOrder::month_first ? written.second : written.first;
  }
  constexpr std::int64_t century = 2000;
  if (!written.year_leads && year < 100) year += century;  // "25.11.26": no logger is older
  if (year < 1970 || year > 2200) return std::nullopt;
  const CalendarDate date = date::year(static_cast<int>(year)) /
                            date::month(static_cast<unsigned>(month)) /
                            date::day(static_cast<unsigned>(day));
  if (!date.ok()) return std::nullopt;
  return date;
}

std::string stamp_text(RecordClock clock, std::int64_t ms, const Zone& zone) {
  switch (clock) {
    case RecordClock::elapsed: return steel::rounded_text(static_cast<double>(ms) / 1000, 3);
    case RecordClock::time_of_day: return clock_of(ms - floored(ms, ms_per_day) * ms_per_day);
    case RecordClock::local_time:
    case RecordClock::instant: break;
  }
  return zoned_text(ms, zone);
}

}  // namespace tangmark::kiln
