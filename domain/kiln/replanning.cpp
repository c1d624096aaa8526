// SPDX-License-Identifier: MIT
#include "domain/kiln/replanning.h"

#include <algorithm>

#include "domain/kiln/weighed_plan.h"
#include "domain/kiln/plan_reasons.h"

namespace tangmark::kiln {
namespace {

// How the allowance is shared out: held in place, let go a few at a time, all at once. What is left
// is for putting back, and the last of it for saying why a blade finds no place.
constexpr double until_held = 0.15;
constexpr double until_loosened = 0.45;
constexpr double until_free = 0.85;
constexpr double until_improved = 0.93;

bool shares_a_blade(const PlanFiring& a, const PlanFiring& b) {
  return std::any_of(a.members.begin(), a.members.end(), [&](const PlanMember& m) {
    return std::any_of(b.members.begin(), b.members.end(),
                       [&](const PlanMember& n) { return n.blade == m.blade; });
  });
}

class Replanning {
 public:
  Replanning(const PlanCase& a_case, const BookedPlan& booked, const SearchLimits& limits,
             std::uint64_t seed)
      : case_(a_case), booked_(booked), limits_(limits), seed_(seed), weighing_(a_case, booked) {}

  Replanned run() {
    const PlanAnswer first = search({}, {}, 0);
    bound_mc_ = first.bound_mc + booked_.moved_mc * sift();
    take(first);
    std::vector<PlanFiring> held = hold_all();
    if (!settled()) loosen(held);
    if (!settled()) {
      const PlanAnswer free = search({}, {until_loosened, until_free}, free_progress());
      bound_mc_ = std::max(bound_mc_, booked_.moved_mc * lost_ +
                                          (free.unplaced.empty() ? free.bound_mc : 0));
      take(free);
    }
    return result();
  }

 private:
  struct Shares {
    double from = 0, to = 0;
  };

  double used() const { return limits_.time_used ? limits_.time_used() : 0; }
  bool over() const { return limits_.time_used && limits_.time_used() >= 1; }
  bool settled() const {
    return over() || (best_.left_out.empty() && best_.total_mc <= bound_mc_);
  }

  /// A search with `held` in place, in a part of the allowance; none: the first plan only.
  PlanAnswer search(const std::vector<PlanFiring>& held, Shares part, std::int64_t moves_mc) {
    PlanCase c = case_;
    c.locked.insert(c.locked.end(), held.begin(), held.end());
    SearchLimits limits;
    limits.reasons = false;
    const double share = part.to - part.from;
    if (share > 0) {
      limits.iterations =
          static_cast<std::int64_t>(share * static_cast<double>(limits_.iterations));
      if (limits_.iterations > 0) limits.iterations = std::max<std::int64_t>(1, limits.iterations);
      if (limits_.time_used)
        limits.time_used = [this, part, share] { return (used() - part.from) / share; };
      if (limits_.progress)
        limits.progress = [this, moves_mc](const SearchProgress& p) { report(p, moves_mc); };
    }
    PlanAnswer answer = plan_firings(c, limits, seed_);
    iterations_ += answer.iterations;
    return answer;
  }

  void report(const SearchProgress& p, std::int64_t moves_mc) const {
    SearchProgress all = p;
    all.iterations += iterations_;
    all.best_mc = best_.total_mc;
    all.unplaced = static_cast<int>(best_.left_out.size());
    if (p.unplaced == all.unplaced) all.best_mc = std::min(all.best_mc, p.best_mc + moves_mc);
    all.bound_mc = bound_mc_;
    limits_.progress(all);
  }

  /// All moves are charged to a plan in the making, so that no cost is shown that is not reached.
  std::int64_t free_progress() const {
    return booked_.moved_mc * static_cast<std::int64_t>(booked_.firings.size());
  }

  /// Counts what can not stand, and takes out of the rest the blades that are not ready by then.
  int sift() {
    for (const PlanFiring& firing : booked_.firings) {
      if (auto left = with_those_ready(case_, firing)) standing_.push_back(std::move(*left));
      else ++lost_;
    }
    std::stable_sort(standing_.begin(), standing_.end(), [](const auto& a, const auto& b) {
      return a.start_min < b.start_min;
    });
    return lost_;
  }

  /// Plans the rest around everything that can stand; a blade that is kept out so leaves its
  /// firings.
  std::vector<PlanFiring> hold_all() {
    std::vector<PlanFiring> held = fitting(standing_);
    for (std::size_t round = 0; round <= case_.blades.size(); ++round) {
      const PlanAnswer answer = search(held, {0, until_held}, charged(held));
      take(answer);
      if (answer.unplaced.empty() || over()) break;
      const std::vector<PlanFiring> before = held;
      for (PlanFiring& firing : held)
        std::erase_if(firing.members, [&](const PlanMember& m) {
          return std::any_of(answer.unplaced.begin(), answer.unplaced.end(),
                             [&](const Unplaced& u) { return u.blade == m.blade; });
        });
      std::erase_if(held, [](const PlanFiring& f) { return f.members.empty(); });
      if (held == before) break;
      held = fitting(held);
    }
    return held;
  }

