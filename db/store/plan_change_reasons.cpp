// SPDX-License-Identifier: MIT
// Why a plan changes what is booked, in words.
#include <algorithm>
#include <set>

#include "db/store/firing_reasons.h"
#include "db/store/plan_difference.h"

namespace tangmark::db {
namespace {

using std::chrono::minutes;
using What = PlanDifference::What;

constexpr std::int64_t noticed_mc = 1000;  // a hundredth of a unit of money

std::string name_of(const ShopCase& from, const kiln::FiringBlade& member) {
  for (const auto& [name, chain] : from.chains)
    if (chain.blade == member.blade) return name;
  return "";
}

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i)
    text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return (names.size() == 1 ? "Blade " : "Blades ") + text;
}

bool holds(const kiln::Firing& firing, const kiln::FiringBlade& member) {
  return std::any_of(firing.blades.begin(), firing.blades.end(), [&](const kiln::FiringBlade& b) {
    return b.blade == member.blade && b.step == member.step;
  });
}

class Reasons {
 public:
  Reasons(const ShopCase& from, const kiln::FiringPlan& plan, const PlanDifference::Change& change)
      : from_(from), plan_(plan), change_(change) {
    for (const ShopCase::Movable& one : from.movable)
      if (change.before && one.firing.id == change.before->id) was_ = &one;
  }

  std::string run() {
    switch (change_.what) {
      case What::kept:
        return "";
      case What::added:
        add_newcomers("no firing was booked for it", "no firing was booked for them");
        break;
      case What::reloaded:
        reloaded();
        break;
      case What::moved:
        moved();
        break;
      case What::dropped:
        moved();
        if (was_ && was_->planned) say_where_they_go();
        break;
    }
    return text_;
  }

 private:
  void say(const std::string& sentence) { text_ += (text_.empty() ? "" : " ") + sentence; }

  /// Who in it had no booking, and who comes over from another firing.
  void add_newcomers(const std::string& one, const std::string& many) {
    std::vector<std::string> fresh;
    std::map<std::int64_t, std::vector<std::string>> from_others;
    for (const kiln::FiringBlade& member : change_.firing.blades) {
      const ShopCase::Movable* other = booked_with(member);
      if (other == was_ && was_) continue;
      if (other)
        from_others[other->firing.number].push_back(name_of(from_, member));
      else
        fresh.push_back(name_of(from_, member));
    }
    if (!fresh.empty()) say(listed(fresh) + ": " + (fresh.size() == 1 ? one : many) + ".");
    for (const auto& [number, names] : from_others)
      say(listed(names) + (names.size() == 1 ? " comes" : " come") + " over from firing " +
          std::to_string(number) + ".");
  }

  const ShopCase::Movable* booked_with(const kiln::FiringBlade& member) const {
    for (const ShopCase::Movable& one : from_.movable)
      if (holds(one.firing, member)) return &one;
    return nullptr;
  }

  void reloaded() {
    for (const std::string& gone : was_->gone) say(gone);
    std::vector<std::string> leave;
    for (const kiln::FiringBlade& member : was_->firing.blades)
      if (!holds(change_.firing, member) && !name_of(from_, member).empty() && is_planned(member))
        leave.push_back(name_of(from_, member));
    if (!leave.empty()) {
      say(listed(leave) + (leave.size() == 1 ? " leaves it." : " leave it."));
      say(why_they_leave());
    }
    add_newcomers("it had no firing booked and fits in", "they had no firing booked and fit in");
    if (change_.firing.soak != was_->firing.soak)
      say("The soak is " + to_text(change_.firing.soak) + " instead of " +
          to_text(was_->firing.soak) + ".");
    if (text_.empty()) say("The order of the quench changes.");
  }

  bool is_planned(const kiln::FiringBlade& member) const {
    const auto chain = from_.chains.find(name_of(from_, member));
    if (chain == from_.chains.end() || !member.step) return false;
    const auto& steps = chain->second.steps;
    return std::find(steps.begin(), steps.end(), *member.step) != steps.end();
  }

  std::string why_they_leave() const {
    const auto judged = judge_firing(from_, *was_->planned);
    return judged.reasons.empty() ? "" : judged.reasons.front();
  }

  void moved() {
    if (!was_) return;
    for (const std::string& gone : was_->gone) say(gone);
    if (!was_->cannot.empty()) return say(was_->cannot);
    say(against_staying());
  }

  /// The plan with this firing where it was booked: what that breaks, or what it costs more.
  std::string against_staying() const {
    kiln::FiringPlan stayed = plan_;
    for (kiln::PlanFiring& firing : stayed.firings)
      std::erase_if(firing.members, [&](const kiln::PlanMember& m) {
        const auto& in = was_->planned->members;
        return std::find(in.begin(), in.end(), m) != in.end();
      });
    std::erase_if(stayed.firings, [](const kiln::PlanFiring& f) { return f.members.empty(); });
    stayed.firings.push_back(*was_->planned);
    std::set<std::string> all;
    for (const auto& [name, chain] : from_.chains) all.insert(name);
    const auto now = kiln::check_plan(from_.a_case, plan_, all);
    const auto then = kiln::check_plan(from_.a_case, stayed, all);
    if (!then.violations.empty())
      return "Where it was booked it no longer fits: " +
             reason_in_words(from_, stayed, then.violations.front());
    if (!now.cost || !then.cost) return "";
    return savings(*now.cost, *then.cost);
  }

  std::string savings(const kiln::PlanCost& now, const kiln::PlanCost& then) const {
    std::vector<std::string> gains;
    if (then.tardiness_mc > now.tardiness_mc + noticed_mc) gains.push_back("blades are less late");
    if (then.energy_mc > now.energy_mc + noticed_mc) gains.push_back("it takes less electricity");
    if (then.attention_mc > now.attention_mc + noticed_mc)
      gains.push_back("it takes less of your hands");
    if (gains.empty()) return "Its blades are done sooner so.";
    std::string text = "So ";
    for (std::size_t i = 0; i < gains.size(); ++i)
      text += (i == 0 ? "" : i + 1 == gains.size() ? " and " : ", ") + gains[i];
    return text + ".";
  }

  void say_where_they_go() {
    std::map<std::string, std::vector<std::string>> places;
    for (const kiln::PlanMember& member : was_->planned->members)
      for (const kiln::PlanFiring& firing : plan_.firings)
        if (std::find(firing.members.begin(), firing.members.end(), member) != firing.members.end())
          places["the " + firing.kiln + ", " + to_text(from_.at(firing.start_min), from_.zone)]
              .push_back(member.blade);
    for (const auto& [place, names] : places)
      say(listed(names) + (names.size() == 1 ? " goes" : " go") + " into " + place + ".");
  }

  const ShopCase& from_;
  const kiln::FiringPlan& plan_;
  const PlanDifference::Change& change_;
  const ShopCase::Movable* was_ = nullptr;
  std::string text_;
};

}  // namespace

std::string reason_for(const ShopCase& from, const kiln::FiringPlan& plan,
                       const PlanDifference::Change& change) {
  return Reasons(from, plan, change).run();
}

}  // namespace tangmark::db
