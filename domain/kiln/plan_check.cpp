// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "domain/kiln/plan_bath.h"
#include "domain/kiln/plan_heat.h"
#include "domain/kiln/plan_kind.h"
#include "domain/kiln/plan_times.h"

namespace tangmark::kiln {
namespace {

/// A firing while it is being judged.
struct Judged {
  TimedFiring timed;
  const PlanFiring* plan = nullptr;
  const PlanKiln* kiln = nullptr;
  std::vector<std::pair<std::size_t, int>> members;  ///< blade, operation
  std::vector<const PlanOperation*> operations;      ///< likewise
  std::int64_t watt_min = 0;                         ///< all but heating up
  std::string name;
};

class Judge {
 public:
  Judge(const PlanCase& a_case, const FiringPlan& plan, const std::set<std::string>& left_out)
      : case_(a_case), plan_(plan), left_out_(left_out) {
    for (std::size_t b = 0; b < case_.blades.size(); ++b) blade_of_[case_.blades[b].id] = b;
  }

  PlanCheck run() {
    for (std::size_t i = 0; i < plan_.firings.size(); ++i) judge_firing(i);
    judge_chains();
    for (const PlanKiln& kiln : case_.kilns) judge_kiln(kiln);
    judge_hands();
    judge_circuits();
    judge_locked();
    if (!missing_) out_.cost = cost();
    for (Judged& j : judged_) out_.firings.push_back(std::move(j.timed));
    for (PlanViolation& hot : judge_baths(case_, plan_, out_.firings))
      out_.violations.push_back(std::move(hot));
    return std::move(out_);
  }

 private:
  template <class... Args>
  void bad(int rule, fmt::format_string<Args...> words, Args&&... args) {
    out_.violations.push_back({rule, fmt::format(words, std::forward<Args>(args)...), about_.firing,
                               about_.other, about_.blade, about_.span});
  }

  /// What the next complaints are about.
  struct About {
    std::optional<std::size_t> firing{}, other{};
    std::string blade{};
    std::optional<std::pair<int, int>> span{};
  };

  const PlanOperation& operation(std::pair<std::size_t, int> member) const {
    return case_.blades[member.first].operations[static_cast<std::size_t>(member.second)];
  }

  /// R1 to R8: one firing by itself.
  void judge_firing(std::size_t i) {
    Judged j;
    about_ = {i};
    j.plan = &plan_.firings[i];
    j.timed.firing = i;
    j.timed.kiln = j.plan->kiln;
    j.name = fmt::format("The firing in {} at minute {}", j.plan->kiln, j.plan->start_min);
    if (!known(j)) return;
    if (!judge_load(j)) return;
    set_times(*j.kiln, *j.plan, j.operations, j.timed);
    j.watt_min = watt_min_at_heat(case_.ambient_c, *j.kiln, *j.plan, j.timed);
    about_.span = std::pair(j.timed.start_min, j.timed.end_min);
    judge_soaks(j);
    judge_attendance(j);
    if (j.timed.end_min > case_.horizon_min)
      bad(8, "{} ends at {}, after the plan's end at {}.", j.name, j.timed.end_min,
          case_.horizon_min);
    judged_.push_back(std::move(j));
  }

  bool known(Judged& j) {
    const PlanFiring& f = *j.plan;
    for (const PlanKiln& k : case_.kilns)
      if (k.id == f.kiln) j.kiln = &k;
    if (!j.kiln) return bad(1, "There is no kiln {}.", f.kiln), false;
    if (f.start_min < 0 || f.soak_min < 0 || f.rest_min < 0)
      return bad(1, "{} has a negative start, soak or rest.", j.name), false;
    for (const PlanMember& m : f.members) {
      auto blade = blade_of_.find(m.blade);
      if (blade == blade_of_.end() || m.operation < 0 ||
          m.operation >= static_cast<int>(case_.blades[blade->second].operations.size()))
        return bad(1, "{} names blade {} operation {}, which does not exist.", j.name, m.blade,
                   m.operation), false;
      j.members.emplace_back(blade->second, m.operation);
      j.operations.push_back(&operation(j.members.back()));
    }
    if (j.members.empty()) return bad(1, "{} has no blades.", j.name), false;
    if (f.rest_min > 0 && f.kind != PlanKind::anneal)
      bad(1, "{} rests, which only an anneal may.", j.name);
    return true;
  }

