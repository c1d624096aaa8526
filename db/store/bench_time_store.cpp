// SPDX-License-Identifier: MIT
#include "db/store/bench_time_store.h"

#include <algorithm>

#include "db/row.h"

namespace tangmark::db {

bool BenchTime::stated() const {
  return std::any_of(week.begin(), week.end(), [](const auto& hours) { return !hours.empty(); });
}

Duration BenchTime::on(date::weekday day) const {
  Duration all{};
  for (const auto& [from, to] : week[day.iso_encoding() - 1]) all += to - from;
  return all;
}

BenchTime load_bench_time(const ShopFile& shop) {
  BenchTime bench;
  Query hours(shop, "SELECT weekday, from_s, to_s FROM bench_hours ORDER BY weekday, from_s");
  while (hours.next())
    bench.week[static_cast<std::size_t>(hours.integer("weekday") - 1)].push_back(
        {hours.duration("from_s"), hours.duration("to_s")});
  if (!bench.stated())
    for (auto& day : bench.week) day = {{std::chrono::hours(8), std::chrono::hours(18)}};
  Query off(shop, "SELECT day FROM day_off");
  while (off.next()) bench.days_off.insert(off.date("day"));
  return bench;
}

std::vector<std::pair<Instant, Instant>> attended_spans(const BenchTime& bench, const Zone& zone,
                                                        Instant from, Instant to) {
  std::vector<std::pair<Instant, Instant>> spans;
  const auto last = date::sys_days(zone.date_of(to));
  for (auto day = date::sys_days(zone.date_of(from)); day <= last; day += date::days(1)) {
    const CalendarDate date(day);
    if (bench.days_off.contains(date)) continue;
    for (const auto& [begin, end] : bench.week[date::weekday(day).iso_encoding() - 1]) {
      const Instant a = std::max(zone.at(date, begin), from);
      const Instant b = std::min(zone.at(date, end), to);
      if (b <= a) continue;
      // Hours that meet are one span: a firing may go through the change.
      if (!spans.empty() && spans.back().second >= a)
        spans.back().second = std::max(spans.back().second, b);
      else
        spans.emplace_back(a, b);
    }
  }
  return spans;
}

}  // namespace tangmark::db