  /// Those that break no rule beside the ones before them.
  std::vector<PlanFiring> fitting(const std::vector<PlanFiring>& firings) const {
    std::vector<PlanFiring> held;
    for (const PlanFiring& firing : firings) {
      held.push_back(firing);
      if (!weighing_.keeps_rules_without_the_rest(held)) held.pop_back();
    }
    return held;
  }

  std::int64_t charged(const std::vector<PlanFiring>& held) const {
    return booked_.moved_mc * (static_cast<std::int64_t>(booked_.firings.size()) -
                               static_cast<std::int64_t>(held.size()));
  }

  /// Lets go each firing with those that share a blade with it, and keeps what that brings.
  void loosen(std::vector<PlanFiring> held) {
    const std::vector<PlanFiring> all = held;
    const double each =
        (until_loosened - until_held) / std::max<double>(1, static_cast<double>(all.size()));
    for (std::size_t i = 0; i < all.size() && !settled(); ++i) {
      std::vector<PlanFiring> fewer = held;
      std::erase_if(fewer,
                    [&](const PlanFiring& f) { return f == all[i] || shares_a_blade(f, all[i]); });
      // Without a firing its kiln is colder, and the next one's longer heating may meet a circuit.
      if (fewer.size() == held.size() || !weighing_.keeps_rules_without_the_rest(fewer)) continue;
      const double from = until_held + each * static_cast<double>(i);
      if (take(search(fewer, {from, from + each}, charged(fewer)))) held = std::move(fewer);
    }
  }

  /// True when the plan, after putting back what is dear to move, is the best so far.
  bool take(const PlanAnswer& answer) {
    WeighedPlan plan = weighing_.weigh(answer.plan, answer.unplaced);
    improve(weighing_, plan, [this] { return used() >= until_improved; });
    if (!plan.better_than(best_)) return false;
    best_ = std::move(plan);
    return true;
  }

  bool is_partly_locked(const std::string& blade) const {
    return std::any_of(case_.locked.begin(), case_.locked.end(), [&](const PlanFiring& firing) {
      return std::any_of(firing.members.begin(), firing.members.end(),
                         [&](const PlanMember& m) { return m.blade == blade; });
    });
  }

  Replanned result() {
    Replanned result;
    result.moved = best_.moved;
    result.total_mc = best_.total_mc;
    result.answer.plan = best_.plan;
    result.answer.cost = best_.cost;
    result.answer.iterations = iterations_;
    PlanCase placed = case_;
    std::erase_if(placed.blades, [&](const PlanBlade& b) {
      return best_.left_out.contains(b.id) && !is_partly_locked(b.id);
    });
    result.answer.bound_mc = best_.left_out.empty()
                                 ? bound_mc_ - booked_.moved_mc * lost_
                                 : plan_firings(placed, {}, seed_).bound_mc;
    result.bound_mc = result.answer.bound_mc + booked_.moved_mc * lost_;
    const std::function<bool()> in_time = [this] { return !over(); };
    for (const std::string& blade : best_.left_out)
      result.answer.unplaced.push_back(
          limits_.reasons ? reason_unplaced(case_, best_.plan, blade, in_time, limits_.words)
                          : Unplaced{blade, 0, 0, {}, {}});
    result.answer.proven = best_.left_out.empty() && result.total_mc == result.bound_mc;
    return result;
  }

  const PlanCase& case_;
  const BookedPlan& booked_;
  const SearchLimits& limits_;
  std::uint64_t seed_;
  Weighing weighing_;
  std::vector<PlanFiring> standing_;
  int lost_ = 0;
  std::int64_t bound_mc_ = 0, iterations_ = 0;
  WeighedPlan best_;
};

}  // namespace

bool stands(const PlanFiring& booked, const FiringPlan& plan) {
  return std::any_of(plan.firings.begin(), plan.firings.end(), [&](const PlanFiring& f) {
    return f.kiln == booked.kiln && f.kind == booked.kind && f.temp_c == booked.temp_c &&
           f.start_min == booked.start_min &&
           std::any_of(f.members.begin(), f.members.end(), [&](const PlanMember& m) {
             return std::find(booked.members.begin(), booked.members.end(), m) !=
                    booked.members.end();
           });
  });
}

Replanned replan_firings(const PlanCase& a_case, const BookedPlan& booked,
                         const SearchLimits& limits, std::uint64_t seed) {
  if (booked.moved_mc > 0 && !booked.firings.empty())
    return Replanning(a_case, booked, limits, seed).run();
  Replanned result;
  result.answer = plan_firings(a_case, limits, seed);
  for (const PlanFiring& firing : booked.firings)
    if (!stands(firing, result.answer.plan)) ++result.moved;
  result.total_mc = result.answer.cost.total_mc();
  result.bound_mc = result.answer.bound_mc;
  return result;
}

}  // namespace tangmark::kiln
