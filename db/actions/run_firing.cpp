// SPDX-License-Identifier: MIT
#include <algorithm>

#include "db/actions/bench_log.h"
#include "db/actions/form.h"
#include "db/actions/kiln_action_list.h"
#include "db/actions/work.h"
#include "db/row.h"
#include "db/store/blade_store.h"
#include "db/store/kiln_store.h"

namespace tangmark::db {
namespace {

// What is said once for all blades of a firing.
struct Told {
  Instant start;
  std::optional<Instant> end;
  std::optional<Temperature> read, bath_temperature;
  std::optional<std::int64_t> bath;
  std::optional<std::string> medium, cooling, protection, note;
  std::optional<Duration> to_bath;
  std::optional<bool> cooled, clay;
  std::optional<Duration> hands_on;
};

struct Times {
  std::string blade;
  Instant in, out;
};

// "41=10:02-10:21,42=10:02-10:25": each blade's own time in and out, by the clock of the start's
// day.
Outcome<std::vector<Times>> read_times(const std::vector<std::string>& parts, const Zone& zone,
                                       Instant start) {
  std::vector<Times> times;
  for (const std::string& part : parts) {
    const auto equals = part.find('='), dash = part.rfind('-');
    const Problem refused{"times", "\"" + part + "\" is not a blade with its time in and out.",
                          "Write, for example: 41=10:02-10:21,42=10:02-10:25."};
    if (equals == std::string::npos || dash == std::string::npos || dash < equals) return refused;
    const auto in = parse_instant(part.substr(equals + 1, dash - equals - 1), zone, start, "times");
    auto out = parse_instant(part.substr(dash + 1), zone, start, "times");
    if (!in || !out) return refused;
    // A firing over midnight comes out on the next day.
    if (*out < *in) out = *out + date::days(1);
    times.push_back({part.substr(0, equals), *in, *out});
  }
  return times;
}

std::string blade_number(const ShopFile& shop, blade::BladeId id) {
  Query q(shop, "SELECT number FROM blade WHERE id = ?");
  q.bind(id);
  q.next();
  return q.text("number");
}

// Where blades came out one by one and nobody noted when, they share the time: the first when the
// soak was over, the last at the end.
Times shared_times(const kiln::Firing& firing, const Told& told, std::size_t index,
                   std::string blade) {
  const Instant out = firing.kind != kiln::FiringKind::harden || firing.blades.size() < 2
                          ? *told.end
                          : told.start + firing.soak +
                                (*told.end - told.start - firing.soak) *
                                    static_cast<int>(index + 1) /
                                    static_cast<int>(firing.blades.size());
  return {std::move(blade), told.start, std::min(out, *told.end)};
}

std::string operation_of(const ShopFile& shop, const kiln::FiringBlade& member,
                         kiln::FiringKind kind) {
  if (member.step) {
    Query q(shop, "SELECT operation FROM route_step WHERE id = ?");
    q.bind(*member.step);
    if (q.next()) return q.text("operation");
  }
  return kind == kiln::FiringKind::harden   ? "harden"
         : kind == kiln::FiringKind::anneal ? "anneal"
                                            : "temper";
}

blade::LogEntry entry_of(const ShopFile& shop, const kiln::KeptFiring& firing,
                         const kiln::FiringBlade& member, const Times& times, const Told& told) {
  blade::LogEntry entry{.blade = member.blade};
  entry.step = member.step;
  entry.operation = operation_of(shop, member, firing.kind);
  entry.started_at = times.in;
  entry.ended_at = times.out;
  entry.time_in = times.in;
  entry.time_out = times.out;
  entry.hold = times.out - times.in;
  entry.hands_on = told.hands_on.value_or(Duration{}) / static_cast<int>(firing.blades.size());
  entry.firing = firing.id;
  entry.set = firing.set;
  entry.read = told.read;
  entry.protection = told.protection;
  entry.cooling = told.cooling;
  entry.note = told.note;
  if (entry.operation == "temper") entry.cooled_to_room = told.cooled;
  if (firing.kind != kiln::FiringKind::harden) return entry;
  if (told.bath) entry.bath = stock::BathId{*told.bath};
  entry.medium = told.medium;
  entry.bath_temperature = told.bath_temperature;
  if (told.to_bath) entry.to_bath = *told.to_bath;
  entry.clay = told.clay;
  return entry;
}

bool log_blade(Work& work, const kiln::KeptFiring& firing, const kiln::FiringBlade& member,
               const Times& times, const Told& told) {
  const auto blade = load_blade(work.shop(), member.blade);
  return blade && write_log(work, *blade, entry_of(work.shop(), firing, member, times, told));
}

Told read_told(Work& work, Form& form) {
  Told told;
  told.start = form.instant("start");
  told.end = form.maybe_instant("end");
  told.read = form.maybe_temperature("read");
  told.bath_temperature = form.maybe_temperature("bath_temperature");
  told.medium = form.maybe_text("medium");
  told.cooling = form.maybe_text("cooling");
  told.protection = form.maybe_text("protection");
  told.note = form.maybe_text("note");
  told.to_bath = form.maybe_duration("to_bath");
  told.cooled = form.maybe_yes("cooled_to_room");
  told.clay = form.maybe_yes("clay");
  told.hands_on = form.maybe_duration("hands_on");
  if (const auto bath = form.maybe_text("bath")) {
    Query q(work.shop(), "SELECT id, medium FROM bath WHERE name = ?");
    q.bind(*bath);
    if (!q.next())
      form.add({"bath", "There is no bath \"" + *bath + "\".", "Add it first with add_bath."});
    else {
      told.bath = q.integer("id");
      if (!told.medium) told.medium = q.text("medium");
    }
  }
  if (told.end && *told.end <= told.start)
    form.add({"end", "The firing ends before it begins.", "Correct one of the times."});
  return told;
}

Outcome<ActionResult> run_run_firing(Work& work, Form& form) {
  const auto kept = find_firing(work.shop(), form.text("firing"), "firing");
  const Told told = read_told(work, form);
  const auto metered = form.maybe_text("metered");
  const auto energy = metered ? form.take(parse_energy(*metered, "metered")) : Energy{};
  if (!kept) form.add(kept.problem());
  if (form.refused()) return form.problems();
  if (kept->state == kiln::FiringState::done || kept->state == kiln::FiringState::cancelled)
    return Problem{
        "firing",
        "Firing " + std::to_string(kept->number) + " is " + std::string(word_of(kept->state)) + ".",
        "Book and run another one; a wrong entry is set right with correct."};
  kiln::Firing firing = *kept;
  firing.actual_start = told.start;
  firing.state = told.end ? kiln::FiringState::done : kiln::FiringState::running;
  firing.actual_end = told.end;
  if (metered) firing.metered = energy;
  auto times = read_times(form.list("times"), work.settings().zone, told.start);
  if (!times) return times.problems();
  bool logged = true;
  if (told.end) {
    for (std::size_t i = 0; i < firing.blades.size(); ++i) {
      const std::string number = blade_number(work.shop(), firing.blades[i].blade);
      const auto noted = std::find_if(times->begin(), times->end(),
                                      [&](const Times& t) { return t.blade == number; });
      const Times own = noted == times->end() ? shared_times(firing, told, i, number) : *noted;
      if (own.in < told.start || own.out > *told.end)
        return Problem{"times", "Blade " + number + " is in or out outside the firing's own times.",
                       "Correct its times or the firing's."};
      firing.blades[i].time_in = own.in;
      firing.blades[i].time_out = own.out;
      logged = log_blade(work, *kept, firing.blades[i], own, told) && logged;
    }
  }
  if (!logged) return work.problems();
  change(work.shop(), kept->id, firing);
  return work.done(std::to_string(firing.number));
}

}  // namespace

const Action run_firing{"run_firing",
                        "Log a firing as it really ran; without an end it is running now.",
                        {{"firing", "Firing", FieldKind::firing, true, "12"},
                         {"start", "Loaded at", FieldKind::instant, true, "09:02"},
                         {"end", "Empty at", FieldKind::instant, false, "09:31"},
                         {"times", "Each blade's time in and out", FieldKind::text, false,
                          "41=09:02-09:17,42=09:02-09:20"},
                         {"read", "Temperature read", FieldKind::temperature, false, "806 C"},
                         {"bath", "Bath", FieldKind::bath, false, "fast oil"},
                         {"medium", "Quenched in", FieldKind::text, false, "plates"},
                         {"bath_temperature", "Bath at", FieldKind::temperature, false, "52 C"},
                         {"to_bath", "Time from kiln to bath", FieldKind::duration, false, "2 s"},
                         {"clay", "Clay on the spine", FieldKind::yes_no},
                         {"cooled_to_room", "Cold to room before this temper", FieldKind::yes_no},
                         {"cooling", "Cooled how", FieldKind::text, false, "still air"},
                         {"protection", "Protection", FieldKind::text, false, "foil"},
                         {"metered", "Energy by the meter", FieldKind::text, false, "4.2 kWh"},
                         {"hands_on", "Hands-on time in all", FieldKind::duration, false, "35 min"},
                         {"note", "Note", FieldKind::long_text}},
                        run_run_firing};

}  // namespace tangmark::db
