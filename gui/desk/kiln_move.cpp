// SPDX-License-Identifier: MIT
// Whether a firing may stand elsewhere, by the rules of the plan.
#include <algorithm>
#include <set>

#include "db/store/kiln_store.h"
#include "db/store/plan_case.h"
#include "domain/kiln/plan_check.h"
#include "gui/desk/firing_curve.h"
#include "gui/desk/kiln_board_of.h"
#include "gui/desk/kiln_desk.h"

namespace tangmark::desk {
namespace {

constexpr int days_ahead = 60;

// The checker speaks of minutes of its plan; here the reason is told as the maker would see it.
std::string reason_of(int rule, const std::string& kiln, const std::string& degrees) {
  switch (rule) {
    case 2: return "The " + kiln + " holds fewer blades than that, or one of them is too long for it.";
    case 3: return "The " + kiln + " does not go to " + degrees + ".";
    case 4: return "The temperature does not suit every blade in it.";
    case 5: return "A blade would soak longer or shorter than it may.";
    case 6: return "Loading or unloading falls outside your hours at the bench.";
    case 7: return "It needs you throughout, and you are not at the bench all that time.";
    case 8: return "That is further ahead than the plan reaches.";
    case 10: return "A blade in it is not ready by then.";
    case 11: return "A blade would wait too long, or not long enough, after its step before.";
    case 12: return "The " + kiln + " cannot be at " + degrees + " by then: too hot still, or not free in time to heat.";
    case 13: return "Your hands are at another kiln then.";
    case 14: return "Another kiln on the same circuit is on then.";
    case 15: return "A firing that you keep in place stands there.";
    default: return "It does not fit with what is booked.";
  }
}

std::set<int> broken_rules(const db::ShopCase& shop, const kiln::PlanFiring& candidate) {
  kiln::FiringPlan plan{shop.a_case.name, shop.a_case.locked};
  plan.firings.push_back(candidate);
  std::set<std::string> all;
  for (const auto& [name, chain] : shop.chains) all.insert(name);
  std::set<int> rules;
  for (const kiln::PlanViolation& violation : kiln::check_plan(shop.a_case, plan, all).violations) {
    rules.insert(violation.rule);
  }
  return rules;
}

void add_reasons(const Sight& sight, const kiln::KeptFiring& booked, const std::string& kiln, Instant start,
                 MoveTrial& trial) {
  db::ShopCase shop = db::shop_case(sight.shop, sight.now, db::Keep::all_booked, days_ahead);
  auto candidate = db::as_planned(shop, booked);
  if (!candidate) {
    trial.reasons.push_back("A blade of it has been fired or scrapped since. Cancel it and book anew.");
    return;
  }
  std::erase(shop.a_case.locked, *candidate);
  const std::set<int> before = broken_rules(shop, *candidate);
  candidate->kiln = kiln;
  candidate->start_min = shop.minute(start);
  // What is already out of order elsewhere (an overdue firing) is not held against this move.
  for (int rule : broken_rules(shop, *candidate)) {
    if (!before.contains(rule)) trial.reasons.push_back(reason_of(rule, kiln, words(sight, booked.set)));
  }
}

db::FiringRow moved_to(const db::FiringRow& firing, const db::KilnRow& kiln, Instant start) {
  db::FiringRow moved = firing;
  moved.kiln = kiln.name;
  moved.kiln_id = kiln.id;
  moved.starts_at = start;
  moved.ends_at = start + (firing.ends_at - firing.starts_at);
  moved.heat_from = start - (firing.starts_at - firing.heat_from);
  return moved;
}

std::optional<db::KilnRow> kiln_called(const Sight& sight, const std::string& name) {
  for (db::KilnRow& row : db::kiln_rows(sight.shop)) {
    if (row.name == name) return std::move(row);
  }
  return std::nullopt;
}

}  // namespace

MoveTrial try_firing(const Sight& sight, std::int64_t number, const std::string& kiln, Instant start) {
  MoveTrial trial;
  const auto row = db::firing_row(sight.shop, number);
  const auto booked = db::find_firing(sight.shop, std::to_string(number), "firing");
  const auto target = kiln_called(sight, kiln);
  if (!row || !booked || row->state != "booked") {
    trial.reasons = {"The firing is no longer only booked."};
    return trial;
  }
  if (!target) {
    trial.reasons = {"There is no kiln " + kiln + "."};
    return trial;
  }
  const db::FiringRow moved = moved_to(*row, *target, start);
  trial.sentence = "From " + when(sight, start) + " in the " + kiln + ".";
  trial.there.id = std::to_string(number);
  trial.there.caption = caption_of(sight, moved);
  trial.there.start = start;
  trial.there.busy_from = moved.heat_from;
  trial.there.busy_to = moved.ends_at;
  trial.there.planned = curve_of(*target, moved, std::nullopt, moved.ends_at + std::chrono::hours{4});
  if (row->locked) trial.reasons.push_back("You keep it in place; let it move first.");
  if (moved.heat_from < sight.now) trial.reasons.push_back("The kiln would have to be switched on before now.");
  if (start >= sight.now) add_reasons(sight, *booked, kiln, start, trial);
  trial.may = trial.reasons.empty();
  return trial;
}

Outcome<KilnProposal> propose(const Sight& sight, std::int64_t number, const std::string& kiln, Instant start) {
  const MoveTrial trial = try_firing(sight, number, kiln, start);
  if (!trial.may) {
    Problems problems;
    for (const std::string& reason : trial.reasons) problems.push_back({"start", reason, ""});
    problems.back().remedy = "Firing " + std::to_string(number) + " stays where it was.";
    return problems;
  }
  const auto row = db::firing_row(sight.shop, number);
  KilnProposal proposal;
  proposal.firings = {{number, false, moved_to(*row, *kiln_called(sight, kiln), start)}};
  proposal.title = "Proposed: firing " + std::to_string(number) + " from " + when(sight, start) + " in the " + kiln;
  proposal.sentences = {"As booked it was " + when(sight, row->starts_at) + " in the " + row->kiln + ".",
                        "Every rule is kept: your hours, the kiln's heat, the blades' waits, the circuits."};
  proposal.take = {"move_firing",
                   {{"firing", std::to_string(number)}, {"start", to_stored(start)}, {"kiln", kiln}}};
  return proposal;
}

}  // namespace tangmark::desk
