// SPDX-License-Identifier: MIT
#include "domain/blade/timer.h"

#include <algorithm>
#include <map>

namespace tangmark::blade {
namespace {

constexpr auto grace = std::chrono::minutes(30);

Instant end_of(const Stretch& stretch, Instant until) {
  return std::max(stretch.from, std::min(stretch.to.value_or(until), until));
}

bool runs_at(const Timer& timer, Instant at, Instant until) {
  return std::any_of(timer.stretches.begin(), timer.stretches.end(),
                     [&](const Stretch& s) { return s.from <= at && at < end_of(s, until); });
}

bool shares_hands(const Timer& one, const Timer& other) {
  return other.state != TimerState::discarded && other.timed_as == one.timed_as &&
         other.who == one.who;
}

// Every moment at which the number of timers running may change.
std::vector<Instant> moments(const std::vector<const KeptTimer*>& timers, Instant until) {
  std::vector<Instant> all;
  for (const KeptTimer* timer : timers)
    for (const Stretch& stretch : timer->stretches) {
      all.push_back(stretch.from);
      all.push_back(end_of(stretch, until));
    }
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

// Of the seconds that the same timers shared, this one's: its place among them takes the odd ones.
std::int64_t part_of(std::int64_t seconds, std::size_t place, std::size_t timers) {
  const auto n = static_cast<std::int64_t>(timers);
  return seconds / n + (static_cast<std::int64_t>(place) < seconds % n ? 1 : 0);
}

std::optional<Instant> end_of_bench_day(Instant from, BenchSpans bench, const Zone& zone) {
  std::optional<Instant> end;
  for (const auto& [begin, finish] : bench) {
    if (finish <= from) continue;
    if (zone.date_of(begin) != zone.date_of(from)) break;
    if (!end && begin > from) return std::nullopt;  // begun before the bench day, or between
    end = finish;
  }
  return end;
}

}  // namespace

Duration time_run(const Timer& timer, Instant until) {
  Duration all{};
  for (const Stretch& stretch : timer.stretches) all += end_of(stretch, until) - stretch.from;
  return all;
}

Duration fair_time(const KeptTimer& timer, std::span<const KeptTimer> all, Instant until) {
  std::vector<const KeptTimer*> sharing{&timer};
  for (const KeptTimer& other : all)
    if (other.id != timer.id && shares_hands(timer, other)) sharing.push_back(&other);
  std::sort(sharing.begin(), sharing.end(), [](const KeptTimer* a, const KeptTimer* b) {
    return std::pair(a->started_at(), a->id) < std::pair(b->started_at(), b->id);
  });
  // Seconds by who shared them, so that what does not divide is dealt out once and not per moment.
  std::map<std::vector<const KeptTimer*>, std::int64_t> shared;
  const auto at = moments(sharing, until);
  for (std::size_t i = 0; i + 1 < at.size(); ++i) {
    if (!runs_at(timer, at[i], until)) continue;
    std::vector<const KeptTimer*> running;
    for (const KeptTimer* one : sharing)
      if (runs_at(*one, at[i], until)) running.push_back(one);
    shared[running] += (at[i + 1] - at[i]).count();
  }
  Duration mine{};
  for (const auto& [running, seconds] : shared) {
    const auto place = std::find(running.begin(), running.end(), &timer) - running.begin();
    mine += Duration(part_of(seconds, static_cast<std::size_t>(place), running.size()));
  }
  return mine;
}

std::vector<Duration> equal_parts(Duration whole, std::size_t parts) {
  std::vector<Duration> all;
  for (std::size_t i = 0; i < parts; ++i) all.emplace_back(part_of(whole.count(), i, parts));
  return all;
}

std::optional<Forgotten> forgotten(const Timer& timer, BenchSpans bench, const Zone& zone,
                                   Instant now, Duration limit, Duration planned) {
  if (timer.state != TimerState::running || timer.stretches.empty()) return std::nullopt;
  const Instant from = timer.stretches.back().from;
  if (const auto end = end_of_bench_day(from, bench, zone); end && now > *end + grace)
    return Forgotten{Forgotten::Why::past_the_bench_day, *end};
  if (now - from <= limit) return std::nullopt;
  const Duration usual = planned > Duration() && planned < limit ? planned : limit;
  return Forgotten{Forgotten::Why::too_long, from + usual};
}

}  // namespace tangmark::blade
