// SPDX-License-Identifier: MIT
#include <algorithm>
#include <set>

#include "db/actions/work.h"
#include "db/store/kiln_store.h"
#include "db/store/plan_case.h"
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
Energy energy_of(const ShopCase& from, const kiln::PlanFiring& planned, const kiln::TimedFiring& timed) {
  const kiln::PlanKiln& k = kiln_of(from, planned.kiln);
  const int ambient = from.a_case.ambient_c;
  std::int64_t watt_minutes = k.heat_w * timed.heating_min;
  if (planned.kind == kiln::PlanKind::anneal) {
    watt_minutes += kiln::holding_w(ambient, k, planned.temp_c) * (timed.soak_to_min - timed.start_min);
    watt_minutes += kiln::holding_w(ambient, k, (planned.temp_c + timed.off_c) / 2) * (timed.off_min - timed.soak_to_min);
  } else {
    watt_minutes += kiln::holding_w(ambient, k, planned.temp_c) * (timed.end_min - timed.start_min);
  }
  return Energy::watt_minutes(watt_minutes);
}

kiln::FiringKind kind_of(kiln::PlanKind kind) {
  switch (kind) {
    case kiln::PlanKind::soak: return kiln::FiringKind::soak;
    case kiln::PlanKind::harden: return kiln::FiringKind::harden;
    case kiln::PlanKind::anneal: return kiln::FiringKind::anneal;
  }
  return kiln::FiringKind::soak;
}

using Members = std::set<std::pair<std::int64_t, std::int64_t>>;

Members members_of(const kiln::Firing& firing) {
  Members members;
  for (const kiln::FiringBlade& b : firing.blades) members.emplace(b.blade.row(), b.step ? b.step->row() : 0);
  return members;
}

bool same_work(const kiln::Firing& a, const kiln::Firing& b) {
  return a.kind == b.kind && members_of(a) == members_of(b);
}

bool same_place(const kiln::Firing& a, const kiln::Firing& b) {
  return a.kiln == b.kiln && a.starts_at == b.starts_at && a.soak == b.soak && a.set == b.set;
}

// How late each blade's last planned firing is against its due minute.
std::map<std::string, Duration> lateness_of(const ShopCase& from, const kiln::FiringPlan& plan,
                                            const kiln::PlanCheck& check) {
  std::map<std::string, int> ends;
  for (const kiln::TimedFiring& timed : check.firings)
    for (std::size_t i = 0; i < timed.member_end_min.size(); ++i) {
      int& end = ends[plan.firings[timed.firing].members[i].blade];
      end = std::max(end, timed.member_end_min[i]);
    }
  std::map<std::string, Duration> late;
  for (const kiln::PlanBlade& blade : from.a_case.blades)
    if (const auto end = ends.find(blade.id); end != ends.end())
      late[blade.id] = minutes(std::max(0, end->second - blade.due_min));
  return late;
}

struct Weighed {
  std::map<std::string, Duration> late;
  Energy energy;
  Duration hands_on{};
};

Weighed weigh(const ShopCase& from, const kiln::FiringPlan& plan, const kiln::PlanCheck& check) {
  Weighed weighed;
  weighed.late = lateness_of(from, plan, check);
  for (const kiln::TimedFiring& timed : check.firings) {
    weighed.energy = weighed.energy + energy_of(from, plan.firings[timed.firing], timed);
    for (const auto& [a, b] : timed.hands) weighed.hands_on += minutes(b - a);
  }
  return weighed;
}

std::set<std::string> all_blades(const ShopCase& from) {
  std::set<std::string> names;
  for (const auto& [name, chain] : from.chains) names.insert(name);
  return names;
}

kiln::FiringPlan as_booked(const ShopCase& from) {
  kiln::FiringPlan booked{from.a_case.name, from.a_case.locked};
  for (const kiln::KeptFiring& firing : from.movable)
    if (const auto planned = as_planned(from, firing)) booked.firings.push_back(*planned);
  return booked;
}

