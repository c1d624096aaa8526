// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/measure/when.h"

namespace tangmark::commission {

/// The hours the maker really stands at the bench.
struct BenchWeek {
  std::array<Duration, 7> bench{};  ///< Sunday first; real bench hours, office work already off
  Duration day_starts = std::chrono::hours(9);  ///< by the clock on the wall
  std::vector<CalendarDate> days_off;
  friend bool operator==(const BenchWeek&, const BenchWeek&) = default;
};

/// Turns bench time into calendar time and back. Both are seconds from now: bench seconds count
/// only while the maker is at the bench, calendar seconds count always. Assumptions: bench hours of
/// a day are one block from its start; every day of the calendar has 24 hours (the hour of a clock
/// change is not followed, dates are).
class BenchCalendar {
 public:
  /// Refuses a week without bench hours, or days of more than 24 hours.
  static Outcome<BenchCalendar> from(const BenchWeek& week, Instant now, const Zone& zone);

  /// Calendar seconds when this much bench time is done: the end of that work, so a day worked out
  /// to its last minute ends that evening and not the next morning.
  std::int64_t when_done(std::int64_t bench_s) const { return done_on(bench_s, day_of(bench_s)); }
  /// The same for a caller whose bench time only grows, and who keeps the day last found.
  std::int64_t when_done(std::int64_t bench_s, std::size_t& day) const {
    while (day + 1 < bench_before_.size() - 1 && bench_before_[day + 1] < bench_s) ++day;
    return done_on(bench_s, day);
  }
  /// Bench seconds that are over at a calendar second.
  std::int64_t bench_at(std::int64_t calendar_s) const;
  CalendarDate date_of(std::int64_t calendar_s) const;
  Instant instant_of(std::int64_t calendar_s) const;
  std::int64_t calendar_of(Instant at) const;
  /// Calendar seconds that one bench second takes on average.
  double calendar_per_bench() const { return calendar_per_bench_; }

 private:
  BenchCalendar() = default;
  std::int64_t done_on(std::int64_t bench_s, std::size_t day) const {
    return static_cast<std::int64_t>(day) * day_s + opens_[day] - midnight_to_now_ + bench_s -
           bench_before_[day];
  }
  std::size_t day_of(std::int64_t bench_s) const;

  static constexpr std::int64_t day_s = 86'400;
  Instant now_{};
  Zone zone_;
  date::local_days first_day_{};
  std::int64_t midnight_to_now_ = 0;
  std::vector<std::int64_t> bench_before_;  ///< bench seconds before each day; one more than days
  std::vector<std::int64_t> opens_;         ///< seconds after midnight when the bench opens
  double calendar_per_bench_ = 1;
};

}  // namespace tangmark::commission