  bool judge_load(const Judged& j) {
    const PlanFiring& f = *j.plan;
    if (static_cast<int>(j.members.size()) > j.kiln->slots)
      bad(2, "{} holds {} blades, the kiln has {} slots.", j.name, j.members.size(), j.kiln->slots);
    std::set<std::size_t> blades;
    for (auto& m : j.members) blades.insert(m.first);
    if (blades.size() != j.members.size()) bad(2, "{} holds a blade twice.", j.name);
    if (f.temp_c < j.kiln->lowest_c || f.temp_c > j.kiln->highest_c)
      bad(3, "{} is set to {} C, the kiln goes from {} to {} C.", j.name, f.temp_c,
          j.kiln->lowest_c, j.kiln->highest_c);
    if (std::none_of(j.members.begin(), j.members.end(),
                     [&](auto& m) { return operation(m).target_c == f.temp_c; }))
      bad(4, "{} is set to {} C, which is no member's target.", j.name, f.temp_c);
    bool same_kind = true;
    for (auto& m : j.members) same_kind = judge_member(j, m) && same_kind;
    return same_kind;
  }

  bool judge_member(const Judged& j, std::pair<std::size_t, int> m) {
    const PlanFiring& f = *j.plan;
    const PlanBlade& blade = case_.blades[m.first];
    const PlanOperation& op = operation(m);
    if (blade.length_mm > j.kiln->max_length_mm)
      bad(2, "Blade {} is {} mm long, {} takes {} mm.", blade.id, blade.length_mm, j.kiln->id,
          j.kiln->max_length_mm);
    if (op.kind != f.kind) {
      bad(4, "{} is {}, blade {} operation {} is {}.", j.name, word_of(f.kind), blade.id, m.second,
          word_of(op.kind));
      return false;
    }
    if (f.temp_c < op.lowest_c || f.temp_c > op.highest_c)
      bad(4, "Blade {} operation {} takes {} to {} C, not {}.", blade.id, m.second, op.lowest_c,
          op.highest_c, f.temp_c);
    return true;
  }

  void judge_soaks(const Judged& j) {
    if (j.timed.hands[0].second > j.timed.soak_to_min)
      bad(5, "{}: the first blade is due for its quench at {} min, the last goes in until {}.",
          j.name, j.timed.soak_to_min, j.timed.hands[0].second);
    for (std::size_t i = 0; i < j.members.size(); ++i) {
      const PlanOperation& op = operation(j.members[i]);
      int soaked = j.plan->soak_min;
      if (j.plan->kind == PlanKind::harden && !j.kiln->staggered)
        soaked = j.timed.member_end_min[i] - op.quench_min - j.timed.soak_from_min;
      if (soaked < op.shortest_soak_min || soaked > op.longest_soak_min)
        bad(5, "{}: blade {} operation {} soaks {} min, allowed {} to {}.", j.name,
            case_.blades[j.members[i].first].id, j.members[i].second, soaked,
            op.shortest_soak_min, op.longest_soak_min);
    }
  }

  bool inside_one_window(std::pair<int, int> span) const {
    return std::any_of(case_.windows.begin(), case_.windows.end(), [&](auto& w) {
      return w.first <= span.first && span.second <= w.second;
    });
  }

  void judge_attendance(const Judged& j) {
    const bool attended =
        j.plan->kind == PlanKind::harden ||
        std::any_of(j.members.begin(), j.members.end(),
                    [&](auto& m) { return !operation(m).unattended; });
    if (attended) {
      if (!inside_one_window({j.timed.start_min, j.timed.end_min}))
        bad(7, "{} needs the maker throughout, {} to {} is not inside one window.", j.name,
            j.timed.start_min, j.timed.end_min);
      return;
    }
    const char* what[] = {"loading", "unloading"};
    for (std::size_t i = 0; i < 2; ++i) {
      if (inside_one_window(j.timed.hands[i])) continue;
      about_.span = j.timed.hands[i];
      bad(6, "{}: {} from {} to {} is not inside one window.", j.name, what[i],
          j.timed.hands[i].first, j.timed.hands[i].second);
    }
  }