bool is_locked(const ShopCase& from, const kiln::PlanFiring& firing) {
  const auto& locked = from.a_case.locked;
  return std::find(locked.begin(), locked.end(), firing) != locked.end();
}

}  // namespace

kiln::Firing as_firing(const ShopCase& from, const kiln::PlanFiring& planned, const kiln::TimedFiring& timed) {
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
    firing.blades.push_back({chain.blade, chain.steps[static_cast<std::size_t>(member.operation)], ++position, {}, {}});
    if (planned.kind != kiln::PlanKind::anneal) continue;
    const kiln::PlanOperation& op = operation_of(from, member);
    const auto rate = TemperatureDifference::celsius(op.cool_c_per_h);
    const auto to = Temperature::celsius(op.cool_to_c);
    firing.cool_per_h = firing.cool_per_h ? std::min(*firing.cool_per_h, rate) : rate;
    firing.cool_to = firing.cool_to ? std::min(*firing.cool_to, to) : to;
  }
  return firing;
}

std::string in_words(const PlanDifference::Lateness& late) {
  const auto said = [](Duration span) { return span == Duration{} ? "in time" : to_text(span) + " late"; };
  if (!late.before) return "blade " + late.blade + " will be " + said(late.after) + "; nothing was booked for it";
  return "blade " + late.blade + (late.after > *late.before ? " becomes later: " : " becomes earlier: ") + said(*late.before) +
         " as booked, " + said(late.after) + " by the plan";
}

PlanDifference difference(const ShopCase& from, const kiln::FiringPlan& plan) {
  PlanDifference result;
  const auto names = all_blades(from);
  const kiln::PlanCheck check = kiln::check_plan(from.a_case, plan, names);
  std::vector<bool> taken(from.movable.size(), false);
  for (const kiln::TimedFiring& timed : check.firings) {
    const kiln::PlanFiring& planned = plan.firings[timed.firing];
    if (is_locked(from, planned)) continue;
    PlanDifference::Change change{PlanDifference::What::added, as_firing(from, planned, timed), {}};
    for (std::size_t i = 0; i < from.movable.size(); ++i) {
      if (taken[i] || !same_work(change.firing, from.movable[i])) continue;
      taken[i] = true;
      change.before = from.movable[i];
      change.what = same_place(change.firing, from.movable[i]) ? PlanDifference::What::kept
                                                               : PlanDifference::What::moved;
      break;
    }
    result.changes.push_back(std::move(change));
  }
  for (std::size_t i = 0; i < from.movable.size(); ++i)
    if (!taken[i]) result.changes.push_back({PlanDifference::What::dropped, from.movable[i], from.movable[i]});

  const kiln::FiringPlan booked = as_booked(from);
  const Weighed before = weigh(from, booked, kiln::check_plan(from.a_case, booked, names));
  const Weighed after = weigh(from, plan, check);
  for (const auto& [name, late] : after.late) {
    const auto was = before.late.find(name);
    std::optional<Duration> old;
    if (was != before.late.end()) old = was->second;
    if (old.value_or(Duration{}) != late) result.lateness.push_back({name, old, late});
  }
  result.energy_before = before.energy;
  result.energy_after = after.energy;
  result.hands_on_before = before.hands_on;
  result.hands_on_after = after.hands_on;
  return result;
}

void book(Work& work, const PlanDifference& difference) {
  for (const PlanDifference::Change& change : difference.changes) {
    switch (change.what) {
      case PlanDifference::What::kept: break;
      case PlanDifference::What::added: {
        kiln::Firing firing = change.firing;
        firing.number = work.next_number("firing");
        add(work.shop(), firing);
        break;
      }
      case PlanDifference::What::moved: {
        kiln::Firing firing = change.firing;
        firing.number = change.before->number;
        db::change(work.shop(), change.before->id, firing);
        break;
      }
      case PlanDifference::What::dropped: {
        kiln::Firing firing = *change.before;
        firing.state = kiln::FiringState::cancelled;
        firing.cancelled_why = "a new plan was accepted";
        db::change(work.shop(), change.before->id, firing);
        break;
      }
    }
  }
}

}  // namespace tangmark::db
