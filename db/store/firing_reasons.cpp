// SPDX-License-Identifier: MIT
#include "db/store/firing_reasons.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "db/row.h"
#include "domain/kiln/plan_catches.h"

namespace tangmark::db {
namespace {

using std::chrono::minutes;

class Wording {
 public:
  Wording(const ShopCase& from, const kiln::FiringPlan& plan, const kiln::PlanViolation& violation)
      : from_(from), violation_(violation) {
    if (violation.firing) firing_ = &plan.firings[*violation.firing];
    if (violation.other) other_ = &plan.firings[*violation.other];
    // Of two that clash, the last one of the plan is the one that is spoken of.
    if (firing_ && other_ && *violation.other + 1 == plan.firings.size())
      std::swap(firing_, other_);
    for (const kiln::PlanKiln& k : from.a_case.kilns)
      if (firing_ && k.id == firing_->kiln) kiln_ = &k;
    for (const kiln::PlanBlade& b : from.a_case.blades)
      if (b.id == violation.blade) blade_ = &b;
  }

  std::string run() const {
    switch (violation_.rule) {
      case 2:
        return room();
      case 3:
        return reach();
      case 4:
        return degrees(firing_ ? firing_->temp_c : 0) + " does not suit every blade in it.";
      case 5:
        return "A blade in it would soak longer or shorter than it may.";
      case 6:
        return "Loading or unloading " + span() + " falls outside your hours at the bench.";
      case 7:
        return "It needs you " + span() + ", and you are not at the bench all that time.";
      case 8:
        return "It would end after the plan does.";
      case 9:
        return "Blade " + violation_.blade + " is in another firing for the same step.";
      case 10:
        return ready();
      case 11:
        return gap();
      case 12:
        return "The " + kiln() + " cannot be at " + degrees(firing_ ? firing_->temp_c : 0) +
               " by then: not free in time to heat, or too hot still.";
      case 13:
        return "Your hands are at " + (other_ ? "the " + other() : "a firing that runs") + " " +
               span() + ".";
      case 14:
        return "The " + other() + " is on then, on the same circuit.";
      case 15:
        return "A firing that you keep in place stands there.";
      case 16:
        return too_hot();
      default:
        return "It does not fit with what is booked.";
    }
  }

 private:
  std::string kiln() const { return firing_ ? firing_->kiln : "kiln"; }
  std::string other() const { return other_ ? other_->kiln : "other kiln"; }
  std::string degrees(int celsius) const {
    return to_text(Temperature::celsius(celsius), from_.unit);
  }

  std::string span() const {
    if (!violation_.span) return "then";
    const auto [a, b] = *violation_.span;
    return "from " + to_text(from_.at(a), from_.zone) + " to " +
           clock_text(from_.at(b), from_.zone);
  }

  std::string room() const {
    if (!kiln_) return "The " + kiln() + " does not hold these blades.";
    return fmt::format("The {} takes {} blades of up to {} mm; these are more, or longer.", kiln(),
                       kiln_->slots, kiln_->max_length_mm);
  }

  std::string reach() const {
    if (!kiln_) return "The " + kiln() + " does not go to that temperature.";
    return fmt::format("The {} goes from {} to {}, not to {}.", kiln(), degrees(kiln_->lowest_c),
                       degrees(kiln_->highest_c), degrees(firing_->temp_c));
  }

  std::string too_hot() const {
    for (const kiln::PlanMember& m :
         firing_&& blade_ ? firing_->members : std::vector<kiln::PlanMember>())
      for (const kiln::PlanBath& bath : from_.a_case.baths)
        if (m.blade == blade_->id &&
            bath.id == blade_->operations[static_cast<std::size_t>(m.operation)].bath)
          return fmt::format("The quench of blade {} would take the {} above {}.", m.blade, bath.id,
                             degrees(bath.highest_c));
    return "A bath would get too hot.";
  }

  std::string ready() const {
    std::string text = "Blade " + violation_.blade + " is not ready by then";
    if (blade_)
      text +=
          "; the work before it takes until " + to_text(from_.at(blade_->release_min), from_.zone);
    return text + ".";
  }

  std::string gap() const {
    const std::string blade = "Blade " + violation_.blade;
    if (!violation_.span || !blade_ || !firing_)
      return blade + " would wait too long, or not long enough, after its step before.";
    const auto member =
        std::find_if(firing_->members.begin(), firing_->members.end(),
                     [&](const kiln::PlanMember& m) { return m.blade == violation_.blade; });
    const auto& op = blade_->operations[static_cast<std::size_t>(member->operation)];
    const int waits = violation_.span->second - violation_.span->first;
    if (waits < op.shortest_gap_min)
      return fmt::format("{} needs {} after its step before; here it has {}.", blade,
                         said(op.shortest_gap_min), said(waits));
    return fmt::format("{} would wait {} after its step before; at most {} are allowed.", blade,
                       said(waits), said(op.longest_gap_min.value_or(0)));
  }

