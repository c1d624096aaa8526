// SPDX-License-Identifier: MIT
#include "db/actions/bench_fields.h"

#include <fmt/format.h>

#include "db/row.h"
#include "db/store/blade_store.h"
#include "domain/blade/operation.h"

namespace tangmark::db {
namespace {

using namespace blade;

bool is_bench_work(std::string_view operation) {
  const auto known = trade_operation(operation);
  return !known ||
         (known->heat == Heat::none && operation != "sub-zero" && operation != "hold warm");
}

std::optional<kiln::FiringId> asked_firing(Work& work, Form& form) {
  const auto number = form.maybe_whole("firing", 1, 1'000'000'000);
  if (!number) return std::nullopt;
  Query query(work.shop(), "SELECT id FROM firing WHERE number = ?");
  query.bind(*number);
  if (query.next()) return query.id<kiln::FiringId>("id");
  form.add({"firing", fmt::format("There is no firing {}.", *number),
            "Give the number of a booked firing."});
  return std::nullopt;
}

}  // namespace

Field blade_field() {
  return {"blade", "Blade", FieldKind::blade, true, "the number on its tang, such as 23"};
}

std::optional<KeptBlade> asked_blade(Work& work, Form& form) {
  const std::string number = form.text("blade");
  if (number.empty()) return std::nullopt;
  auto blade = blade_named(work.shop(), number, "blade");
  if (blade) return std::move(blade).value();
  form.add(blade.problem());
  return std::nullopt;
}

std::vector<Field> time_fields() {
  return {{"started", "Started", FieldKind::instant, false, "when it began; it ended at \"at\""},
          {"hands_on", "Hands-on time", FieldKind::duration, false, "1 h 20 min"},
          {"attended", "Attended wait", FieldKind::duration, false, "20 min"},
          {"who", "Done by", FieldKind::text, false, "an outside hand; empty for this shop"},
          {"estimated", "Time estimated", FieldKind::yes_no, false,
           "yes when nobody looked at the clock"},
          {"note", "Note", FieldKind::long_text}};
}

std::vector<Field> heat_fields() {
  return {{"read", "Read", FieldKind::temperature, false, "what a display or thermometer showed"},
          {"time_in", "Time in", FieldKind::instant, false, "10:05"},
          {"time_out", "Time out", FieldKind::instant, false, "10:17"},
          {"cooling", "Cooling", FieldKind::text, false, "still air, oven ramp, vermiculite"},
          {"protection", "Protection", FieldKind::text, false, "foil, paste, bare"},
          {"firing", "Firing", FieldKind::firing, false, "number of the firing it was in"}};
}

std::vector<Field> joined(std::initializer_list<std::vector<Field>> groups) {
  std::vector<Field> all;
  for (const auto& group : groups) all.insert(all.end(), group.begin(), group.end());
  return all;
}

LogEntry read_entry(Work& work, Form& form, BladeId blade, std::string operation) {
  LogEntry entry{.blade = blade};
  entry.operation = std::move(operation);
  const auto started = form.maybe_instant("started");
  entry.started_at = started.value_or(work.at());
  if (started) entry.ended_at = work.at();
  const auto hands_on = form.maybe_duration("hands_on");
  const auto attended = form.maybe_duration("attended");
  entry.hands_on = hands_on.value_or(Duration());
  entry.attended = attended.value_or(Duration());
  if (started && !hands_on && !attended && is_bench_work(entry.operation) && work.at() > *started)
    entry.hands_on = work.at() - *started;
  entry.who = form.maybe_text("who");
  if (form.yes("estimated")) entry.how_timed = HowTimed::estimated;
  entry.note = form.maybe_text("note");
  return entry;
}

void read_heat(Work& work, Form& form, LogEntry& entry) {
  entry.read = form.maybe_temperature("read");
  entry.time_in = form.maybe_instant("time_in");
  entry.time_out = form.maybe_instant("time_out");
  entry.cooling = form.maybe_text("cooling");
  entry.protection = form.maybe_text("protection");
  entry.firing = asked_firing(work, form);
}

}  // namespace tangmark::db
