// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include "db/actions/work.h"
#include "db/store/kiln_store.h"
#include "db/store/plan_difference.h"
#include "domain/kiln/kiln_fit.h"
#include "domain/kiln/plan_heat.h"

namespace tangmark::db {
namespace {

using std::chrono::minutes;

const kiln::PlanKiln& kiln_of(const ShopCase& from, const std::string& id) {
  return *std::find_if(from.a_case.kilns.begin(), from.a_case.kilns.end(),
                       [&](const kiln::PlanKiln& k) { return k.id == id; });
}

const kiln::PlanOperation& operation_of(const ShopCase& from, const kiln::PlanMember& member) {
  const auto blade = std::find_if(from.a_case.blades.begin(), from.a_case.blades.end(),
                                  [&](const kiln::PlanBlade& b) { return b.id == member.blade; });
  return blade->operations[static_cast<std::size_t>(member.operation)];
}

// Heating, holding, and for an anneal the controlled cooling at its mean temperature.
Energy energy_of(const ShopCase& from, const kiln::PlanFiring& planned,
                 const kiln::TimedFiring& timed) {
  const kiln::PlanKiln& k = kiln_of(from, planned.kiln);
  const int ambient = from.a_case.ambient_c;
  std::int64_t watt_minutes = k.heat_w * timed.heating_min;
  if (planned.kind == kiln::PlanKind::anneal) {
    watt_minutes +=
        kiln::holding_w(ambient, k, planned.temp_c) * (timed.soak_to_min - timed.start_min);
    watt_minutes += kiln::holding_w(ambient, k, (planned.temp_c + timed.off_c) / 2) *
                    (timed.off_min - timed.soak_to_min);
  } else {
    watt_minutes += kiln::holding_w(ambient, k, planned.temp_c) * (timed.end_min - timed.start_min);
  }
  watt_minutes += kiln::load_watt_min(ambient, k, planned.temp_c,
                                      static_cast<std::int64_t>(planned.members.size()));
  return Energy::watt_minutes(watt_minutes);
}

kiln::FiringKind kind_of(kiln::PlanKind kind) {
  switch (kind) {
    case kiln::PlanKind::soak:
      return kiln::FiringKind::soak;
    case kiln::PlanKind::harden:
      return kiln::FiringKind::harden;
    case kiln::PlanKind::anneal:
      return kiln::FiringKind::anneal;
  }
  return kiln::FiringKind::soak;
}

using Members = std::vector<std::pair<std::int64_t, std::int64_t>>;

// In hardening the order is that of the quench; otherwise only who is in it counts.
Members members_of(const kiln::Firing& firing) {
  Members members;
  for (const kiln::FiringBlade& b : firing.blades)
    members.emplace_back(b.blade.row(), b.step ? b.step->row() : 0);
  if (firing.kind != kiln::FiringKind::harden) std::sort(members.begin(), members.end());
  return members;
}

std::size_t in_common(const kiln::Firing& a, const kiln::Firing& b) {
  const Members of_b = members_of(b);
  std::size_t count = 0;
  for (const auto& member : members_of(a)) count += std::count(of_b.begin(), of_b.end(), member);
  return count;
}

bool same_place(const kiln::Firing& a, const kiln::Firing& b) {
  return a.kiln == b.kiln && a.starts_at == b.starts_at && a.set == b.set;
}

bool is_locked(const ShopCase& from, const kiln::PlanFiring& firing) {
  const auto& locked = from.a_case.locked;
  return std::find(locked.begin(), locked.end(), firing) != locked.end();
}

// Pairs the firings of a plan with those that are booked.
class Pairing {
 public:
  Pairing(const ShopCase& from, const kiln::FiringPlan& plan, const kiln::PlanCheck& check)
      : from_(from), taken_(from.movable.size(), false) {
    for (const kiln::TimedFiring& timed : check.firings)
      if (!is_locked(from, plan.firings[timed.firing]))
        changes_.push_back(
            {What::added, as_firing(from, plan.firings[timed.firing], timed), {}, {}});
  }

  std::vector<PlanDifference::Change> run() {
    pair([](const auto& now, const auto& was) { return same_place(now, was); });
    pair([](const auto& now, const auto& was) { return members_of(now) == members_of(was); });
    pair([](const auto& now, const auto& was) {
      return 2 * in_common(now, was) >= was.blades.size();
    });
    pair([](const auto&, const auto&) { return true; });
    for (std::size_t i = 0; i < taken_.size(); ++i)
      if (!taken_[i])
        changes_.push_back({What::dropped, from_.movable[i].firing, from_.movable[i].firing, {}});
    return std::move(changes_);
  }

 private:
  using What = PlanDifference::What;

