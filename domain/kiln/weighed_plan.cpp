// SPDX-License-Identifier: MIT
#include "domain/kiln/weighed_plan.h"

#include <algorithm>
#include <cassert>

#include "domain/kiln/plan_check.h"
#include "domain/kiln/replanning.h"

namespace tangmark::kiln {
namespace {

constexpr int most_ways = 60;  // of one blade through the firings that are there
constexpr std::size_t small = 2;  // a firing of so few is worth emptying into others

std::set<std::string> all_blades(const PlanCase& a_case) {
  std::set<std::string> all;
  for (const PlanBlade& blade : a_case.blades) all.insert(blade.id);
  return all;
}

bool is_locked(const PlanCase& a_case, const PlanFiring& firing) {
  return std::find(a_case.locked.begin(), a_case.locked.end(), firing) != a_case.locked.end();
}

/// Improves one plan step by step; each step is judged by the checker.
class Improving {
 public:
  Improving(const Weighing& weighing, WeighedPlan& plan, const std::function<bool()>& over)
      : weighing_(weighing), case_(weighing.the_case()), best_(plan), over_(over) {}

  void run() {
    for (bool better = true; better && !over_();) better = put_back() || join();
  }

 private:
  const PlanBlade& blade(const std::string& id) const {
    return *std::find_if(case_.blades.begin(), case_.blades.end(),
                         [&](const PlanBlade& b) { return b.id == id; });
  }

  bool accept(FiringPlan changed) {
    auto weighed = weighing_.weigh(std::move(changed), best_.left_out);
    if (!weighed || !weighed->better_than(best_)) return false;
    best_ = std::move(*weighed);
    return true;
  }

  /// False when one of them is in a locked firing, which stays as it is.
  bool take_out(FiringPlan& plan, const std::vector<PlanMember>& members) const {
    for (PlanFiring& firing : plan.firings)
      for (const PlanMember& m : members) {
        const auto at = std::find(firing.members.begin(), firing.members.end(), m);
        if (at == firing.members.end()) continue;
        if (is_locked(case_, firing)) return false;
        firing.members.erase(at);
      }
    std::erase_if(plan.firings, [](const PlanFiring& f) { return f.members.empty(); });
    return true;
  }

  /// Each booked firing by itself, and with all that share a blade with it.
  bool put_back() {
    std::vector<PlanFiring> away;
    for (const PlanFiring& firing : weighing_.booked().firings) {
      if (stands(firing, best_.plan)) continue;
      auto ready = with_those_ready(case_, firing);
      if (!ready) continue;
      std::erase_if(ready->members,
                    [&](const PlanMember& m) { return best_.left_out.contains(m.blade); });
      if (!ready->members.empty()) away.push_back(std::move(*ready));
    }
    bool better = false;
    for (std::size_t i = 0; i < away.size() && !over_(); ++i) {
      if (stands(away[i], best_.plan)) continue;
      better = put_back({away[i]}) || better;
      std::vector<PlanFiring> chain;
      for (const PlanFiring& other : away)
        if (shares_a_blade(other, away[i])) chain.push_back(other);
      if (chain.size() > 1) better = put_back(chain) || better;
    }
    if (away.size() > 1 && !over_()) better = put_back(away) || better;
    return better;
  }

  static bool shares_a_blade(const PlanFiring& a, const PlanFiring& b) {
    return std::any_of(a.members.begin(), a.members.end(), [&](const PlanMember& m) {
      return std::any_of(b.members.begin(), b.members.end(),
                         [&](const PlanMember& n) { return n.blade == m.blade; });
    });
  }

  bool put_back(const std::vector<PlanFiring>& firings) {
    FiringPlan changed = best_.plan;
    for (const PlanFiring& firing : firings) {
      if (!take_out(changed, firing.members)) return false;
      changed.firings.push_back(firing);
    }
    return accept(std::move(changed));
  }

  /// Whether an operation may be put into a firing by its kind and temperature; makes room in time.
  bool put_in(PlanFiring& firing, const PlanMember& member) const {
    const PlanOperation& op =
        blade(member.blade).operations[static_cast<std::size_t>(member.operation)];
    if (op.kind != firing.kind || firing.temp_c < op.lowest_c || firing.temp_c > op.highest_c)
      return false;
    if (is_locked(case_, firing)) return false;
    firing.soak_min = std::max(firing.soak_min, op.shortest_soak_min);
    firing.members.push_back(member);
    return true;
  }

  bool in_a_small_firing(const std::string& blade) const {
    return std::any_of(best_.plan.firings.begin(), best_.plan.firings.end(),
                       [&](const PlanFiring& f) {
                         return f.members.size() <= small &&
                                std::any_of(f.members.begin(), f.members.end(),
                                            [&](const PlanMember& m) { return m.blade == blade; });
                       });
  }