  /// R9 to R11.
  void judge_chains() {
    std::map<std::pair<std::size_t, int>, Stay> when;
    for (const Judged& j : judged_)
      for (std::size_t i = 0; i < j.members.size(); ++i) {
        const std::string& blade = case_.blades[j.members[i].first].id;
        about_ = {j.timed.firing, {}, blade};
        const Stay stay{j.timed.start_min, j.timed.member_end_min[i], j.timed.firing};
        if (!when.emplace(j.members[i], stay).second)
          bad(9, "Blade {} operation {} is in more than one firing.", blade, j.members[i].second);
      }
    done_min_.assign(case_.blades.size(), std::nullopt);
    for (std::size_t b = 0; b < case_.blades.size(); ++b) {
      const PlanBlade& blade = case_.blades[b];
      const int* previous = blade.previous_end_min ? &*blade.previous_end_min : nullptr;
      for (int i = 0; i < static_cast<int>(blade.operations.size()); ++i) {
        auto found = when.find({b, i});
        if (found == when.end()) {
          previous = nullptr;
          if (left_out_.contains(blade.id)) continue;
          missing_ = true;
          about_ = {{}, {}, blade.id};
          bad(9, "Blade {} operation {} is not in the plan.", blade.id, i);
          continue;
        }
        about_ = {found->second.firing, {}, blade.id};
        judge_gap(b, i, found->second.start_min, previous);
        done_min_[b] = found->second.end_min;
        previous = &found->second.end_min;
      }
    }
  }

  void judge_gap(std::size_t b, int i, int start_min, const int* previous) {
    const PlanBlade& blade = case_.blades[b];
    const PlanOperation& op = blade.operations[static_cast<std::size_t>(i)];
    if (i == 0 && start_min < blade.release_min)
      bad(10, "Blade {} starts at {}, it is released at {}.", blade.id, start_min,
          blade.release_min);
    if (!previous) return;
    const int gap = start_min - *previous;
    about_.span = std::pair(std::min(*previous, start_min), std::max(*previous, start_min));
    if (gap < op.shortest_gap_min)
      bad(11, "Blade {} waits {} min before operation {}, at least {} are needed.", blade.id, gap,
          i, op.shortest_gap_min);
    if (op.longest_gap_min && gap > *op.longest_gap_min)
      bad(11, "Blade {} waits {} min before operation {}, at most {} are allowed.", blade.id, gap,
          i, *op.longest_gap_min);
  }

  /// R12: the kiln from firing to firing.
  void judge_kiln(const PlanKiln& kiln) {
    std::vector<Judged*> here;
    for (Judged& j : judged_)
      if (j.kiln == &kiln) here.push_back(&j);
    std::stable_sort(here.begin(), here.end(), [](const Judged* a, const Judged* b) {
      return std::pair(a->timed.start_min, a->timed.end_min) <
             std::pair(b->timed.start_min, b->timed.end_min);
    });
    std::optional<KilnLeft> left;
    if (kiln.state)
      left = KilnLeft{std::max(0, kiln.state->free_at_min), kiln.state->off_at_min,
                      kiln.state->off_c};
    for (Judged* j : here) {
      auto heating =
          heating_min(case_.ambient_c, kiln, left, j->timed.start_min, j->plan->temp_c);
      about_ = {j->timed.firing};
      about_.span = std::pair(j->timed.start_min, j->timed.end_min);
      if (!heating)
        bad(12, "{} cannot begin: the kiln cannot be at {} C by then{}.", j->name, j->plan->temp_c,
            left ? fmt::format(", it was left at {} C at {} and emptied at {}", left->off_c,
                               left->off_min, left->end_min)
                 : "");
      j->timed.heating_min = heating.value_or(0);
      left = KilnLeft{j->timed.end_min, j->timed.off_min, j->timed.off_c};
    }
  }

