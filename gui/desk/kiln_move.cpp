// SPDX-License-Identifier: MIT
// Whether a firing may stand elsewhere, by the rules of the plan.
#include <algorithm>

#include "db/store/firing_reasons.h"
#include "db/store/kiln_store.h"
#include "gui/desk/firing_curve.h"
#include "gui/desk/kiln_board_of.h"
#include "gui/desk/kiln_desk.h"

namespace tangmark::desk {
namespace {

constexpr int days_ahead = 60;

// What is booked changes seldom and the clock slowly: a firing held over many places is judged
// against the same case.
const MovingFiring* moving(const Sight& sight, std::int64_t number, KilnMemory& memory) {
  constexpr std::chrono::minutes fresh{1};
  if (memory.moving && memory.moving->number == number &&
      sight.now - memory.moving->asked_at < fresh)
    return &*memory.moving;
  memory.moving.reset();
  const auto row = db::firing_row(sight.shop, number);
  const auto booked = db::find_firing(sight.shop, std::to_string(number), "firing");
  if (!row || !booked || row->state != "booked") return nullptr;
  MovingFiring made{
      number, sight.now, db::shop_case(sight.shop, sight.now, db::Keep::all_booked, days_ahead),
      *row,   {},        db::kiln_rows(sight.shop)};
  made.candidate = db::as_planned(made.shop, *booked);
  if (made.candidate) std::erase(made.shop.a_case.locked, *made.candidate);
  memory.moving = std::move(made);
  return &*memory.moving;
}

// Judged by all rules of the plan, unless it cannot be judged at all. Stops stand; what only the
// maker can answer for may be set aside. The firing as it would be, where the kiln can do it.
std::optional<kiln::Firing> judge(const MovingFiring& moving, const FiringPlace& place,
                                  MoveTrial& trial) {
  kiln::PlanFiring candidate = *moving.candidate;
  candidate.kiln = place.kiln;
  candidate.start_min = moving.shop.minute(place.start);
  const db::JudgedFiring judged = db::judge_firing(moving.shop, candidate);
  const Catches caught = db::catches_in_words(moving.shop, judged.plan, judged.violations);
  trial.may_set_aside = trial.reasons.empty() && !caught.empty() &&
                        std::all_of(caught.begin(), caught.end(),
                                    [](const Caught& one) { return one.weight == Weight::ask; });
  trial.reasons.insert(trial.reasons.end(), judged.reasons.begin(), judged.reasons.end());
  return judged.firing;
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

const db::KilnRow* kiln_called(const MovingFiring& moving, const std::string& name) {
  const auto found = std::find_if(moving.kilns.begin(), moving.kilns.end(),
                                  [&](const db::KilnRow& row) { return row.name == name; });
  return found == moving.kilns.end() ? nullptr : &*found;
}

}  // namespace

MoveTrial try_firing(const Sight& sight, const FiringPlace& place, KilnMemory& memory) {
  MoveTrial trial;
  const MovingFiring* firing = moving(sight, place.number, memory);
  if (firing == nullptr) {
    trial.reasons = {"The firing is no longer only booked."};
    return trial;
  }
  const db::KilnRow* target = kiln_called(*firing, place.kiln);
  if (target == nullptr) {
    trial.reasons = {"There is no kiln " + place.kiln + "."};
    return trial;
  }
  db::FiringRow moved = moved_to(firing->row, *target, place.start);
  if (firing->row.locked) trial.reasons.push_back("You keep it in place; let it move first.");
  if (place.start < sight.now) {
    trial.reasons.push_back("That time is past.");
  } else if (firing->candidate) {
    if (const auto there = judge(*firing, place, trial)) {
      moved.heat_from = there->heat_from;
      moved.ends_at = there->ends_at;
    }
  } else {
    if (moved.heat_from < sight.now)
      trial.reasons.push_back("The kiln would have to be switched on before now.");
    trial.reasons.push_back("None of its blades needs it any more. Cancel it.");
  }
  trial.sentence = "From " + when(sight, place.start) + " in the " + place.kiln + ".";
  trial.there.id = std::to_string(place.number);
  trial.there.caption = caption_of(sight, moved);
  trial.there.start = place.start;
  trial.there.busy_from = moved.heat_from;
  trial.there.busy_to = moved.ends_at;
  trial.there.planned =
      curve_of(*target, moved, std::nullopt, moved.ends_at + std::chrono::hours{4});
  trial.may = trial.reasons.empty();
  return trial;
}

Outcome<KilnProposal> propose(const Sight& sight, const FiringPlace& place, KilnMemory& memory) {
  const std::string number = std::to_string(place.number);
  const MoveTrial trial = try_firing(sight, place, memory);
  if (!trial.may) {
    Problems problems;
    for (const std::string& reason : trial.reasons) problems.push_back({"start", reason, ""});
    problems.back().remedy = "Firing " + number + " stays where it was.";
    return problems;
  }
  const db::FiringRow row = memory.moving->row;
  KilnProposal proposal;
  db::FiringRow moved = moved_to(row, *kiln_called(*memory.moving, place.kiln), place.start);
  moved.heat_from = trial.there.busy_from;
  moved.ends_at = trial.there.busy_to;
  proposal.firings = {{place.number, false, false, std::move(moved), "You moved it."}};
  proposal.title =
      "Proposed: firing " + number + " from " + when(sight, place.start) + " in the " + place.kiln;
  proposal.sentences = {
      "As booked it was " + when(sight, row.starts_at) + " in the " + row.kiln + ".",
      "Every rule is kept: your hours, the kiln's heat, the blades' waits, the circuits."};
  proposal.take = {"move_firing",
                   {{"firing", number}, {"start", to_stored(place.start)}, {"kiln", place.kiln}}};
  return proposal;
}

}  // namespace tangmark::desk
