// SPDX-License-Identifier: MIT
// What is booked, as a planning case sees it.
#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "db/row.h"
#include "db/store/firing_reasons.h"
#include "db/store/kiln_store.h"
#include "db/store/plan_case.h"

namespace tangmark::db {
namespace {

using std::chrono::minutes;

constexpr int bath_step_c = 10;
constexpr int most_rules = 8;  // easing one rule can bring another one to light

std::string kiln_name(const ShopFile& shop, kiln::KilnId id) {
  Query q(shop, "SELECT name FROM kiln WHERE id = ?");
  q.bind(id);
  return q.next() ? q.text("name") : "";
}

std::string why_gone(const ShopFile& shop, const kiln::FiringBlade& member) {
  Query q(shop,
          "SELECT b.number, b.scrapped_at, s.operation, s.done_at, s.skipped_why FROM blade b "
          "LEFT JOIN route_step s ON s.id = ?2 WHERE b.id = ?1");
  q.bind(member.blade);
  q.bind(member.step ? member.step->row() : 0);
  if (!q.next()) return "A blade of it is no longer in the shop.";
  const std::string blade = "Blade " + q.text("number");
  if (!q.is_null("scrapped_at")) return blade + " was scrapped.";
  if (!q.is_null("done_at")) return blade + " has had its " + q.text("operation") + " already.";
  if (!q.is_null("skipped_why"))
    return blade + " no longer has its " + q.text("operation") + " to come.";
  return blade + " has nothing left that could be planned.";
}

class Booked {
 public:
  Booked(const ShopFile& shop, Keep keep, ShopCase& made) : shop_(shop), keep_(keep), made_(made) {
    for (const auto& [name, chain] : made.chains) all_.insert(name);
  }

  void run() {
    std::vector<kiln::KeptFiring> firings = booked_firings(shop_);
    for (kiln::KeptFiring& firing : firings) {
      const bool overdue = firing.starts_at < made_.origin;
      // Moving one firing by hand leaves those alone whose time has passed.
      if (overdue && keep_ == Keep::all_booked) continue;
      if (overdue || !(firing.locked || keep_ == Keep::all_booked) || !lock(firing))
        later_.push_back(std::move(firing));
    }
    for (kiln::KeptFiring& firing : later_) add_movable(std::move(firing));
  }

 private:
  /// Keeps it where it is, easing what its place asks for; false when that is not enough.
  bool lock(const kiln::KeptFiring& firing) {
    const auto planned = as_planned(made_, firing);
    if (!planned) return false;
    const kiln::PlanCase before = made_.a_case;
    for (int round = 0; round < most_rules; ++round) {
      const auto check = beside_locked(*planned);
      // For moving one firing by hand the others stand as they are, right or wrong.
      if (check.feasible() || !firing.locked) {
        made_.a_case.locked.push_back(*planned);
        made_.locked_numbers.push_back(firing.number);
        return true;
      }
      for (const kiln::PlanViolation& violation : check.violations) ease(*planned, violation);
    }
    made_.a_case = before;
    return false;
  }

  kiln::PlanCheck beside_locked(const kiln::PlanFiring& firing) const {
    kiln::FiringPlan plan{made_.a_case.name, made_.a_case.locked};
    plan.firings.push_back(firing);
    return kiln::check_plan(made_.a_case, plan, all_);
  }

  /// The maker put it there against this rule and said why: it holds for this one no longer.
  void ease(const kiln::PlanFiring& firing, const kiln::PlanViolation& violation) {
    if ((violation.rule == 6 || violation.rule == 7) && violation.span)
      return stay(*violation.span);
    if (violation.rule == 13 && !violation.other && violation.span)
      std::erase_if(made_.a_case.hands_taken, [&](const auto& taken) {
        return taken.first < violation.span->second && violation.span->first < taken.second;
      });
    for (kiln::PlanBlade& blade : made_.a_case.blades)
      for (const kiln::PlanMember& member : firing.members) {
        if (member.blade != blade.id) continue;
        auto& op = blade.operations[static_cast<std::size_t>(member.operation)];
        if (violation.rule == 10) blade.release_min = std::min(blade.release_min, firing.start_min);
        if (violation.rule == 5) ease_soak(firing, op);
        if (violation.rule == 16 && violation.blade == blade.id) let_hotter(op.bath);
        if (violation.rule == 11 && violation.blade == blade.id && violation.span) {
          const int gap = violation.span->second - violation.span->first;
          op.shortest_gap_min = std::min(op.shortest_gap_min, gap);
          if (op.longest_gap_min) op.longest_gap_min = std::max(*op.longest_gap_min, gap);
        }
      }
  }

