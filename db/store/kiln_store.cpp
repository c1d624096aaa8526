// SPDX-License-Identifier: MIT
#include "db/store/kiln_store.h"

#include <algorithm>

#include "db/row.h"

namespace tangmark::db {
namespace {

using kiln::Firing;
using kiln::KeptFiring;
using kiln::KeptKiln;
using kiln::Kiln;

KeptKiln read_kiln(const Query& q) {
  Kiln k;
  k.name = q.text("name");
  k.kind = q.word<kiln::KilnKind>("kind");
  k.slots = q.integer("slots");
  k.usable_length = q.length("usable_length_nm");
  k.low = q.temperature("low_k1800");
  k.high = q.temperature("high_k1800");
  k.heat_per_h = q.difference("heat_k1800_per_h");
  k.load_per_h = q.maybe_difference("load_k1800_per_h");
  k.tau = q.duration("tau_s");
  k.heat_w = q.integer("heat_w");
  k.hold_mw_per_c = q.integer("hold_mw_per_c");
  k.load = q.duration("load_s");
  k.unload = q.duration("unload_s");
  k.circuit = q.maybe_text("circuit");
  k.values_from = q.text("values_from");
  k.checked_on = q.maybe_date("checked_on");
  k.check_days = q.maybe_integer("check_days");
  k.wear = q.money("wear_minor", "currency");
  k.out_of_use_on = q.maybe_date("out_of_use_on");
  return {q.id<kiln::KilnId>("id"), std::move(k)};
}

Row row_of(const Kiln& k) {
  Row row("kiln");
  row.set("name", k.name)
      .set_word("kind", k.kind)
      .set("slots", k.slots)
      .set("usable_length_nm", k.usable_length)
      .set("low_k1800", k.low)
      .set("high_k1800", k.high)
      .set("heat_k1800_per_h", k.heat_per_h)
      .set("tau_s", k.tau)
      .set("load_k1800_per_h", k.load_per_h)
      .set("heat_w", k.heat_w)
      .set("hold_mw_per_c", k.hold_mw_per_c)
      .set("load_s", k.load)
      .set("unload_s", k.unload)
      .set("circuit", k.circuit)
      .set("values_from", k.values_from)
      .set("checked_on", k.checked_on)
      .set("check_days", k.check_days)
      .set("wear_minor", k.wear)
      .set("currency", k.wear.currency().code())
      .set("out_of_use_on", k.out_of_use_on);
  return row;
}

void read_blades(const ShopFile& shop, KeptFiring& firing) {
  Query q(shop,
          "SELECT blade_id, route_step_id, position, time_in, time_out FROM firing_blade "
          "WHERE firing_id = ? ORDER BY position");
  q.bind(firing.id);
  while (q.next())
    firing.blades.push_back({q.id<blade::BladeId>("blade_id"),
                             q.maybe_id<blade::RouteStepId>("route_step_id"), q.integer("position"),
                             q.maybe_instant("time_in"), q.maybe_instant("time_out")});
}

KeptFiring read_firing(const ShopFile& shop, const Query& q) {
  Firing f(q.id<kiln::KilnId>("kiln_id"));
  f.number = q.integer("number");
  f.kind = q.word<kiln::FiringKind>("kind");
  f.set = q.temperature("set_k1800");
  f.soak = q.duration("soak_s");
  f.rest = q.duration("rest_s");
  f.cool_per_h = q.maybe_difference("cool_k1800_per_h");
  f.cool_to = q.maybe_temperature("cool_to_k1800");
  f.starts_at = q.instant("starts_at");
  f.ends_at = q.instant("ends_at");
  f.heat_from = q.instant("heat_from");
  f.state = q.word<kiln::FiringState>("state");
  f.locked = q.yes("locked");
  f.actual_start = q.maybe_instant("actual_start");
  f.actual_end = q.maybe_instant("actual_end");
  f.energy = q.energy("energy_j");
  f.metered = q.maybe_energy("metered_j");
  f.cancelled_why = q.maybe_text("cancelled_why");
  KeptFiring kept(q.id<kiln::FiringId>("id"), std::move(f));
  read_blades(shop, kept);
  return kept;
}

Row row_of(const Firing& f) {
  Row row("firing");
  row.set("number", f.number)
      .set("kiln_id", f.kiln)
      .set_word("kind", f.kind)
      .set("set_k1800", f.set)
      .set("soak_s", f.soak)
      .set("rest_s", f.rest)
      .set("cool_k1800_per_h", f.cool_per_h)
      .set("cool_to_k1800", f.cool_to)
      .set("starts_at", f.starts_at)
      .set("ends_at", f.ends_at)
      .set("heat_from", f.heat_from)
      .set_word("state", f.state)
      .set("locked", f.locked)
      .set("actual_start", f.actual_start)
      .set("actual_end", f.actual_end)
      .set("energy_j", f.energy)
      .set("metered_j", f.metered)
      .set("cancelled_why", f.cancelled_why);
  return row;
}

Row row_of(kiln::FiringId firing, const kiln::FiringBlade& b) {
  Row row("firing_blade");
  row.set("firing_id", firing)
      .set("blade_id", b.blade)
      .set("route_step_id", b.step)
      .set("position", b.position)
      .set("time_in", b.time_in)
      .set("time_out", b.time_out);
  return row;
}

// Blades that were booked for it and are no longer in it.
void take_out_the_others(const ShopFile& shop, kiln::FiringId id, const Firing& firing) {
  std::vector<std::int64_t> others;
  {
    Query q(shop, "SELECT id, blade_id FROM firing_blade WHERE firing_id = ?");
    q.bind(id);
    while (q.next()) {
      const auto blade = q.id<blade::BladeId>("blade_id");
      const bool stays = std::any_of(firing.blades.begin(), firing.blades.end(),
                                     [&](const kiln::FiringBlade& b) { return b.blade == blade; });
      if (!stays) others.push_back(q.integer("id"));
    }
  }
  for (const std::int64_t row : others) delete_row(shop, "firing_blade", row);
}

std::optional<KeptFiring> first_of(const ShopFile& shop, Query& q) {
  if (!q.next()) return std::nullopt;
  return read_firing(shop, q);
}

}  // namespace

std::vector<KeptKiln> all_kilns(const ShopFile& shop) {
  Query q(shop, "SELECT * FROM kiln ORDER BY out_of_use_on IS NOT NULL, kind, name");
  std::vector<KeptKiln> kilns;
  while (q.next()) kilns.push_back(read_kiln(q));
  return kilns;
}

Outcome<KeptKiln> find_kiln(const ShopFile& shop, std::string_view name, std::string_view field) {
  std::string known;
  for (KeptKiln& k : all_kilns(shop)) {
    if (k.name == name) return std::move(k);
    known += (known.empty() ? "" : ", ") + k.name;
  }
  return Problem{std::string(field), "There is no kiln \"" + std::string(name) + "\".",
                 known.empty() ? "Add it first with add_kiln." : "The shop has: " + known + "."};
}

kiln::KilnId add(const ShopFile& shop, const Kiln& k) {
  return kiln::KilnId{row_of(k).insert(shop)};
}
void change(const ShopFile& shop, kiln::KilnId id, const Kiln& k) {
  row_of(k).update(shop, id.row());
}

std::vector<kiln::KeptRecipe> all_recipes(const ShopFile& shop) {
  Query q(shop, "SELECT * FROM recipe ORDER BY name");
  std::vector<kiln::KeptRecipe> recipes;
  while (q.next()) {
    kiln::Recipe r;
    r.name = q.text("name");
    r.kind = q.word<kiln::FiringKind>("kind");
    r.temperature = q.temperature("temperature_k1800");
    r.low = q.temperature("low_k1800");
    r.high = q.temperature("high_k1800");
    r.soak = q.duration("soak_s");
    r.soak_max = q.duration("soak_max_s");
    r.cool_per_h = q.maybe_difference("cool_k1800_per_h");
    r.cool_to = q.maybe_temperature("cool_to_k1800");
    r.preheat = q.maybe_text("preheat");
    r.note = q.maybe_text("note");
    recipes.emplace_back(q.id<kiln::RecipeId>("id"), std::move(r));
  }
  return recipes;
}

kiln::RecipeId add(const ShopFile& shop, const kiln::Recipe& r) {
  Row row("recipe");
  row.set("name", r.name)
      .set_word("kind", r.kind)
      .set("temperature_k1800", r.temperature)
      .set("low_k1800", r.low)
      .set("high_k1800", r.high)
      .set("soak_s", r.soak)
      .set("soak_max_s", r.soak_max)
      .set("cool_k1800_per_h", r.cool_per_h)
      .set("cool_to_k1800", r.cool_to)
      .set("preheat", r.preheat)
      .set("note", r.note);
  return kiln::RecipeId{row.insert(shop)};
}

std::vector<KeptFiring> firings_after(const ShopFile& shop, Instant from, Cancelled cancelled) {
  Query q(shop, std::string("SELECT * FROM firing WHERE coalesce(actual_end, ends_at) > ? ") +
                    (cancelled == Cancelled::included ? "" : "AND state <> 'cancelled' ") +
                    "ORDER BY starts_at, id");
  q.bind(from);
  std::vector<KeptFiring> firings;
  while (q.next()) firings.push_back(read_firing(shop, q));
  return firings;
}

std::vector<KeptFiring> booked_firings(const ShopFile& shop) {
  Query q(shop, "SELECT * FROM firing WHERE state = 'booked' ORDER BY starts_at, id");
  std::vector<KeptFiring> firings;
  while (q.next()) firings.push_back(read_firing(shop, q));
  return firings;
}

std::optional<KeptFiring> last_run(const ShopFile& shop, kiln::KilnId kiln, Instant at) {
  Query q(shop,
          "SELECT * FROM firing WHERE kiln_id = ? AND state IN('done','running') "
          "AND actual_start <= ? ORDER BY actual_start DESC LIMIT 1");
  q.bind(kiln).bind(at);
  return first_of(shop, q);
}

Outcome<KeptFiring> find_firing(const ShopFile& shop, std::string_view number,
                                std::string_view field) {
  Query q(shop, "SELECT * FROM firing WHERE CAST(number AS TEXT) = ?");
  q.bind(number);
  if (auto firing = first_of(shop, q)) return std::move(*firing);
  return Problem{std::string(field), "There is no firing " + std::string(number) + ".",
                 "Look its number up in the kiln place or with: tangmark plan FILE."};
}

kiln::FiringId add(const ShopFile& shop, const Firing& firing) {
  const kiln::FiringId id{row_of(firing).insert(shop)};
  for (const kiln::FiringBlade& b : firing.blades) row_of(id, b).insert(shop);
  return id;
}

void change(const ShopFile& shop, kiln::FiringId id, const Firing& firing) {
  row_of(firing).update(shop, id.row());
  take_out_the_others(shop, id, firing);
  for (const kiln::FiringBlade& b : firing.blades) {
    Query q(shop, "SELECT id FROM firing_blade WHERE firing_id = ? AND blade_id = ?");
    q.bind(id).bind(b.blade);
    if (q.next())
      row_of(id, b).update(shop, q.integer("id"));
    else
      row_of(id, b).insert(shop);
  }
}

}  // namespace tangmark::db
