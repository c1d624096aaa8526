// SPDX-License-Identifier: MIT
#include "domain/commission/promise_calendar.h"

#include <algorithm>
#include <numeric>

namespace tangmark::commission {
namespace {

constexpr int days_ahead = 366 * 40;  // longer than any queue a maker would keep

bool fits_a_day(const BenchWeek& week) {
  return std::all_of(week.bench.begin(), week.bench.end(), [&](Duration bench) {
    return bench >= Duration{} && week.day_starts >= Duration{} &&
           bench + week.day_starts <= std::chrono::hours(24);
  });
}

}  // namespace

Outcome<BenchCalendar> BenchCalendar::from(const BenchWeek& week, Instant now, const Zone& zone) {
  const Duration weekly = std::accumulate(week.bench.begin(), week.bench.end(), Duration{});
  if (weekly < std::chrono::minutes(15))
    return Problem{"bench hours", "The week has no bench hours, so nothing would ever be done.",
                   "Give the hours you really stand at the bench on each day."};
  if (!fits_a_day(week))
    return Problem{"bench hours", "The bench hours of a day run past midnight.",
                   "Start the day earlier or give fewer hours."};
  BenchCalendar calendar;
  calendar.now_ = now;
  calendar.zone_ = zone;
  calendar.first_day_ = date::local_days(zone.date_of(now));
  calendar.midnight_to_now_ = Duration{zone.clock_of(now)}.count();
  calendar.calendar_per_bench_ = 7.0 * day_s / static_cast<double>(weekly.count());

  std::vector<date::local_days> off;
  for (const CalendarDate& day : week.days_off)
    if (day.ok()) off.push_back(date::local_days(day));
  std::sort(off.begin(), off.end());
  std::int64_t before = 0;
  for (int i = 0; i < days_ahead; ++i) {
    const date::local_days day = calendar.first_day_ + date::days(i);
    std::int64_t opens = week.day_starts.count();
    std::int64_t bench = week.bench[date::weekday(day).c_encoding()].count();
    if (std::binary_search(off.begin(), off.end(), day)) bench = 0;
    if (i == 0) {  // today only what is left of it
      const std::int64_t closes = opens + bench;
      opens = std::max(opens, calendar.midnight_to_now_);
      bench = std::max<std::int64_t>(0, closes - opens);
    }
    calendar.bench_before_.push_back(before);
    calendar.opens_.push_back(opens);
    before += bench;
  }
  calendar.bench_before_.push_back(before);
  return calendar;
}

std::size_t BenchCalendar::day_of(std::int64_t bench_s) const {
  const auto after = std::lower_bound(bench_before_.begin() + 1, bench_before_.end(), bench_s);
  const auto day = static_cast<std::size_t>(after - bench_before_.begin()) - 1;
  return std::min(day, opens_.size() - 1);
}

std::int64_t BenchCalendar::bench_at(std::int64_t calendar_s) const {
  const std::int64_t since_midnight = std::max<std::int64_t>(0, calendar_s) + midnight_to_now_;
  const auto day = static_cast<std::size_t>(since_midnight / day_s);
  if (day >= opens_.size()) return bench_before_.back();
  const std::int64_t worked = since_midnight % day_s - opens_[day];
  return std::clamp(bench_before_[day] + worked, bench_before_[day], bench_before_[day + 1]);
}

CalendarDate BenchCalendar::date_of(std::int64_t calendar_s) const {
  const std::int64_t since_midnight = calendar_s + midnight_to_now_;
  return CalendarDate(first_day_ + date::days(since_midnight / day_s));
}

Instant BenchCalendar::instant_of(std::int64_t calendar_s) const {
  const std::int64_t since_midnight = calendar_s + midnight_to_now_;
  return zone_.at(date_of(calendar_s), std::chrono::seconds(since_midnight % day_s));
}

std::int64_t BenchCalendar::calendar_of(Instant at) const {
  const auto days = (date::local_days(zone_.date_of(at)) - first_day_).count();
  return days * day_s + Duration{zone_.clock_of(at)}.count() - midnight_to_now_;
}

}  // namespace tangmark::commission
