// SPDX-License-Identifier: MIT
#include "gui/command/shop_plan.h"

#include "db/actions/action.h"
#include "db/store/kiln_fit_store.h"
#include "db/store/kiln_store.h"
#include "db/store/plan_difference.h"
#include "db/store/settings_store.h"
#include "domain/kiln/plan_json.h"
#include "domain/kiln/replanning.h"
#include "gui/command/json_text.h"
#include "gui/command/search_options.h"
#include "gui/command/shop_of.h"

namespace tangmark::command {
namespace {

using What = db::PlanDifference::What;

// What was planned, against what is booked.
struct Planned {
  const db::ShopFile& file;
  commission::ShopSettings settings;
  db::ShopCase shop;
  kiln::Replanned found;
  db::PlanDifference difference;
};

std::string kiln_name(const db::ShopFile& file, kiln::KilnId id) {
  for (const kiln::KeptKiln& k : db::all_kilns(file))
    if (k.id == id) return k.name;
  return "?";
}

std::string blade_names(const db::ShopCase& shop, const kiln::Firing& firing) {
  std::string names;
  for (const auto& member : firing.blades)
    for (const auto& [name, chain] : shop.chains)
      if (chain.blade == member.blade) names += (names.empty() ? "" : " ") + name;
  return names;
}

Money cost_of(const Planned& p, Energy energy) {
  return scaled_half_even(p.settings.electricity_per_kwh, energy.joules(), 3'600'000);
}

std::int64_t whole_minutes(Duration span) {
  return std::chrono::duration_cast<std::chrono::minutes>(span).count();
}

std::string_view one_word(What what) {
  switch (what) {
    case What::kept:
      return "kept";
    case What::reloaded:
      return "reloaded";
    case What::moved:
      return "moved";
    case What::added:
      return "added";
    case What::dropped:
      return "dropped";
  }
  return "";
}

Json changes_json(const Planned& p) {
  Json changes = Json::array();
  for (const auto& change : p.difference.changes) {
    Json one{{"what", one_word(change.what)},
             {"kiln", kiln_name(p.file, change.firing.kiln)},
             {"start", to_stored(change.firing.starts_at)},
             {"end", to_stored(change.firing.ends_at)},
             {"temperature_c", change.firing.set.in_celsius()},
             {"blades", blade_names(p.shop, change.firing)},
             {"why", change.why}};
    if (change.before) {
      one["firing"] = change.before->number;
      one["was"] = to_stored(change.before->starts_at);
      one["was_kiln"] = kiln_name(p.file, change.before->kiln);
    }
    changes.push_back(std::move(one));
  }
  return changes;
}

Json shifts_json(const Planned& p) {
  Json all = Json::array();
  for (const auto& shift : p.difference.shifts) {
    Json one{{"blade", shift.blade},      {"done_before", nullptr},
             {"done_after", nullptr},     {"late_before_min", nullptr},
             {"late_after_min", nullptr}, {"sentence", db::in_words(shift, p.settings.zone)}};
    if (shift.before) {
      one["done_before"] = to_stored(*shift.before);
      one["late_before_min"] = whole_minutes(shift.late_before);
    }
    if (shift.after) {
      one["done_after"] = to_stored(*shift.after);
      one["late_after_min"] = whole_minutes(shift.late_after);
    }
    all.push_back(std::move(one));
  }
  return all;
}

Json difference_json(const Planned& p) {
  const auto energy = [&](Energy e) {
    return Json{{"kwh", e.in_kilowatt_hours()}, {"minor", cost_of(p, e).minor()}};
  };
  return {{"changes", db::counted_changes(p.difference)},
          {"blades", shifts_json(p)},
          {"energy_before", energy(p.difference.energy_before)},
          {"energy_after", energy(p.difference.energy_after)},
          {"hands_on_before_min", whole_minutes(p.difference.hands_on_before)},
          {"hands_on_after_min", whole_minutes(p.difference.hands_on_after)},
          {"moved_firings", p.difference.moved},
          {"cost_of_moved_firing_minor", p.settings.cost_of_moved_firing.minor()},
          {"currency", p.settings.currency.code()}};
}

Json unplaced_json(const std::vector<kiln::Unplaced>& unplaced) {
  Json all = Json::array();
  for (const auto& u : unplaced)
    all.push_back({{"blade", u.blade},
                   {"op", u.operation},
                   {"rule", "R" + std::to_string(u.rule)},
                   {"why", u.why},
                   {"change", u.change}});
  return all;
}

void say_json_plan(const Planned& p, const std::string& plan_text, bool stored) {
  Json json = Json::parse(plan_text);
  json["origin"] = to_stored(p.shop.origin);
  json["changes"] = changes_json(p);
  json["difference"] = difference_json(p);
  json["unplaced"] = unplaced_json(p.found.answer.unplaced);
  json["left_aside"] = p.shop.left_aside;
  json["plate_values"] = p.shop.plate_kilns;
  json["objective"] = p.found.answer.cost.total_mc();
  json["lower_bound"] = p.found.answer.bound_mc;
  json["objective_with_moves"] = p.found.total_mc;
  json["lower_bound_with_moves"] = p.found.bound_mc;
  json["stored"] = stored;
  say_json(json);
}

void say_change(const Planned& p, const db::PlanDifference::Change& change) {
  std::string line = "  " + db::in_words(change.what);
  if (change.before) line += " firing " + std::to_string(change.before->number);
  line += ": " + kiln_name(p.file, change.firing.kiln) + ", " +
          to_text(change.firing.set, p.settings.temperature_unit) + ", " +
          to_text(change.firing.starts_at, p.settings.zone) + " to " +
          clock_text(change.firing.ends_at, p.settings.zone);
  const std::string blades = blade_names(p.shop, change.firing);
  if (!blades.empty()) line += ", blades " + blades;
  if (change.what == What::moved)
    line += " (was " + to_text(change.before->starts_at, p.settings.zone) + ", " +
            kiln_name(p.file, change.before->kiln) + ")";
  say(line);
  if (!change.why.empty()) say("      " + change.why);
}

void say_plan(const Planned& p) {
  const db::PlanDifference& d = p.difference;
  say("Against what is booked: " + db::counted_changes(d) + ".");
  for (const auto& change : d.changes) say_change(p, change);
  for (const auto& shift : d.shifts) say("  " + db::in_words(shift, p.settings.zone));
  say("Energy " + to_text(d.energy_after) + ", " + to_text(cost_of(p, d.energy_after)) +
      " (as booked " + to_text(d.energy_before) + ", " + to_text(cost_of(p, d.energy_before)) +
      ").");
  say("Your hands " + to_text(d.hands_on_after) + " (as booked " + to_text(d.hands_on_before) +
      ").");
  if (!p.shop.movable.empty())
    say("Booked firings that do not stay: " + std::to_string(d.moved) + ", each reckoned as " +
        to_text(p.settings.cost_of_moved_firing) + " (setting cost_of_moved_firing).");
  if (p.found.answer.proven) say("No better plan exists.");
  for (const auto& u : p.found.answer.unplaced)
    say("Blade " + u.blade + " cannot be placed: " + u.why + " " + u.change);
  for (const auto& line : p.shop.left_aside) say(line);
  for (const kiln::KeptKiln& k : db::all_kilns(p.file))
    if (p.shop.kilns.contains(k.name))
      say(db::values_in_words(p.file, k, p.settings.temperature_unit));
}

Planned planned(const db::ShopFile& file, Instant from, const Search& search) {
  Planned p{
      file, db::load_settings(file), db::shop_case(file, from, db::Keep::locked_only), {}, {}};
  kiln::SearchLimits limits = search.limits;
  limits.words = p.shop.words();
  p.found = kiln::replan_firings(p.shop.a_case, p.shop.booked(), limits, search.seed);
  p.difference = db::difference(p.shop, p.found.answer.plan);
  return p;
}

}  // namespace

Exit plan_shop(const Call& call) {
  const auto search = search_of(call, 5.0);
  if (!search) return refused(call, search.problems());
  return with_shop(call, [&](db::ShopFile& file) {
    Instant from = call.now;
    if (const auto given = call.option("from")) {
      const auto at = parse_instant(*given, db::load_settings(file).zone, call.now, "--from");
      if (!at) return refused(call, at.problems());
      from = *at;
    }
    const Planned p = planned(file, from, *search);
    const std::string plan_text = kiln::write_firing_plan(p.found.answer.plan);
    if (call.has("store")) {
      auto stored = db::perform(
          file, "accept_plan", {{"from", to_stored(p.shop.origin)}, {"plan", plan_text}}, call.now);
      if (!stored) return refused(call, stored.problems());
    }
    if (call.has("json")) {
      say_json_plan(p, plan_text, call.has("store"));
    } else {
      say_plan(p);
      say(call.has("store") ? "The plan is booked." : "Nothing is stored yet: --store books it.");
    }
    return p.found.answer.unplaced.empty() ? Exit::done : Exit::answer_is_no;
  });
}

}  // namespace tangmark::command
