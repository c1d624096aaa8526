// SPDX-License-Identifier: MIT
#include "db/actions/bench_log.h"

#include <fmt/format.h>

#include <algorithm>

#include "db/store/log_store.h"
#include "db/store/operation_store.h"
#include "db/store/reading_store.h"
#include "db/store/route_store.h"
#include "db/store/step_advice_reader.h"
#include "domain/blade/hardening_rules.h"
#include "domain/blade/log_rules.h"
#include "domain/blade/tempering_rules.h"

namespace tangmark::db {
namespace {

using namespace blade;

// The end of a step may lie further back than the moment it is typed.
constexpr auto live_within = std::chrono::minutes(15);

void add(Catches& all, Catch one) {
  if (one) all.push_back(std::move(*one));
}

void add(Catches& all, Catches more) {
  for (Caught& one : more) all.push_back(std::move(one));
}

Catch scrapped(const KeptBlade& blade) {
  if (!blade.scrapped_at) return std::nullopt;
  return Caught{27, Weight::stop, "blade", fmt::format("Blade {} was scrapped.", blade.number),
                "Nothing more is logged on it."};
}

BladeState state_with(const BladeOnRecord& record, const LogEntry& entry) {
  std::vector<KeptLogEntry> log = record.log;
  const auto later = std::find_if(
      log.begin(), log.end(), [&](const LogEntry& e) { return e.started_at > entry.started_at; });
  log.insert(later, KeptLogEntry(LogEntryId{0}, entry));
  return state_of(record.blade, log, record.route, record.findings);
}

Instant end_of(const LogEntry& entry) {
  return entry.time_out.value_or(entry.ended_at.value_or(entry.started_at));
}

// A temper logged as it ends, with no start given, may have begun its hold earlier.
Instant begun_at(const LogEntry& entry) {
  if (entry.time_in) return *entry.time_in;
  if (entry.ended_at || !entry.hold) return entry.started_at;
  return entry.started_at - *entry.hold;
}

void heat_catches(const Work& work, const BladeOnRecord& record, const LogEntry& entry,
                  Catches& all) {
  const BladeState& state = record.state;
  const BladeState after = state_with(record, entry);
  if (entry.operation == "harden" && after.hardenings > state.hardenings)
    add(all, harden_too_early(record.blade.number, record.route));
  if (entry.operation == "temper") {
    add(all, temper_late(state, temper_clock(work.settings()), begun_at(entry)));
    add(all, not_cooled_before(state, entry.cooled_to_room));
  } else if (state.quenched_at && entry.started_at >= *state.quenched_at) {
    add(all, work_before_temper(state, entry.operation, entry.started_at));
  }
  add(all, hardened_again(state, after, record.readings));
}

void take_back_old_heat(Work& work, const BladeOnRecord& record, const LogEntry& entry) {
  const BladeState after = state_with(record, entry);
  const Instant heated_at = end_of(entry);
  for (const RouteStepId step : steps_to_do_again(record.route, after, heated_at))
    store_step_done(work.shop(), step, std::nullopt);
  for (const ReadingId reading : readings_to_void(record.readings, heated_at))
    store_reading_void(
        work.shop(), reading,
        "the blade was heated again on " + to_stored(work.settings().zone.date_of(heated_at)));
}

std::optional<RouteStepId> step_to_tick(const ShopFile& shop, const LogEntry& entry) {
  if (entry.step) return entry.step;
  const auto step = open_step(shop, entry.blade, entry.operation);
  if (!step) return std::nullopt;
  return step->id;
}

void fill_in(Work& work, const BladeState& state, LogEntry& entry) {
  entry.entered_at = work.now();
  if (entry.how_timed == HowTimed::live &&
      (work.entered_later() || work.now() - end_of(entry) > live_within))
    entry.how_timed = HowTimed::entered_later;
  if (entry.operation == "temper" && !entry.temper_number)
    entry.temper_number = state.tempers_done + state.tempers_not_cooled + 1;
  // A warm temper does not count, so the one after it is still to come.
  const bool too_warm =
      entry.operation == "temper" && state.tempers_done > 0 && entry.cooled_to_room == false;
  if (!too_warm) entry.step = step_to_tick(work.shop(), entry);
}

}  // namespace

Catches catches_of_entry(const Work& work, const BladeOnRecord& record, const LogEntry& entry) {
  const Zone& zone = work.settings().zone;
  const auto operation = operation_named(work.shop(), entry.operation, "operation");
  Catches all;
  add(all, scrapped(record.blade));
  add(all, times_out_of_order(entry));
  add(all, out_of_order_with_log(entry, record.log, record.blade.started_at, zone));
  add(all,
      clock_went_backwards(work.now(), newest_entry_typed_at(work.shop(), record.blade.id), zone));
  add(all, shown_twice(work.at(), zone));
  add(all, fired_with_handle(record.blade.number, entry.operation, operation && operation->hot,
                             record.state.handle_fitted_at));
  heat_catches(work, record, entry, all);
  if (operation && operation->after_temper)
    add(all, blade::blocks(record.state, Stage::handle, work.now()));
  add(all, no_hours(entry));
  add(all, span_too_long(entry, work.settings().timer_limit));
  return all;
}

std::optional<LogEntryId> write_log(Work& work, const KeptBlade& blade, LogEntry entry) {
  const BladeOnRecord record = load_record(work.shop(), blade);
  fill_in(work, record.state, entry);
  const Catches caught = catches_of_entry(work, record, entry);
  if (!work.passes(caught)) return std::nullopt;
  const bool heated_again =
      std::any_of(caught.begin(), caught.end(), [](const Caught& c) { return c.number == 12; });
  if (heated_again) take_back_old_heat(work, record, entry);
  work.advise(advice_on(work.shop(), record, entry, work.settings().temperature_unit));
  const LogEntryId id = insert_log_entry(work.shop(), entry);
  if (entry.step) store_step_done(work.shop(), *entry.step, end_of(entry));
  return id;
}

}  // namespace tangmark::db
