// SPDX-License-Identifier: MIT
#include "db/store/timer_store.h"

#include <algorithm>

#include "db/row.h"
#include "db/store/bench_time_store.h"
#include "db/store/named.h"

namespace tangmark::db {
namespace {

using namespace blade;

KeptTimer loaded(const ShopFile& shop, const Query& row) {
  const TimerId id = row.id<TimerId>("id");
  Timer timer;
  timer.number = row.integer("number");
  timer.operation = row.text("operation");
  timer.timed_as = row.word<TimedAs>("kind");
  timer.who = row.maybe_text("who");
  timer.state = row.word<TimerState>("state");
  timer.entered_at = row.instant("entered_at");
  Query blades(shop, "SELECT blade_id FROM timer_blade WHERE timer_id = ? ORDER BY id");
  blades.bind(id);
  while (blades.next()) timer.blades.push_back(blades.id<BladeId>("blade_id"));
  Query stretches(
      shop, "SELECT from_at, to_at FROM timer_stretch WHERE timer_id = ? ORDER BY from_at, id");
  stretches.bind(id);
  while (stretches.next())
    timer.stretches.push_back({stretches.instant("from_at"), stretches.maybe_instant("to_at")});
  return {id, std::move(timer)};
}

Duration planned_for(const ShopFile& shop, const Timer& timer) {
  Duration all{};
  for (const BladeId blade : timer.blades) {
    Query one(shop,
              "SELECT coalesce(sum(hands_on_s + attended_s), 0) AS planned_s FROM route_step "
              "WHERE blade_id = ? AND operation = ? AND done_at IS NULL AND skipped_why IS NULL");
    one.bind(blade).bind(timer.operation);
    if (one.next()) all += one.duration("planned_s");
  }
  return all;
}

}  // namespace

Outcome<KeptTimer> timer_named(const ShopFile& shop, std::string_view text,
                               std::string_view field) {
  const auto number = number_named(text, field);
  if (!number) return number.problem();
  Query query(shop, "SELECT * FROM timer WHERE number = ?");
  query.bind(*number);
  if (query.next()) return loaded(shop, query);
  return Problem{std::string(field), "There is no timer " + std::string(text) + ".",
                 "Question 31 lists the open ones."};
}

std::vector<KeptTimer> open_timers(const ShopFile& shop) {
  Query query(shop, "SELECT * FROM timer WHERE state IN('running', 'paused') ORDER BY number");
  std::vector<KeptTimer> all;
  while (query.next()) all.push_back(loaded(shop, query));
  return all;
}

std::optional<KeptTimer> timer_of_blade(const ShopFile& shop, BladeId blade) {
  Query query(shop,
              "SELECT timer.* FROM timer JOIN timer_blade ON timer_blade.timer_id = timer.id "
              "WHERE timer_blade.blade_id = ? AND timer.state IN('running', 'paused') "
              "ORDER BY timer.number LIMIT 1");
  query.bind(blade);
  if (!query.next()) return std::nullopt;
  return loaded(shop, query);
}

std::vector<KeptTimer> timers_beside(const ShopFile& shop, const KeptTimer& timer) {
  Query query(shop, R"(
SELECT * FROM timer WHERE id IN(
  SELECT timer_id FROM timer_stretch WHERE to_at IS NULL OR to_at >= ?) ORDER BY number)");
  query.bind(timer.started_at());
  std::vector<KeptTimer> all;
  while (query.next()) all.push_back(loaded(shop, query));
  return all;
}

TimerId insert_timer(const ShopFile& shop, const Timer& timer) {
  const TimerId id{Row("timer")
                       .set("number", timer.number)
                       .set("operation", timer.operation)
                       .set_word("kind", timer.timed_as)
                       .set("who", timer.who)
                       .set_word("state", timer.state)
                       .set("entered_at", timer.entered_at)
                       .insert(shop)};
  for (const BladeId blade : timer.blades)
    Row("timer_blade").set("timer_id", id).set("blade_id", blade).insert(shop);
  for (const Stretch& stretch : timer.stretches)
    Row("timer_stretch")
        .set("timer_id", id)
        .set("from_at", stretch.from)
        .set("to_at", stretch.to)
        .insert(shop);
  return id;
}

void store_timer_state(const ShopFile& shop, TimerId timer, TimerState state,
                       std::optional<std::string> why) {
  Row row("timer");
  row.set_word("state", state);
  if (why) row.set("why", *why);
  row.update(shop, timer.row());
}

void begin_stretch(const ShopFile& shop, TimerId timer, Instant from) {
  Row("timer_stretch").set("timer_id", timer).set("from_at", from).insert(shop);
}

void end_stretches(const ShopFile& shop, TimerId timer, Instant to) {
  std::vector<std::pair<std::int64_t, Instant>> ends;
  {
    Query query(shop, "SELECT id, from_at, to_at FROM timer_stretch WHERE timer_id = ?");
    query.bind(timer);
    while (query.next()) {
      const auto ended = query.maybe_instant("to_at");
      if (!ended || *ended > to)
        ends.emplace_back(query.integer("id"), std::max(query.instant("from_at"), to));
    }
  }
  for (const auto& [id, end] : ends) Row("timer_stretch").set("to_at", end).update(shop, id);
}

void store_timer_entry(const ShopFile& shop, TimerId timer, BladeId blade, LogEntryId entry) {
  std::optional<std::int64_t> row;
  {
    Query query(shop, "SELECT id FROM timer_blade WHERE timer_id = ? AND blade_id = ?");
    query.bind(timer).bind(blade);
    if (query.next()) row = query.integer("id");
  }
  if (row) Row("timer_blade").set("log_entry_id", entry).update(shop, *row);
}

std::optional<Forgotten> forgotten_timer(const ShopFile& shop, const Timer& timer,
                                         const commission::ShopSettings& settings, Instant now) {
  if (timer.stretches.empty()) return std::nullopt;
  const Instant from = timer.stretches.back().from;
  const auto bench = load_bench_time(shop);
  const auto day = std::chrono::hours(24);
  const auto spans = attended_spans(bench, settings.zone, from - day, from + day);
  return forgotten(timer, spans, settings.zone, now, settings.timer_limit,
                   planned_for(shop, timer));
}

}  // namespace tangmark::db
