// SPDX-License-Identifier: MIT
// Clocks on the work. Stopping one writes the bench log; until then nothing is logged.
#include <algorithm>

#include "db/actions/asked.h"
#include "db/actions/bench_fields.h"
#include "db/actions/bench_log.h"
#include "db/actions/blade_action_list.h"
#include "db/store/blade_store.h"
#include "db/store/operation_store.h"
#include "db/store/timer_store.h"

namespace tangmark::db {
namespace {

using namespace blade;

Field timer_field() {
  return {"timer", "Timer", FieldKind::number, false, "its number, or give a blade that is on it"};
}
Field blade_on_it() {
  return {"blade", "Blade on it", FieldKind::blade, false, "23, instead of the timer's number"};
}

std::vector<KeptBlade> asked_blades(Work& work, Form& form) {
  std::vector<KeptBlade> blades;
  for (const std::string& number : form.list("blades")) {
    auto blade = blade_named(work.shop(), number, "blades");
    if (!blade) {
      form.add(blade.problem());
      continue;
    }
    const bool twice = std::any_of(blades.begin(), blades.end(),
                                   [&](const KeptBlade& b) { return b.id == blade->id; });
    if (!twice) blades.push_back(std::move(blade).value());
  }
  return blades;
}

std::string asked_operation(Work& work, Form& form) {
  const std::string words = form.text("operation");
  if (words.empty()) return words;
  const auto known = operation_named(work.shop(), words, "operation");
  if (!known) {
    form.add(known.problem());
    return words;
  }
  if (known->name == "harden" || known->name == "temper" || known->name == "snap temper")
    form.add({"operation", "A " + known->name + " is logged with what it had, not with a timer.",
              known->name == "harden" ? "Use log_quench; it takes the hours too."
                                      : "Use log_temper; it takes the hours too."});
  return known->name;
}

// What would stop the log entry at the end is better said before the work than after it.
Catches caught_before(Work& work, const KeptBlade& blade, const std::string& operation,
                      TimedAs timed_as) {
  LogEntry entry{.blade = blade.id};
  entry.operation = operation;
  entry.started_at = work.at();
  (timed_as == TimedAs::hands_on ? entry.hands_on : entry.attended) = std::chrono::minutes(1);
  return catches_of_entry(work, load_record(work.shop(), blade), entry);
}

Outcome<ActionResult> run_start_timer(Work& work, Form& form) {
  const auto blades = asked_blades(work, form);
  Timer timer;
  timer.operation = asked_operation(work, form);
  timer.timed_as = form.word<TimedAs>("kind", TimedAs::hands_on);
  timer.who = form.maybe_text("who");
  if (!form.refused() && blades.empty())
    form.add({"blades", "No blade is named.", "Give one number or several: 23,24."});
  for (const KeptBlade& blade : blades)
    if (const auto other = timer_of_blade(work.shop(), blade.id))
      form.add({"blades",
                "Blade " + std::to_string(blade.number) + " is on timer " +
                    std::to_string(other->number) + " (" + other->operation + ") already.",
                "Stop that one first."});
  if (work.at() > work.now())
    form.add({"at", "That is in the future.", "A timer starts now or earlier."});
  if (form.refused()) return form.problems();
  bool clear = true;
  for (const KeptBlade& blade : blades) {
    clear = work.passes(caught_before(work, blade, timer.operation, timer.timed_as)) && clear;
    timer.blades.push_back(blade.id);
  }
  if (!clear) return work.problems();
  timer.number = work.next_number("timer");
  timer.entered_at = work.now();
  timer.stretches.push_back({work.at(), std::nullopt});
  insert_timer(work.shop(), timer);
  return work.done(std::to_string(timer.number));
}

// The timer meant: by number, by a blade on it, or the only one there is.
std::optional<KeptTimer> asked_timer(Work& work, Form& form) {
  auto timer = asked(work, form, "timer", timer_named);
  const auto blade = asked(work, form, "blade", blade_named);
  if (!timer && blade) {
    timer = timer_of_blade(work.shop(), blade->id);
    if (!timer)
      form.add({"blade", "Blade " + std::to_string(blade->number) + " is on no timer.",
                "Start one with start_timer."});
  } else if (!timer && !form.refused()) {
    auto open = open_timers(work.shop());
    if (open.size() == 1) return std::move(open.front());
    form.add({"timer", open.empty() ? "No timer is open." : "Several timers are open.",
              open.empty() ? "Start one with start_timer." : "Say which, or name a blade."});
  }
  if (timer && !timer->is_open())
    form.add({"timer",
              "Timer " + std::to_string(timer->number) + " is " +
                  std::string(word_of(timer->state)) + " already.",
              "What it logged is put right with correct."});
  return timer;
}

std::string forgotten_words(const Forgotten& lost, const KeptTimer& timer, const Zone& zone) {
  const std::string name = "Timer " + std::to_string(timer.number) + " (" + timer.operation + ")";
  if (lost.why == Forgotten::Why::past_the_bench_day)
    return name + " ran on past the end of the bench day at " + clock_text(lost.ended, zone) + ".";
  return name + " has run since " + to_text(timer.stretches.back().from, zone) +
         ", longer than your timer limit.";
}

// 24: a timer left running. Asks when the work ended, and proposes.
Catch left_running(Work& work, const KeptTimer& timer) {
  const auto lost = forgotten_timer(work.shop(), timer, work.settings(), work.at());
  if (!lost) return std::nullopt;
  const Zone& zone = work.settings().zone;
  return Caught{24, Weight::ask, "until", forgotten_words(*lost, timer, zone),
                "Say until when it was worked; " + to_text(lost->ended, zone) + " is proposed."};
}

// The end that the maker states, else the moment itself; what was not looked at is estimated.
std::optional<Instant> asked_end(Work& work, Form& form, const std::optional<KeptTimer>& timer) {
  const auto until = form.maybe_instant("until");
  if (!until || !timer) return until;
  if (*until > work.now())
    form.add({"until", "That is in the future.", "Give the time when the work ended."});
  else if (*until <= timer->started_at())
    form.add({"until", "The timer started later than that.", "Give a time after its start."});
  return until;
}

Outcome<ActionResult> run_pause_timer(Work& work, Form& form) {
  const auto timer = asked_timer(work, form);
  const auto until = asked_end(work, form, timer);
  if (timer && timer->state == TimerState::paused)
    form.add({"timer", "It is paused already.", "Go on with resume_timer."});
  if (form.refused()) return form.problems();
  if (!until && !work.passes(left_running(work, *timer))) return work.problems();
  const Instant end = until.value_or(work.at());
  if (end < timer->stretches.back().from)
    return Problem{"until", "It was running again later than that.", "Give a later time."};
  end_stretches(work.shop(), timer->id, end);
  store_timer_state(work.shop(), timer->id, TimerState::paused);
  return work.done(std::to_string(timer->number));
}

Outcome<ActionResult> resume(Work& work, Form& form) {
  const auto timer = asked_timer(work, form);
  if (timer && timer->state == TimerState::running)
    form.add({"timer", "It is running.", "Nothing to do."});
  if (form.refused()) return form.problems();
  if (work.at() > work.now())
    return Problem{"at", "That is in the future.", "It goes on now or earlier."};
  if (work.at() < timer->stretches.back().to.value_or(work.at()))
    return Problem{"at", "It was paused later than that.", "Give a later time."};
  begin_stretch(work.shop(), timer->id, work.at());
  store_timer_state(work.shop(), timer->id, TimerState::running);
  return work.done(std::to_string(timer->number));
}

struct Shared {
  Instant end;
  Duration all;
  std::vector<Duration> parts;
  bool beside_others = false;
};

Shared shared_between_blades(Work& work, const KeptTimer& timer, Instant end) {
  Shared shared{end, fair_time(timer, timers_beside(work.shop(), timer), end), {}, false};
  shared.parts = equal_parts(shared.all, timer.blades.size());
  shared.beside_others = shared.all < time_run(timer, end);
  return shared;
}

LogEntry entry_of(const KeptTimer& timer, BladeId blade, Duration part, const Shared& shared,
                  bool estimated) {
  LogEntry entry{.blade = blade};
  entry.operation = timer.operation;
  entry.started_at = timer.started_at();
  entry.ended_at = shared.end;
  entry.who = timer.who;
  (timer.timed_as == TimedAs::hands_on ? entry.hands_on : entry.attended) = part;
  if (estimated) entry.how_timed = HowTimed::estimated;
  return entry;
}

Outcome<ActionResult> log_timer(Work& work, const KeptTimer& timer, const Shared& shared,
                                bool estimated, const std::optional<std::string>& note) {
  for (std::size_t i = 0; i < timer.blades.size(); ++i) {
    const auto blade = load_blade(work.shop(), timer.blades[i]);
    LogEntry entry = entry_of(timer, timer.blades[i], shared.parts[i], shared, estimated);
    entry.note = note;
    const auto id = write_log(work, *blade, std::move(entry));
    if (id) store_timer_entry(work.shop(), timer.id, blade->id, *id);
  }
  if (!work.problems().empty()) return work.problems();
  if (timer.blades.size() > 1)
    work.warn(to_text(shared.all) + " are shared equally by " +
              std::to_string(timer.blades.size()) + " blades.");
  if (shared.beside_others)
    work.warn("Other timers ran beside it; minutes that overlap are shared.");
  return work.done(std::to_string(timer.number));
}

Outcome<ActionResult> run_stop_timer(Work& work, Form& form) {
  auto timer = asked_timer(work, form);
  const auto until = asked_end(work, form, timer);
  const bool discard = form.yes("discard");
  const auto note = form.maybe_text("note");
  if (form.refused()) return form.problems();
  if (!discard && !until && !work.passes(left_running(work, *timer))) return work.problems();
  Instant end = until.value_or(work.at());
  if (timer->state == TimerState::paused) end = std::min(end, *timer->stretches.back().to);
  if (end < timer->started_at())
    return Problem{"at", "The timer started later than that.", "Give a later time."};
  end_stretches(work.shop(), timer->id, end);
  store_timer_state(work.shop(), timer->id, discard ? TimerState::discarded : TimerState::stopped,
                    note);
  if (discard) return work.done(std::to_string(timer->number));
  timer = timer_named(work.shop(), std::to_string(timer->number), "timer").value();
  const bool estimated = until && work.now() - *until > std::chrono::minutes(15);
  return log_timer(work, *timer, shared_between_blades(work, *timer, end), estimated, note);
}

Field until_field() {
  return {"until", "Worked until", FieldKind::instant, false,
          "17:00, when it was left running; now when not given"};
}

}  // namespace

const Action start_timer{
    "start_timer",
    "Start the clock on one operation of one blade or several.",
    {{"blades", "Blades", FieldKind::text, true, "23,24"},
     {"operation", "Operation", FieldKind::text, true, "rough grind"},
     {"kind", "What the minutes are", FieldKind::choice, false, "attended: waiting beside the work",
      "hands-on", choices_of<TimedAs>()},
     {"who", "Done by", FieldKind::text, false, "another hand; empty for the maker"}},
    run_start_timer};

const Action pause_timer{"pause_timer",
                         "Pause a timer; it is not logged yet.",
                         {timer_field(), blade_on_it(), until_field()},
                         run_pause_timer};

const Action resume_timer{
    "resume_timer", "Let a paused timer go on.", {timer_field(), blade_on_it()}, resume};

const Action stop_timer{
    "stop_timer",
    "Stop a timer and log its minutes on its blades, shared equally; steps are ticked.",
    {timer_field(),
     blade_on_it(),
     until_field(),
     {"discard", "Throw it away", FieldKind::yes_no, false, "yes logs nothing"},
     {"note", "Note", FieldKind::long_text}},
    run_stop_timer};

}  // namespace tangmark::db