  static void ease_soak(const kiln::PlanFiring& firing, kiln::PlanOperation& op) {
    op.shortest_soak_min = std::min(op.shortest_soak_min, firing.soak_min);
    op.longest_soak_min =
        std::max(op.longest_soak_min,
                 firing.soak_min + op.quench_min * static_cast<int>(firing.members.size()));
  }

  void let_hotter(const std::string& bath) {
    for (kiln::PlanBath& b : made_.a_case.baths)
      if (b.id == bath) b.highest_c += bath_step_c;
  }

  void stay(std::pair<int, int> span) {
    auto& windows = made_.a_case.windows;
    windows.push_back(span);
    std::sort(windows.begin(), windows.end());
    std::vector<std::pair<int, int>> joined;
    for (const auto& w : windows) {
      if (!joined.empty() && w.first <= joined.back().second)
        joined.back().second = std::max(joined.back().second, w.second);
      else
        joined.push_back(w);
    }
    windows = std::move(joined);
  }

  void add_movable(kiln::KeptFiring firing) {
    ShopCase::Movable movable{std::move(firing), {}, {}, {}, {}};
    movable.kiln = kiln_name(shop_, movable.firing.kiln);
    movable.planned = as_planned(made_, movable.firing);
    for (const kiln::FiringBlade& member : movable.firing.blades)
      if (!still_in(movable.planned, member)) movable.gone.push_back(why_gone(shop_, member));
    if (!movable.planned) {
      movable.cannot = "None of its blades needs it any more.";
    } else if (movable.firing.starts_at < made_.origin) {
      movable.cannot = "Its time has passed and it was not logged; log it if it runs.";
    } else if (!made_.kilns.contains(movable.kiln)) {
      movable.cannot = "The " + movable.kiln + " is out of use.";
    } else {
      movable.cannot = why_not(*movable.planned);
    }
    made_.movable.push_back(std::move(movable));
  }

  bool still_in(const std::optional<kiln::PlanFiring>& planned,
                const kiln::FiringBlade& member) const {
    if (!planned) return false;
    return std::any_of(planned->members.begin(), planned->members.end(), [&](const auto& m) {
      return made_.chains.at(m.blade).blade == member.blade;
    });
  }

  std::string why_not(const kiln::PlanFiring& planned) const {
    std::string why;
    kiln::FiringPlan plan{made_.a_case.name, made_.a_case.locked};
    plan.firings.push_back(planned);
    for (const kiln::PlanViolation& violation : kiln::why_it_cannot_stand(made_.a_case, planned))
      why += (why.empty() ? "" : " ") + reason_in_words(made_, plan, violation);
    return why;
  }

  const ShopFile& shop_;
  Keep keep_;
  ShopCase& made_;
  std::set<std::string> all_;
  std::vector<kiln::KeptFiring> later_;
};

}  // namespace

std::optional<kiln::PlanFiring> as_planned(const ShopCase& from, const kiln::KeptFiring& firing) {
  kiln::PlanFiring planned;
  for (const auto& [name, id] : from.kilns)
    if (id == firing.kiln) planned.kiln = name;
  planned.kind = firing.kind == kiln::FiringKind::harden   ? kiln::PlanKind::harden
                 : firing.kind == kiln::FiringKind::anneal ? kiln::PlanKind::anneal
                                                           : kiln::PlanKind::soak;
  planned.temp_c = static_cast<int>(firing.set.whole_celsius());
  planned.start_min = from.minute(firing.starts_at);
  planned.soak_min = static_cast<int>(std::chrono::ceil<minutes>(firing.soak).count());
  planned.rest_min = static_cast<int>(std::chrono::ceil<minutes>(firing.rest).count());
  for (const kiln::FiringBlade& member : firing.blades) {
    const auto chain = std::find_if(from.chains.begin(), from.chains.end(),
                                    [&](const auto& c) { return c.second.blade == member.blade; });
    if (chain == from.chains.end() || !member.step) continue;
    const auto& steps = chain->second.steps;
    const auto step = std::find(steps.begin(), steps.end(), *member.step);
    if (step == steps.end()) continue;
    planned.members.push_back({chain->first, static_cast<int>(step - steps.begin())});
  }
  if (planned.members.empty()) return std::nullopt;
  return planned;
}

void add_booked(const ShopFile& shop, Keep keep, ShopCase& made) {
  Booked(shop, keep, made).run();
}

}  // namespace tangmark::db
