// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "domain/blade/blade_id.h"
#include "domain/measure/kept.h"
#include "domain/measure/trade_word.h"
#include "domain/measure/when.h"

namespace tangmark::blade {

using TimerId = Id<struct TimerTag>;

/// What the minutes of a timer are: work of the hands, or waiting beside the work.
enum class TimedAs { hands_on, attended };
enum class TimerState { running, paused, stopped, discarded };

/// A time during which a timer ran; without an end it runs still.
struct Stretch {
  Instant from;
  std::optional<Instant> to;
  friend bool operator==(const Stretch&, const Stretch&) = default;
};

/// A clock on one operation, for one blade or for several that are worked on together.
struct Timer {
  std::int64_t number = 0;
  std::string operation;
  TimedAs timed_as = TimedAs::hands_on;
  std::optional<std::string> who;
  TimerState state = TimerState::running;
  Instant entered_at{};
  std::vector<BladeId> blades;
  std::vector<Stretch> stretches;  ///< in order, not overlapping
  bool is_open() const { return state == TimerState::running || state == TimerState::paused; }
  Instant started_at() const { return stretches.front().from; }
  friend bool operator==(const Timer&, const Timer&) = default;
};
using KeptTimer = Kept<Timer, TimerId>;

/// How long it ran until then, pauses left out.
Duration time_run(const Timer& timer, Instant until);

/// The timer's part of one pair of hands: while others of the same maker and kind ran beside it,
/// each counts an equal part of the time, so that no minute is counted twice. To the second; parts
/// of a second go to the timer started first. Discarded timers take no part.
Duration fair_time(const KeptTimer& timer, std::span<const KeptTimer> all, Instant until);

/// A time in equal parts, whole seconds that sum to it; the first parts hold what does not divide.
/// Blades worked on together share their time this way: hands turn from one to the next.
std::vector<Duration> equal_parts(Duration whole, std::size_t parts);

/// A timer that seems to have been forgotten, and when the work more likely ended.
struct Forgotten {
  enum class Why { past_the_bench_day, too_long } why;
  Instant ended;  ///< proposed: the end of the bench day, or of the time planned for the work
  friend bool operator==(const Forgotten&, const Forgotten&) = default;
};

/// When the bench is manned, sorted and apart; spans of one day may have a rest between them.
using BenchSpans = std::span<const std::pair<Instant, Instant>>;

/// Whether a running timer seems forgotten: it ran half an hour past the end of the bench day in
/// which its stretch began, or longer than `limit` at a time. Half an hour is common practice, no
/// source. Work begun outside the bench hours is judged by the limit alone; then `planned` is
/// proposed, or the limit when nothing was planned.
std::optional<Forgotten> forgotten(const Timer& timer, BenchSpans bench, const Zone& zone,
                                   Instant now, Duration limit, Duration planned);

}  // namespace tangmark::blade

namespace tangmark {
template <>
inline constexpr auto trade_words<blade::TimedAs> =
    std::array{std::pair{blade::TimedAs::hands_on, std::string_view{"hands-on"}},
               std::pair{blade::TimedAs::attended, std::string_view{"attended"}}};
template <>
inline constexpr auto trade_words<blade::TimerState> =
    std::array{std::pair{blade::TimerState::running, std::string_view{"running"}},
               std::pair{blade::TimerState::paused, std::string_view{"paused"}},
               std::pair{blade::TimerState::stopped, std::string_view{"stopped"}},
               std::pair{blade::TimerState::discarded, std::string_view{"discarded"}}};
}  // namespace tangmark