  /// R13.
  void judge_hands() {
    struct Taken {
      int from, to;
      const Judged* by;  ///< nullptr: by what ran before the plan
    };
    std::vector<Taken> spans;
    for (const auto& [from, to] : case_.hands_taken)
      if (from < to) spans.push_back({from, to, nullptr});
    for (const Judged& j : judged_)
      for (auto& h : j.timed.hands)
        if (h.first < h.second) spans.push_back({h.first, h.second, &j});
    std::sort(spans.begin(), spans.end(), [](const Taken& a, const Taken& b) {
      return std::pair(a.from, a.to) < std::pair(b.from, b.to);
    });
    for (std::size_t i = 1, last = 0; i < spans.size(); ++i) {
      const Taken& now = spans[i];
      const Taken& before = spans[last];
      if (now.from < before.to && (now.by || before.by)) {
        about_ = {place_of(now.by ? now.by : before.by), place_of(now.by ? before.by : now.by)};
        about_.span = std::pair(now.from, std::min(now.to, before.to));
        bad(13, "The maker is needed twice at minute {}: {} and {}.", now.from, name_of(before.by),
            name_of(now.by));
      }
      if (now.to > before.to) last = i;
    }
  }

  static std::optional<std::size_t> place_of(const Judged* j) {
    return j ? std::optional(j->timed.firing) : std::nullopt;
  }
  static std::string name_of(const Judged* j) {
    return j ? j->name : "a firing that ran before";
  }

  /// R14.
  void judge_circuits() {
    for (std::size_t a = 0; a < judged_.size(); ++a)
      for (std::size_t b = a + 1; b < judged_.size(); ++b) {
        const Judged& x = judged_[a];
        const Judged& y = judged_[b];
        if (x.kiln == y.kiln || !x.kiln->circuit || x.kiln->circuit != y.kiln->circuit) continue;
        about_ = {x.timed.firing, y.timed.firing};
        about_.span = std::pair(std::max(x.timed.start_min - x.timed.heating_min,
                                         y.timed.start_min - y.timed.heating_min),
                                std::min(x.timed.off_min, y.timed.off_min));
        if (x.timed.start_min - x.timed.heating_min < y.timed.off_min &&
            y.timed.start_min - y.timed.heating_min < x.timed.off_min)
          bad(14, "Circuit {} carries two kilns: {} and {}.", *x.kiln->circuit, x.name, y.name);
      }
  }

  void judge_locked() {
    about_ = {};
    for (const PlanFiring& locked : case_.locked)
      if (std::find(plan_.firings.begin(), plan_.firings.end(), locked) == plan_.firings.end())
        bad(15, "The locked firing in {} at minute {} was changed.", locked.kiln,
            locked.start_min);
  }

  PlanCost cost() const {
    PlanCost c;
    for (std::size_t b = 0; b < case_.blades.size(); ++b) {
      if (!done_min_[b]) continue;
      const PlanBlade& blade = case_.blades[b];
      c.tardiness_mc += blade.late_mc_per_min * std::max(0, *done_min_[b] - blade.due_min);
      c.flow_mc += case_.prices.flow_mc_per_min * (*done_min_[b] - blade.release_min);
    }
    for (const Judged& j : judged_) {
      c.energy_mc += energy_mc(j.watt_min + j.kiln->heat_w * j.timed.heating_min,
                               case_.prices.energy_cents_per_kwh);
      for (auto& h : j.timed.hands)
        c.attention_mc += case_.prices.attention_mc_per_min * (h.second - h.first);
    }
    return c;
  }

  /// When a blade is in a firing for one operation.
  struct Stay {
    int start_min = 0, end_min = 0;
    std::size_t firing = 0;
  };

  const PlanCase& case_;
  const FiringPlan& plan_;
  const std::set<std::string>& left_out_;
  std::map<std::string, std::size_t> blade_of_;
  std::vector<Judged> judged_;
  std::vector<std::optional<int>> done_min_;
  bool missing_ = false;
  About about_;
  PlanCheck out_;
};

}  // namespace

PlanCheck check_plan(const PlanCase& a_case, const FiringPlan& plan,
                     const std::set<std::string>& left_out) {
  return Judge(a_case, plan, left_out).run();
}

}  // namespace tangmark::kiln