  // Those with the most blades in common, of what is still single.
  template <class Alike>
  void pair(Alike alike) {
    for (PlanDifference::Change& change : changes_) {
      if (change.before) continue;
      std::size_t most = 0, found = 0;
      for (std::size_t i = 0; i < taken_.size(); ++i) {
        const kiln::KeptFiring& was = from_.movable[i].firing;
        const std::size_t common =
            taken_[i] || was.kind != change.firing.kind ? 0 : in_common(change.firing, was);
        if (common > most && alike(change.firing, was)) {
          most = common;
          found = i;
        }
      }
      if (most == 0) continue;
      taken_[found] = true;
      change.before = from_.movable[found].firing;
      change.what = what(change.firing, *change.before);
    }
  }

  static What what(const kiln::Firing& now, const kiln::Firing& was) {
    if (!same_place(now, was)) return What::moved;
    return members_of(now) == members_of(was) && now.soak == was.soak ? What::kept : What::reloaded;
  }

  const ShopCase& from_;
  std::vector<bool> taken_;
  std::vector<PlanDifference::Change> changes_;
};

struct Weighed {
  std::map<std::string, Instant> ends;
  Energy energy;
  Duration hands_on{};
};

Weighed weigh(const ShopCase& from, const kiln::FiringPlan& plan, const kiln::PlanCheck& check) {
  Weighed weighed;
  for (const kiln::TimedFiring& timed : check.firings) {
    const kiln::PlanFiring& planned = plan.firings[timed.firing];
    weighed.energy = weighed.energy + energy_of(from, planned, timed);
    for (const auto& [a, b] : timed.hands) weighed.hands_on += minutes(b - a);
    for (std::size_t i = 0; i < timed.member_end_min.size(); ++i) {
      Instant& end = weighed.ends[planned.members[i].blade];
      end = std::max(end, from.at(timed.member_end_min[i]));
    }
  }
  return weighed;
}

// A booked firing that the case can no longer time (its kiln is dead, its time is past) as it was
// booked. Its soak apart, an oven or a hardening asks for hands all the time.
void add_as_booked(const ShopCase& from, const kiln::KeptFiring& firing, Weighed& weighed) {
  weighed.energy = weighed.energy + firing.energy;
  if (firing.kind != kiln::FiringKind::anneal)
    weighed.hands_on += firing.ends_at - firing.starts_at - firing.soak;
  for (const kiln::FiringBlade& member : firing.blades)
    for (const auto& [name, chain] : from.chains)
      if (chain.blade == member.blade) {
        Instant& end = weighed.ends[name];
        end = std::max(end, firing.ends_at);
      }
}

Weighed as_booked(const ShopCase& from, const std::set<std::string>& names) {
  kiln::FiringPlan booked{from.a_case.name, from.a_case.locked};
  std::vector<const kiln::KeptFiring*> not_timed;
  for (const ShopCase::Movable& one : from.movable) {
    const bool known = one.planned && !one.planned->kiln.empty() && one.planned->start_min >= 0;
    if (known)
      booked.firings.push_back(*one.planned);
    else
      not_timed.push_back(&one.firing);
  }
  Weighed weighed = weigh(from, booked, kiln::check_plan(from.a_case, booked, names));
  for (const kiln::KeptFiring* firing : not_timed) add_as_booked(from, *firing, weighed);
  return weighed;
}

std::vector<PlanDifference::Shift> shifts_of(const ShopCase& from, const Weighed& before,
                                             const Weighed& after) {
  std::vector<PlanDifference::Shift> shifts;
  for (const kiln::PlanBlade& blade : from.a_case.blades) {
    PlanDifference::Shift shift{blade.id, {}, {}, {}, {}};
    const Instant due = from.at(blade.due_min);
    const auto ends = [&](const Weighed& plan, std::optional<Instant>& end, Duration& late) {
      const auto found = plan.ends.find(blade.id);
      if (found == plan.ends.end()) return;
      end = found->second;
      late = std::max(Duration{}, Duration(found->second - due));
    };
    ends(before, shift.before, shift.late_before);
    ends(after, shift.after, shift.late_after);
    if (shift.before != shift.after) shifts.push_back(std::move(shift));
  }
  return shifts;
}

}  // namespace

kiln::Firing as_firing(const ShopCase& from, const kiln::PlanFiring& planned,
                       const kiln::TimedFiring& timed) {
  kiln::Firing firing(from.kilns.at(planned.kiln));
  firing.kind = kind_of(planned.kind);
  firing.set = Temperature::celsius(planned.temp_c);
  firing.soak = minutes(planned.soak_min);
  firing.rest = minutes(planned.rest_min);
  firing.starts_at = from.at(planned.start_min);
  firing.ends_at = from.at(timed.end_min);
  firing.heat_from = from.at(planned.start_min - timed.heating_min);
  firing.energy = energy_of(from, planned, timed);
  std::int64_t position = 0;
  for (const kiln::PlanMember& member : planned.members) {
    const ShopCase::Chain& chain = from.chains.at(member.blade);
    firing.blades.push_back(
        {chain.blade, chain.steps[static_cast<std::size_t>(member.operation)], ++position, {}, {}});
    if (planned.kind != kiln::PlanKind::anneal) continue;
    const kiln::PlanOperation& op = operation_of(from, member);
    const auto rate = TemperatureDifference::celsius(op.cool_c_per_h);
    const auto to = Temperature::celsius(op.cool_to_c);
    firing.cool_per_h = firing.cool_per_h ? std::min(*firing.cool_per_h, rate) : rate;
    firing.cool_to = firing.cool_to ? std::min(*firing.cool_to, to) : to;
  }
  return firing;
}

std::string in_words(PlanDifference::What what) {
  switch (what) {
    case PlanDifference::What::kept:
      return "kept";
    case PlanDifference::What::reloaded:
      return "kept, other load";
    case PlanDifference::What::moved:
      return "moved";
    case PlanDifference::What::added:
      return "added";
    case PlanDifference::What::dropped:
      return "dropped";
  }
  return "";
}

std::string in_words(const PlanDifference::Shift& shift, const Zone& zone) {
  const auto said = [](Duration late) {
    return late == Duration{} ? "in time" : to_text(late) + " late";
  };
  const std::string blade = "Blade " + shift.blade;
  if (!shift.after)
    return blade + " finds no place; as booked it was done " + to_text(*shift.before, zone) + ".";
  if (!shift.before)
    return blade + " is done " + to_text(*shift.after, zone) + ", " + said(shift.late_after) +
           "; nothing was booked for it.";
  const bool later = *shift.after > *shift.before;
  const Duration by = later ? *shift.after - *shift.before : *shift.before - *shift.after;
  std::string text = blade;
  if (shift.late_after > Duration{} && shift.late_before == Duration{})
    text += " becomes late";
  else if (shift.late_after == Duration{} && shift.late_before > Duration{})
    text += " is no longer late";
  else
    text += later ? " becomes later" : " becomes earlier";
  return text + ": done " + to_text(*shift.after, zone) + ", " + to_text(by) +
         (later ? " later" : " earlier") + " than booked; " + said(shift.late_after) +
         (shift.late_before == shift.late_after ? "."
                                                : ", as booked " + said(shift.late_before) + ".");
}

std::string counted_changes(const PlanDifference& difference) {
  std::map<PlanDifference::What, int> count;
  for (const auto& change : difference.changes) ++count[change.what];
  std::string text;
  const auto add = [&](PlanDifference::What what, const std::string& word) {
    if (const int n = count[what]; n > 0)
      text += (text.empty() ? std::to_string(n) + (n == 1 ? " firing " : " firings ")
                            : ", " + std::to_string(n) + " ") +
              word;
  };
  add(PlanDifference::What::added, "added");
  add(PlanDifference::What::moved, "moved");
  add(PlanDifference::What::reloaded, "with another load");
  add(PlanDifference::What::dropped, "dropped");
  return text.empty() ? "nothing changes" : text;
}

PlanDifference difference(const ShopCase& from, const kiln::FiringPlan& plan) {
  PlanDifference result;
  std::set<std::string> names;
  for (const auto& [name, chain] : from.chains) names.insert(name);
  const kiln::PlanCheck check = kiln::check_plan(from.a_case, plan, names);
  result.changes = Pairing(from, plan, check).run();
  for (PlanDifference::Change& change : result.changes) change.why = reason_for(from, plan, change);
  for (const ShopCase::Movable& one : from.movable)
    if (one.planned && !kiln::stands(*one.planned, plan)) ++result.moved;
  const Weighed before = as_booked(from, names), after = weigh(from, plan, check);
  result.shifts = shifts_of(from, before, after);
  result.energy_before = before.energy;
  result.energy_after = after.energy;
  result.hands_on_before = before.hands_on;
  result.hands_on_after = after.hands_on;
  return result;
}

void book(Work& work, const PlanDifference& difference) {
  for (const PlanDifference::Change& change : difference.changes) {
    switch (change.what) {
      case PlanDifference::What::kept: {
        // Where and when it is stays; how long it heats and ends follows from its neighbours.
        kiln::Firing firing = *change.before;
        firing.heat_from = change.firing.heat_from;
        firing.ends_at = change.firing.ends_at;
        firing.energy = change.firing.energy;
        if (firing != static_cast<const kiln::Firing&>(*change.before))
          db::change(work.shop(), change.before->id, firing);
        break;
      }
      case PlanDifference::What::added: {
        kiln::Firing firing = change.firing;
        firing.number = work.next_number("firing");
        add(work.shop(), firing);
        break;
      }
      case PlanDifference::What::reloaded:
      case PlanDifference::What::moved: {
        kiln::Firing firing = change.firing;
        firing.number = change.before->number;
        db::change(work.shop(), change.before->id, firing);
        break;
      }
      case PlanDifference::What::dropped: {
        kiln::Firing firing = *change.before;
        firing.state = kiln::FiringState::cancelled;
        firing.cancelled_why = "a new plan was accepted: " + change.why;
        db::change(work.shop(), change.before->id, firing);
        break;
      }
    }
  }
}

}  // namespace tangmark::db
