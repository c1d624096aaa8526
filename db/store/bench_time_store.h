// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <set>
#include <utility>
#include <vector>

#include "db/shop_file.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// The usual week at the bench and the days off. Index 0 is Monday.
struct BenchTime {
  using Hours = std::pair<Duration, Duration>;  ///< from, to since midnight
  std::array<std::vector<Hours>, 7> week;
  std::set<CalendarDate> days_off;
  bool stated() const;                 ///< whether any hours were entered
  Duration on(date::weekday day) const;
};

/// Without any entered hours: every day 8:00 to 18:00, so that a shop of an hour's age can plan;
/// screens say so.
BenchTime load_bench_time(const ShopFile& shop);

/// The spans when somebody is at the bench, sorted and apart, cut to [from, to).
std::vector<std::pair<Instant, Instant>> attended_spans(const BenchTime& bench, const Zone& zone,
                                                        Instant from, Instant to);

}  // namespace tangmark::db