  static std::string said(int span_min) { return to_text(Duration(minutes(span_min))); }

  const ShopCase& from_;
  const kiln::PlanViolation& violation_;
  const kiln::PlanFiring* firing_ = nullptr;
  const kiln::PlanFiring* other_ = nullptr;
  const kiln::PlanKiln* kiln_ = nullptr;
  const kiln::PlanBlade* blade_ = nullptr;
};

}  // namespace

std::string reason_in_words(const ShopCase& from, const kiln::FiringPlan& plan,
                            const kiln::PlanViolation& violation) {
  return Wording(from, plan, violation).run();
}

std::vector<BookedConflict> booked_conflicts(const ShopCase& from) {
  kiln::FiringPlan plan{from.a_case.name, from.a_case.locked};
  std::vector<std::int64_t> numbers = from.locked_numbers;
  std::vector<BookedConflict> conflicts;
  for (const ShopCase::Movable& one : from.movable) {
    const bool timed = one.planned && !one.planned->kiln.empty() && one.planned->start_min >= 0;
    if (timed) {
      plan.firings.push_back(*one.planned);
      numbers.push_back(one.firing.number);
    } else {
      conflicts.push_back(
          {one.firing.number, std::pair(one.firing.starts_at, one.firing.ends_at), one.cannot});
    }
  }
  std::set<std::string> all;
  for (const auto& [name, chain] : from.chains) all.insert(name);
  for (const kiln::PlanViolation& violation : kiln::check_plan(from.a_case, plan, all).violations) {
    if (!violation.firing) continue;
    BookedConflict conflict{numbers[*violation.firing], {}, reason_in_words(from, plan, violation)};
    if (violation.span)
      conflict.span = std::pair(from.at(violation.span->first), from.at(violation.span->second));
    conflicts.push_back(std::move(conflict));
  }
  return conflicts;
}

std::vector<std::string> set_aside_for_firing(const ShopFile& shop, std::int64_t number) {
  Query q(shop,
          "SELECT o.reason, o.sentence FROM override o JOIN firing f ON f.id = o.subject_id "
          "WHERE o.subject = 'firing' AND f.number = ? ORDER BY o.id");
  q.bind(number);
  std::vector<std::string> all;
  while (q.next()) all.push_back(q.text("reason") + ": " + q.text("sentence"));
  return all;
}

Catches catches_in_words(const ShopCase& from, const kiln::FiringPlan& plan,
                         const std::vector<kiln::PlanViolation>& violations) {
  kiln::PlanCheck check;
  check.violations = violations;
  for (kiln::PlanViolation& violation : check.violations)
    violation.sentence = reason_in_words(from, plan, violation);
  return kiln::catches_of(check);
}

JudgedFiring judge_firing(const ShopCase& from, const kiln::PlanFiring& candidate) {
  std::set<std::string> all, broken_anyway;
  for (const auto& [name, chain] : from.chains) all.insert(name);
  JudgedFiring judged;
  judged.plan = {from.a_case.name, from.a_case.locked};
  for (const auto& violation : kiln::check_plan(from.a_case, judged.plan, all).violations)
    broken_anyway.insert(violation.sentence);
  judged.plan.firings.push_back(candidate);
  const kiln::PlanCheck check = kiln::check_plan(from.a_case, judged.plan, all);
  for (const kiln::PlanViolation& violation : check.violations) {
    if (broken_anyway.contains(violation.sentence)) continue;
    judged.violations.push_back(violation);
    std::string reason = reason_in_words(from, judged.plan, violation);
    // Where it is the other firing that now breaks a rule, its name says which.
    if (violation.firing && *violation.firing + 1 != judged.plan.firings.size() &&
        violation.rule != 13 && violation.rule != 14)
      reason = "The " + judged.plan.firings[*violation.firing].kiln + " after it: " + reason;
    if (std::find(judged.reasons.begin(), judged.reasons.end(), reason) == judged.reasons.end())
      judged.reasons.push_back(std::move(reason));
  }
  for (const kiln::TimedFiring& timed : check.firings)
    if (timed.firing + 1 == judged.plan.firings.size())
      judged.firing = as_firing(from, judged.plan.firings.back(), timed);
  return judged;
}

}  // namespace tangmark::db
