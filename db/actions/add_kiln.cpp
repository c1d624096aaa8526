// SPDX-License-Identifier: MIT
#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/store/kiln_store.h"

namespace tangmark::db {
namespace {

// Keeps what is there where a field is not given, so that one form both adds and changes.
template <class T>
void take(T& place, std::optional<T> given) {
  if (given) place = std::move(*given);
}

void read_limits(Form& form, kiln::Kiln& k) {
  take(k.slots, form.maybe_whole("slots", 1, 60));
  take(k.usable_length, form.maybe_length("usable_length"));
  take(k.low, form.maybe_temperature("lowest"));
  take(k.high, form.maybe_temperature("highest"));
  take(k.heat_per_h, form.maybe_temperature_step("heats_per_hour"));
  take(k.tau, form.maybe_duration("cooling_time_constant"));
  take(k.heat_w, form.maybe_whole("heating_watts", 50, 60'000));
  take(k.hold_mw_per_c, form.maybe_whole("holding_mw_per_c", 1, 60'000));
  take(k.load, form.maybe_duration("load"));
  take(k.unload, form.maybe_duration("unload"));
  if (k.low >= k.high)
    form.add(
        {"highest", "The highest temperature is not above the lowest.", "Correct one of them."});
  if (k.heat_per_h < TemperatureDifference::celsius(10))
    form.add({"heats_per_hour", "A kiln that heats so slowly reaches nothing.",
              "Give at least 10 C, such as 600 C."});
  if (k.tau < std::chrono::minutes(5))
    form.add({"cooling_time_constant", "No kiln cools so fast.",
              "Give the minutes in which the difference to the room falls to 37 %."});
}

void read_rest(Form& form, kiln::Kiln& k) {
  if (const auto circuit = form.maybe_text("circuit")) k.circuit = *circuit;
  if (const auto from = form.maybe_text("values_from")) k.values_from = *from;
  if (const auto day = form.maybe_date("checked_on")) k.checked_on = *day;
  if (const auto days = form.maybe_whole("check_days", 1, 3650)) k.check_days = *days;
  take(k.wear, form.maybe_money("wear"));
  if (const auto day = form.maybe_date("out_of_use_on")) k.out_of_use_on = *day;
}

bool is_kiln_name(const ShopFile& shop, const std::string& name) {
  for (const kiln::KeptKiln& k : all_kilns(shop))
    if (k.name == name) return true;
  return false;
}

Outcome<ActionResult> add_one(Work& work, Form& form) {
  kiln::Kiln k;
  k.name = form.text("name");
  k.kind = form.word("kind", kiln::KilnKind::kiln);
  k.wear = Money(0, work.settings().currency);
  read_limits(form, k);
  read_rest(form, k);
  if (form.refused()) return form.problems();
  if (is_kiln_name(work.shop(), k.name))
    return Problem{"name", "There is a kiln of this name.", "Choose another name."};
  add(work.shop(), k);
  return work.done(k.name);
}

Outcome<ActionResult> change_one(Work& work, Form& form) {
  const auto kept = find_kiln(work.shop(), form.text("kiln"), "kiln");
  if (!kept) return kept.problems();
  kiln::Kiln k = *kept;
  read_limits(form, k);
  read_rest(form, k);
  if (form.refused()) return form.problems();
  change(work.shop(), kept->id, k);
  return work.done(k.name);
}

std::vector<Field> limits(bool needed) {
  return {{"slots", "Blades in one firing", FieldKind::number, needed, "5"},
          {"usable_length", "Usable length", FieldKind::length, needed, "420 mm"},
          {"lowest", "Lowest set temperature", FieldKind::temperature, needed, "100 C"},
          {"highest", "Highest set temperature", FieldKind::temperature, needed, "1100 C"},
          {"heats_per_hour", "Heats by, in an hour", FieldKind::temperature_step, needed, "900 C"},
          {"cooling_time_constant", "Time constant of cooling, door shut", FieldKind::duration,
           needed, "2h 40min"},
          {"heating_watts", "Power while heating, W", FieldKind::number, needed, "2900"},
          {"holding_mw_per_c", "Holding power per degree above the room, mW", FieldKind::number,
           needed, "1100"},
          {"load", "Time to load", FieldKind::duration, false, "5 min"},
          {"unload", "Time to unload", FieldKind::duration, false, "5 min"},
          {"circuit", "Circuit", FieldKind::text, false, "shed 16 A"},
          {"values_from",
           "These values are from",
           FieldKind::choice,
           false,
           "plate",
           {},
           {"plate", "kiln records"}},
          {"checked_on", "Thermocouple checked on", FieldKind::date},
          {"check_days", "Check it every days", FieldKind::number, false, "180"},
          {"wear", "Wear for each firing", FieldKind::money, false, "1.80"},
          {"out_of_use_on", "Out of use since", FieldKind::date}};
}

std::vector<Field> behind(Field first, std::vector<Field> rest) {
  rest.insert(rest.begin(), std::move(first));
  return rest;
}

std::vector<Field> adding() {
  auto fields = limits(true);
  for (Field& field : fields)
    if (field.name == "load" || field.name == "unload") field.fallback = "5 min";
  fields.insert(fields.begin(),
                {"kind", "Kind", FieldKind::choice, true, "kiln", {}, {"kiln", "oven"}});
  return behind({"name", "Name", FieldKind::text, true, "Long kiln"}, std::move(fields));
}

}  // namespace

const Action add_kiln{"add_kiln", "Add a kiln or temper oven with its real limits.", adding(),
                      add_one};
const Action change_kiln{
    "change_kiln", "Change a kiln's limits, check date or use.",
    behind({"kiln", "Kiln", FieldKind::kiln, true, "Long kiln"}, limits(false)), change_one};

}  // namespace tangmark::db
