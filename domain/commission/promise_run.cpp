// SPDX-License-Identifier: MIT
#include "domain/commission/promise_run.h"

#include <algorithm>
#include <bit>
#include <queue>

namespace tangmark::commission {
namespace {

/// Source: the finalizer of SplitMix64, Steele, Lea and Flood, OOPSLA (2014) 453. Each draw hashes
/// its own place, so that no draw depends on how many came before it elsewhere.
std::uint64_t mixed(std::uint64_t x) {
  x += 0x9e3779b97f4a7c15ULL;
  x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9ULL;
  x = (x ^ (x >> 27)) * 0x94d049bb133111ebULL;
  return x ^ (x >> 31);
}

/// The chance of one blade in one run.
class Luck {
 public:
  Luck() = default;
  Luck(std::uint64_t seed, std::uint64_t run, std::uint64_t key)
      : state_(mixed(mixed(seed ^ mixed(run)) ^ key)) {}
  std::uint32_t bits() { return static_cast<std::uint32_t>(mixed(state_++) >> 32); }

 private:
  std::uint64_t state_ = 0;
};

/// Which blades are ready, in the order of the queue; finding the first is a few instructions.
class ReadySet {
 public:
  explicit ReadySet(std::size_t blades) : words_((blades + 63) / 64, 0) {}
  void clear() { std::fill(words_.begin(), words_.end(), 0); }
  void insert(std::size_t i) { words_[i / 64] |= std::uint64_t{1} << (i % 64); }
  void erase(std::size_t i) { words_[i / 64] &= ~(std::uint64_t{1} << (i % 64)); }
  std::optional<std::size_t> first() const {
    for (std::size_t w = 0; w < words_.size(); ++w)
      if (words_[w] != 0) return w * 64 + static_cast<std::size_t>(std::countr_zero(words_[w]));
    return std::nullopt;
  }

 private:
  std::vector<std::uint64_t> words_;
};

struct Waiting {
  std::int64_t bench_s;
  std::size_t blade;
  friend bool operator>(const Waiting& a, const Waiting& b) {
    return a.bench_s != b.bench_s ? a.bench_s > b.bench_s : a.blade > b.blade;
  }
};

struct BladeRun {
  Luck luck;
  std::size_t next = 0;
  bool again = false;        ///< begun again after a loss
  std::int64_t start_s = 0;  ///< calendar second its next operation may start
  std::int64_t waits = 0;
};

constexpr Duration one_pace{1'000'000};

/// One queue, played run after run.
class Player {
 public:
  Player(const PromiseQueue& queue, const BenchCalendar& calendar,
         std::optional<CommissionId> follow);
  void run(std::uint64_t seed, std::size_t number, PlayedQueue& played);

 private:
  void look_up(const QueuedBlade& blade);
  void begin(std::uint64_t seed, std::size_t run, std::size_t runs);
  void set_ready(std::size_t i, std::int64_t calendar_s);
  std::int64_t before_next(std::size_t i, std::int64_t calendar_s);
  void work(std::size_t i, std::size_t number, PlayedQueue& played);
  void spend(std::size_t i, std::int64_t took);
  void ready(std::size_t i, std::int64_t at, std::size_t number, PlayedQueue& played);

