// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/row.h"
#include "db/store/firing_reasons.h"
#include "db/store/kiln_store.h"
#include "db/store/plan_case.h"
#include "db/store/step_advice_reader.h"
#include "domain/kiln/kiln_check.h"

namespace tangmark::db {
namespace {

using std::chrono::minutes;

constexpr int days_ahead = 60;

// Judged by the rules of a plan, beside all that is booked. What is set aside is kept with the
// reason, and the firing then stays where it is when all is planned anew.
std::optional<kiln::Firing> passed(Work& work, const ShopCase& shop,
                                   const kiln::PlanFiring& candidate) {
  const JudgedFiring judged = judge_firing(shop, candidate);
  if (!work.passes(catches_in_words(shop, judged.plan, judged.violations))) return std::nullopt;
  return judged.firing;
}

void keep_reason(Work& work, kiln::FiringId id, std::int64_t number) {
  if (work.set_aside_for("firing", id.row()))
    work.warn("Firing " + std::to_string(number) +
              " is kept in place, so that no new plan moves it.");
}

const kiln::PlanBlade* blade_of(const ShopCase& shop, const std::string& name) {
  const auto& blades = shop.a_case.blades;
  const auto found =
      std::find_if(blades.begin(), blades.end(), [&](const auto& b) { return b.id == name; });
  return found == blades.end() ? nullptr : &*found;
}

// The blade's next heat step that no other firing has.
std::optional<int> next_operation(const ShopCase& shop, const std::string& name) {
  const kiln::PlanBlade* blade = blade_of(shop, name);
  if (!blade) return std::nullopt;
  int next = 0;
  for (const kiln::PlanFiring& firing : shop.a_case.locked)
    for (const kiln::PlanMember& member : firing.members)
      if (member.blade == name) next = std::max(next, member.operation + 1);
  if (next >= static_cast<int>(blade->operations.size())) return std::nullopt;
  return next;
}

const kiln::PlanOperation& operation_of(const ShopCase& shop, const kiln::PlanMember& member) {
  return blade_of(shop, member.blade)->operations[static_cast<std::size_t>(member.operation)];
}

// The next heats of these blades as one firing: of the first one's kind and temperature, soaked as
// long as the slowest asks for.
Outcome<kiln::PlanFiring> firing_for(const ShopCase& shop, const std::string& kiln,
                                     const std::vector<std::string>& blades, Instant start) {
  kiln::PlanFiring candidate{kiln, kiln::PlanKind::soak, 0, shop.minute(start), 0, 0, {}};
  for (const std::string& name : blades) {
    const auto next = next_operation(shop, name);
    if (!next)
      return Problem{"blades", "Blade " + name + " has no open firing on its route.",
                     "Check the number, or add the step with add_route_step."};
    candidate.members.push_back({name, *next});
  }
  candidate.kind = operation_of(shop, candidate.members.front()).kind;
  candidate.temp_c = operation_of(shop, candidate.members.front()).target_c;
  for (const kiln::PlanMember& member : candidate.members)
    candidate.soak_min =
        std::max(candidate.soak_min, operation_of(shop, member).shortest_soak_min);
  return candidate;
}

Outcome<ActionResult> book_one(Work& work, Form& form) {
  const auto kept = find_kiln(work.shop(), form.text("kiln"), "kiln");
  const auto blades = form.list("blades");
  const auto start = form.instant("start");
  const auto set = form.maybe_temperature("temperature");
  const auto soak = form.maybe_duration("soak");
  if (!kept) form.add(kept.problem());
  if (blades.empty())
    form.add({"blades", "No blade is named.", "List their numbers, such as 41,42."});
  if (!form.problems().empty()) return form.problems();
  if (start < work.now())
    return Problem{"start", "That time is past.", "Plan ahead; log what was done with run_firing."};
  ShopCase shop = shop_case(work.shop(), work.now(), Keep::all_booked, days_ahead);
  auto asked = firing_for(shop, kept->name, blades, start);
  if (!asked) return asked.problems();
  kiln::PlanFiring candidate = std::move(asked).value();
  if (set) candidate.temp_c = static_cast<int>(set->whole_celsius());
  if (soak) candidate.soak_min = static_cast<int>(std::chrono::ceil<minutes>(*soak).count());
  auto firing = passed(work, shop, candidate);
  if (!work.problems().empty()) return work.problems();
  work.passes(kiln::thermocouple_check_overdue(*kept, work.today()));
  if (!firing)
    return Problem{"blades", "These blades make no firing.",
                   "Fire blades of one kind of heat together."};
  firing->number = work.next_number("firing");
  firing->locked = form.yes("locked") || work.set_aside_anything();
  work.advise(advice_on(work.shop(), *firing, work.settings().temperature_unit));
  keep_reason(work, add(work.shop(), *firing), firing->number);
  return work.done(std::to_string(firing->number));
}

Outcome<kiln::KeptFiring> booked_firing(Work& work, Form& form) {
  auto firing = find_firing(work.shop(), form.text("firing"), "firing");
  if (firing && firing->state != kiln::FiringState::booked)
    return Problem{"firing",
                   "Firing " + std::to_string(firing->number) + " is " +
                       std::string(word_of(firing->state)) + ", no longer only booked.",
                   "Choose a booked firing."};
  return firing;
}

Outcome<ActionResult> move_one(Work& work, Form& form) {
  const auto firing = booked_firing(work, form);
  const auto start = form.instant("start");
  const auto to = form.maybe_text("kiln");
  const auto soak = form.maybe_duration("soak");
  if (!firing) form.add(firing.problem());
  if (form.refused()) return form.problems();
  if (start < work.now()) return Problem{"start", "That time is past.", "Choose a time to come."};
  ShopCase shop = shop_case(work.shop(), work.now(), Keep::all_booked, days_ahead);
  auto candidate = as_planned(shop, *firing);
  if (!candidate)
    return Problem{"firing", "A blade of this firing has been fired or scrapped since.",
                   "Cancel it and book anew."};
  std::erase(shop.a_case.locked, *candidate);
  if (candidate->members.size() < firing->blades.size())
    work.warn("Blades that no longer need this firing are taken out of it.");
  candidate->start_min = shop.minute(start);
  if (soak) candidate->soak_min = static_cast<int>(std::chrono::ceil<minutes>(*soak).count());
  if (to) {
    const auto kept = find_kiln(work.shop(), *to, "kiln");
    if (!kept) return kept.problems();
    candidate->kiln = kept->name;
  }
  auto moved = passed(work, shop, *candidate);
  if (!work.problems().empty()) return work.problems();
  if (!moved)
    return Problem{"start", "The firing cannot be there.", "Choose another time or kiln."};
  moved->number = firing->number;
  moved->locked = firing->locked || work.set_aside_anything();
  work.advise(advice_on(work.shop(), *moved, work.settings().temperature_unit));
  change(work.shop(), firing->id, *moved);
  keep_reason(work, firing->id, moved->number);
  return work.done(std::to_string(moved->number));
}

Outcome<ActionResult> cancel_one(Work& work, Form& form) {
  const auto firing = booked_firing(work, form);
  const auto why = form.text("why");
  if (!firing) form.add(firing.problem());
  if (form.refused()) return form.problems();
  kiln::Firing changed = *firing;
  changed.state = kiln::FiringState::cancelled;
  changed.cancelled_why = why;
  change(work.shop(), firing->id, changed);
  return work.done(std::to_string(firing->number));
}

Outcome<ActionResult> set_lock(Work& work, Form& form, bool locked) {
  const auto firing = booked_firing(work, form);
  if (!firing) return firing.problems();
  if (form.refused()) return form.problems();
  kiln::Firing changed = *firing;
  changed.locked = locked;
  change(work.shop(), firing->id, changed);
  return work.done(std::to_string(firing->number));
}

const Field firing_field{"firing", "Firing", FieldKind::firing, true, "12"};

}  // namespace

const Action book_firing{
    "book_firing",
    "Book a firing for blades whose next heat step it is.",
    {{"kiln", "Kiln", FieldKind::kiln, true, "Long kiln"},
     {"blades", "Blades, in the order of the quench", FieldKind::text, true, "41,42,43"},
     {"start", "At heat and loading at", FieldKind::instant, true, "2026-11-26 09:00"},
     {"temperature", "Temperature", FieldKind::temperature, false, "805 C"},
     {"soak", "Soak", FieldKind::duration, false, "10 min"},
     {"locked", "Keep it there", FieldKind::yes_no, false, "no", "no"}},
    book_one};
const Action move_firing{
    "move_firing",
    "Move a booked firing to another time or kiln.",
    {firing_field,
     {"start", "At heat and loading at", FieldKind::instant, true, "2026-11-26 13:00"},
     {"kiln", "Kiln", FieldKind::kiln},
     {"soak", "Soak", FieldKind::duration}},
    move_one};
const Action cancel_firing{"cancel_firing",
                           "Cancel a booked firing.",
                           {firing_field, {"why", "Why", FieldKind::text, true, "element broken"}},
                           cancel_one};
const Action lock_firing{"lock_firing",
                         "Keep a booked firing where it is when planning anew.",
                         {firing_field},
                         [](Work& work, Form& form) { return set_lock(work, form, true); }};
const Action unlock_firing{"unlock_firing",
                           "Let a new plan move a booked firing.",
                           {firing_field},
                           [](Work& work, Form& form) { return set_lock(work, form, false); }};

}  // namespace tangmark::db
