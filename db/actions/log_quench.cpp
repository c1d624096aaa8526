// SPDX-License-Identifier: MIT
#include "db/actions/asked.h"
#include "db/actions/bench_fields.h"
#include "db/actions/bench_log.h"
#include "db/actions/blade_action_list.h"
#include "db/store/named.h"
#include "domain/blade/hardening_rules.h"
#include "domain/blade/tempering_rules.h"

namespace tangmark::db {
namespace {

using namespace blade;

std::vector<Field> quench_fields() {
  return {{"bath", "Bath", FieldKind::bath, false, "the tank it went into"},
          {"medium", "Medium", FieldKind::text, false,
           "when it is no bath of the shop: still air, plates"},
          {"bath_temperature", "Bath at", FieldKind::temperature, false, "55 C"},
          {"seconds_to_bath", "Seconds to bath", FieldKind::number, false, "1.5"},
          {"set", "Set point", FieldKind::temperature, false, "802 C"},
          {"hold", "Soak", FieldKind::duration, false, "10 min"},
          {"clay", "Clay", FieldKind::yes_no, false, "yes when it was clayed"},
          {"edge_only", "Edge only", FieldKind::yes_no, false, "yes for an edge quench"},
          {"warp", "Warp", FieldKind::length, false, "0.4 mm"},
          {"result", "Result", FieldKind::text, false, "file skates"}};
}

void read_quench(Form& form, LogEntry& entry) {
  entry.medium = form.maybe_text("medium");
  entry.bath_temperature = form.maybe_temperature("bath_temperature");
  if (const auto seconds = form.maybe_quantity("seconds_to_bath"))
    entry.to_bath = std::chrono::milliseconds(seconds->millionths() / 1000);
  entry.set = form.maybe_temperature("set");
  entry.hold = form.maybe_duration("hold");
  entry.clay = form.maybe_yes("clay");
  entry.edge_only = form.maybe_yes("edge_only");
  entry.warp = form.maybe_length("warp");
  entry.result = form.maybe_text("result");
}

void say_when_temper_is_due(Work& work, const KeptBlade& blade) {
  const auto due = temper_due_at(load_state(work.shop(), blade), temper_clock(work.settings()));
  if (due) work.warn("Temper it by " + to_text(*due, work.settings().zone) + ".");
}

Outcome<ActionResult> run_log_quench(Work& work, Form& form) {
  const auto blade = asked_blade(work, form);
  const auto bath = asked(work, form, "bath", bath_named);
  LogEntry entry = read_entry(work, form, blade ? blade->id : BladeId{0}, "harden");
  read_quench(form, entry);
  read_heat(work, form, entry);
  if (!bath && !entry.medium && !form.has("bath"))
    form.add({"bath", "Nobody said what it was quenched in.",
              "Give bath, or medium such as still air."});
  if (form.refused()) return form.problems();
  if (bath) {
    entry.bath = bath->id;
    if (!entry.medium) entry.medium = bath->medium;
  }
  if (!entry.time_out) entry.time_out = work.at();
  bool goes_on = true;
  if (bath) {
    const auto& settings = work.settings();
    goes_on =
        work.passes(longer_than_bath(*blade, *bath, entry.edge_only == true, settings.length_unit));
    goes_on =
        work.passes(bath_out_of_band(*bath, entry.bath_temperature, settings.temperature_unit)) &&
        goes_on;
    goes_on = work.passes(bath_check_overdue(*bath, work.at())) && goes_on;
  }
  const auto id = write_log(work, *blade, std::move(entry));
  if (!id || !goes_on) return work.problems();
  say_when_temper_is_due(work, *blade);
  return work.done(std::to_string(id->row()));
}

}  // namespace

const Action log_quench{
    "log_quench", "Log a quench at the moment it happened; the clock to the temper starts.",
    joined({{blade_field()}, quench_fields(), time_fields(), heat_fields()}), run_log_quench};

}  // namespace tangmark::db