  const PromiseQueue& queue_;
  const BenchCalendar& calendar_;
  std::vector<std::size_t> commission_of_;
  std::vector<bool> followed_;
  std::vector<std::vector<std::int64_t>> booked_s_;  ///< [blade][operation], looked up once
  std::vector<std::vector<bool>> flows_on_;  ///< [blade][operation]: the next can follow at once
  Spread pace_;
  std::vector<BladeRun> blades_;
  ReadySet ready_set_;
  std::priority_queue<Waiting, std::vector<Waiting>, std::greater<>> waiting_;
  std::int64_t bench_s_ = 0;
  std::size_t day_ = 0;
  double pace_now_ = 1;
  TimeSpent spent_;
};

Player::Player(const PromiseQueue& queue, const BenchCalendar& calendar,
               std::optional<CommissionId> follow)
    : queue_(queue),
      calendar_(calendar),
      pace_(Spread::around(std::chrono::duration_cast<Duration>(queue.pace.median * one_pace),
                           queue.pace.quarter_factor)),
      blades_(queue.blades.size()),
      ready_set_(queue.blades.size()) {
  std::vector<CommissionId> seen;
  for (const QueuedBlade& blade : queue.blades) {
    const auto at = std::find(seen.begin(), seen.end(), blade.commission);
    commission_of_.push_back(static_cast<std::size_t>(at - seen.begin()));
    if (at == seen.end()) seen.push_back(blade.commission);
    followed_.push_back(follow == blade.commission);
    look_up(blade);
  }
}

void Player::look_up(const QueuedBlade& blade) {
  std::vector<std::int64_t> booked;
  std::vector<bool> flows;
  for (std::size_t i = 0; i < blade.route.size(); ++i) {
    const QueuedOperation& op = blade.route[i];
    booked.push_back(op.booked ? calendar_.calendar_of(op.booked->at) : 0);
    const QueuedOperation* next = i + 1 < blade.route.size() ? &blade.route[i + 1] : nullptr;
    flows.push_back(op.wait.never_takes_time() && next != nullptr && !next->booked &&
                    next->before.never_takes_time());
  }
  booked_s_.push_back(std::move(booked));
  flows_on_.push_back(std::move(flows));
}

/// When the next operation of a blade can start, given when the blade is free.
std::int64_t Player::before_next(std::size_t i, std::int64_t free_s) {
  BladeRun& state = blades_[i];
  const QueuedOperation& op = queue_.blades[i].route[state.next];
  if (op.booked && !state.again) {
    const std::int64_t late = op.booked->late.draw(state.luck.bits());
    return std::max(free_s, booked_s_[i][state.next] + late);
  }
  return op.before.never_takes_time() ? free_s : free_s + op.before.draw(state.luck.bits());
}

void Player::set_ready(std::size_t i, std::int64_t free_s) {
  const std::int64_t start_s = before_next(i, free_s);
  blades_[i].start_s = start_s;
  blades_[i].waits += start_s - free_s;
  const std::int64_t bench = calendar_.bench_at(start_s);
  if (bench <= bench_s_)
    ready_set_.insert(i);
  else
    waiting_.push({bench, i});
}

void Player::begin(std::uint64_t seed, std::size_t run, std::size_t runs) {
  bench_s_ = 0;
  day_ = 0;
  spent_ = {};
  // The pace moves every date of a run, so it is spread evenly over the runs instead of drawn: the
  // dates then differ far less from seed to seed.
  const auto pace_bits = static_cast<std::uint32_t>((static_cast<double>(run) + 0.5) /
                                                    static_cast<double>(runs) * 4294967296.0);
  pace_now_ = static_cast<double>(pace_.draw(pace_bits)) / static_cast<double>(one_pace.count());
  ready_set_.clear();
  for (std::size_t i = 0; i < blades_.size(); ++i)
    blades_[i] = {Luck(seed, run, mixed(queue_.blades[i].key)), queue_.blades[i].next, false, 0, 0};
}

void Player::spend(std::size_t i, std::int64_t took) {
  bench_s_ += took;
  if (followed_[i])
    (blades_[i].again ? spent_.own_again : spent_.own_work) += took;
  else {
    spent_.others_work += took;
    if (blades_[i].again) spent_.others_again += took;
  }
}

void Player::ready(std::size_t i, std::int64_t at, std::size_t number, PlayedQueue& played) {
  std::int64_t& last = played.ready[commission_of_[i]][number];
  if (at < last) return;
  last = at;
  if (!followed_[i]) return;
  spent_.waits = blades_[i].waits;
  played.followed[number] = spent_;
}

/// Works the next operation of a blade to its end.
void Player::work(std::size_t i, std::size_t number, PlayedQueue& played) {
  const QueuedBlade& blade = queue_.blades[i];
  BladeRun& state = blades_[i];
  const QueuedOperation& op = blade.route[state.next];
  spend(i, static_cast<std::int64_t>(
               static_cast<double>(op.bench.draw(state.luck.bits())) * pace_now_ + 0.5));
  const bool lost =
      op.survival < Share::whole() && state.luck.bits() / 4294967296.0 >= op.survival.fraction();
  if (!lost && flows_on_[i][state.next]) {  // no calendar is needed: it stays ready
    ++state.next;
    return ready_set_.insert(i);
  }
  // Work that takes no bench time and starts on a day off is done when it starts.
  std::int64_t now_s = std::max(calendar_.when_done(bench_s_, day_), state.start_s);
  if (lost) {
    state.next = std::min(blade.restart_at, state.next);
    state.again = true;
  } else {
    const std::int64_t wait = op.wait.never_takes_time() ? 0 : op.wait.draw(state.luck.bits());
    state.waits += wait;
    now_s += wait;
    if (++state.next == blade.route.size()) return ready(i, now_s, number, played);
  }
  set_ready(i, now_s);
}

void Player::run(std::uint64_t seed, std::size_t number, PlayedQueue& played) {
  begin(seed, number, played.ready.front().size());
  for (std::size_t i = 0; i < blades_.size(); ++i) {
    const QueuedBlade& blade = queue_.blades[i];
    std::int64_t free_s = 0;
    if (blade.not_before)
      free_s = std::max<std::int64_t>(0, calendar_.calendar_of(blade.not_before->at) +
                                             blade.not_before->late.draw(blades_[i].luck.bits()));
    blade.next == blade.route.size() ? ready(i, free_s, number, played) : set_ready(i, free_s);
  }
  while (true) {
    while (!waiting_.empty() && waiting_.top().bench_s <= bench_s_) {
      ready_set_.insert(waiting_.top().blade);
      waiting_.pop();
    }
    if (const std::optional<std::size_t> i = ready_set_.first()) {
      ready_set_.erase(*i);
      work(*i, number, played);
    } else if (!waiting_.empty()) {
      bench_s_ = waiting_.top().bench_s;
    } else {
      return;
    }
  }
}

}  // namespace

PlayedQueue play(const PromiseQueue& queue, const BenchCalendar& calendar, Runs runs,
                 std::optional<CommissionId> follow) {
  PlayedQueue played;
  for (const QueuedBlade& blade : queue.blades)
    if (std::find(played.commissions.begin(), played.commissions.end(), blade.commission) ==
        played.commissions.end())
      played.commissions.push_back(blade.commission);
  const auto count = static_cast<std::size_t>(runs.count);
  played.ready.assign(played.commissions.size(), std::vector<std::int64_t>(count, 0));
  if (follow) played.followed.resize(count);
  if (queue.blades.empty()) return played;  // a shop whose only commission was taken out
  Player player(queue, calendar, follow);
  for (std::size_t run = 0; run < count; ++run) player.run(runs.seed, run, played);
  return played;
}

}  // namespace tangmark::commission