  /// Blades of small firings through the firings that are there, one operation at a time and all
  /// together.
  bool join() {
    bool better = false;
    for (const PlanBlade& blade : case_.blades) {
      if (over_()) break;
      if (best_.left_out.contains(blade.id) || !in_a_small_firing(blade.id)) continue;
      for (int op = 0; op < static_cast<int>(blade.operations.size()); ++op)
        better = join_with(blade, op, op + 1) || better;
      better = join_with(blade, 0, static_cast<int>(blade.operations.size())) || better;
    }
    return better;
  }

  bool join_with(const PlanBlade& blade, int from, int to) {
    FiringPlan without = best_.plan;
    std::vector<PlanMember> members;
    for (int op = from; op < to; ++op) members.push_back({blade.id, op});
    if (!take_out(without, members)) return false;
    int ways = most_ways;
    return try_ways(without, members, 0, ways);
  }

  bool try_ways(const FiringPlan& plan, const std::vector<PlanMember>& members, std::size_t next,
                int& ways) {
    if (next == members.size()) return accept(plan);
    for (std::size_t i = 0; i < plan.firings.size() && ways > 0 && !over_(); ++i) {
      FiringPlan changed = plan;
      if (!put_in(changed.firings[i], members[next])) continue;
      --ways;
      if (try_ways(changed, members, next + 1, ways)) return true;
    }
    return false;
  }

  const Weighing& weighing_;
  const PlanCase& case_;
  WeighedPlan& best_;
  const std::function<bool()>& over_;
};

}  // namespace

bool WeighedPlan::better_than(const WeighedPlan& other) const {
  if (!known || !other.known) return known && !other.known;
  if (left_out.size() != other.left_out.size()) return left_out.size() < other.left_out.size();
  return total_mc < other.total_mc;
}

Weighing::Weighing(const PlanCase& a_case, const BookedPlan& booked)
    : case_(a_case), booked_(booked), all_(all_blades(a_case)) {}

WeighedPlan Weighing::weigh(FiringPlan plan, const std::vector<Unplaced>& unplaced) const {
  std::set<std::string> left_out;
  for (const Unplaced& u : unplaced) left_out.insert(u.blade);
  auto weighed = weigh(std::move(plan), left_out);
  assert(weighed && "the planner keeps every rule");
  return weighed ? std::move(*weighed) : WeighedPlan{};
}

std::optional<WeighedPlan> Weighing::weigh(FiringPlan plan,
                                           const std::set<std::string>& left_out) const {
  const PlanCheck check = check_plan(case_, plan, left_out);
  if (!check.feasible() || !check.cost) return std::nullopt;
  WeighedPlan weighed{std::move(plan), left_out, *check.cost, 0, check.cost->total_mc(), true};
  for (const PlanFiring& firing : booked_.firings)
    if (!stands(firing, weighed.plan)) ++weighed.moved;
  weighed.total_mc += booked_.moved_mc * weighed.moved;
  return weighed;
}

bool Weighing::keeps_rules_without_the_rest(const std::vector<PlanFiring>& firings) const {
  FiringPlan plan{case_.name, case_.locked};
  plan.firings.insert(plan.firings.end(), firings.begin(), firings.end());
  return check_plan(case_, plan, all_).feasible();
}

std::optional<PlanFiring> with_those_ready(const PlanCase& a_case, const PlanFiring& booked) {
  const std::set<std::string> all = all_blades(a_case);
  PlanFiring ready = booked;
  std::erase_if(ready.members, [&](const PlanMember& member) {
    FiringPlan plan{a_case.name, a_case.locked};
    plan.firings.push_back(booked);
    plan.firings.back().members = {member};
    const auto violations = check_plan(a_case, plan, all).violations;
    // The temperature may be another member's target, and its soak may hang on those before it.
    return std::any_of(violations.begin(), violations.end(),
                       [](const PlanViolation& v) { return v.rule != 4 && v.rule != 5; });
  });
  if (ready.members.empty()) return std::nullopt;
  return ready;
}

std::vector<PlanViolation> why_it_cannot_stand(const PlanCase& a_case, const PlanFiring& booked) {
  if (with_those_ready(a_case, booked)) return {};
  FiringPlan plan{a_case.name, a_case.locked};
  plan.firings.push_back(booked);
  return check_plan(a_case, plan, all_blades(a_case)).violations;
}

void improve(const Weighing& weighing, WeighedPlan& plan, const std::function<bool()>& over) {
  Improving(weighing, plan, over).run();
}

}  // namespace tangmark::kiln
