// SPDX-License-Identifier: MIT
#include "gui/desk/bench.h"

#include <algorithm>

#include "db/listing/blade_rows.h"
#include "db/listing/kiln_rows.h"

namespace tangmark::desk {
namespace {

using std::chrono::hours;

constexpr hours at_hand{12};

std::string minutes_seconds(Duration span) {
  const bool over = span.count() < 0;
  const auto seconds = over ? -span.count() : span.count();
  const auto hour = seconds / 3600, minute = seconds / 60 % 60, second = seconds % 60;
  std::string text = hour > 0 ? std::to_string(hour) + ":" + (minute < 10 ? "0" : "") : "";
  text += std::to_string(minute) + ":" + (second < 10 ? "0" : "") + std::to_string(second);
  return over ? "over by " + text : text;
}

struct Turn {
  db::BladeRow blade;
  std::string medium;
  std::optional<Duration> soak_least, soak_most;
  bool quenched = false;
};

std::optional<db::FiringRow> hardening_at_hand(const Sight& sight) {
  for (const db::FiringRow& firing :
       db::firing_rows(sight.shop, sight.now - at_hand, sight.now + at_hand)) {
    if (firing.kind == "harden" && (firing.state == "booked" || firing.state == "running"))
      return firing;
  }
  return std::nullopt;
}

std::vector<Turn> turns_of(const Sight& sight, const db::FiringRow& firing) {
  const std::vector<db::BladeRow> blades = db::blades_in_shop(sight.shop);
  std::vector<Turn> turns;
  for (const auto& member : firing.members) {
    const auto found = std::find_if(blades.begin(), blades.end(), [&](const db::BladeRow& b) {
      return b.number == member.blade;
    });
    if (found == blades.end()) continue;
    Turn turn{*found, "", member.soak_least, member.soak_most, false};
    for (const db::StepRow& step : db::step_rows(sight.shop, member.blade)) {
      if (step.operation == "harden" && turn.medium.empty()) turn.medium = step.medium;
    }
    turn.quenched = found->quenched_at && *found->quenched_at >= firing.heat_from;
    turns.push_back(std::move(turn));
  }
  return turns;
}

std::string into(const Turn& turn) {
  return turn.medium.empty() ? "the quench" : turn.medium;
}

// Quenched blades first, as they came out; then those ahead, those put off at the end.
void order_turns(std::vector<Turn>& turns, const std::vector<std::string>& put_off) {
  const auto rank = [&](const Turn& turn) {
    if (turn.quenched) return std::ptrdiff_t{-1};
    const auto found = std::find(put_off.begin(), put_off.end(), std::to_string(turn.blade.number));
    return found == put_off.end() ? std::ptrdiff_t{0} : found - put_off.begin() + 1;
  };
  std::stable_sort(turns.begin(), turns.end(),
                   [&](const Turn& a, const Turn& b) { return rank(a) < rank(b); });
}

// The quench logged last in this firing can be taken back: struck out, with the reason on record.
void add_undo(const Sight& sight, const std::vector<Turn>& turns, BenchView& view) {
  const Turn* last = nullptr;
  for (const Turn& turn : turns) {
    if (!turn.quenched || turn.blade.tempers_since_quench > 0) continue;
    if (last == nullptr || *turn.blade.quenched_at > *last->blade.quenched_at) last = &turn;
  }
  if (last == nullptr) return;
  std::optional<std::int64_t> entry;
  for (const db::LogRow& row : db::log_rows(sight.shop, last->blade.number)) {
    if (row.operation == "harden") entry = row.id;
  }
  if (!entry) return;
  view.undo_words = "Undo: quench of " + std::to_string(last->blade.number);
  view.undo = DoNow{"correct",
                    {{"subject", "log_entry"},
                     {"id", std::to_string(*entry)},
                     {"field", "all"},
                     {"reason", "taken back at the bench"}}};
}

std::string soak_band(const Turn& turn) {
  if (turn.soak_least && turn.soak_most) {
    return "Allowed " + minutes_seconds(*turn.soak_least) + " to " +
           minutes_seconds(*turn.soak_most);
  }
  return turn.soak_least ? "At least " + minutes_seconds(*turn.soak_least) : std::string();
}

void add_order(const Sight& sight, const std::vector<Turn>& turns, std::size_t current,
               BenchView& view) {
  for (std::size_t i = 0; i < turns.size(); ++i) {
    const Turn& turn = turns[i];
    BenchBlade row;
    row.number = std::to_string(turn.blade.number);
    row.here = i == current;
    row.done = turn.quenched;
    if (turn.quenched) {
      row.state = "out " + clock_text(*turn.blade.quenched_at, sight.zone());
      row.lines = {"quenched, " + into(turn),
                   minutes_seconds(sight.now - *turn.blade.quenched_at) + " since quench"};
    } else {
      row.state = row.here ? "next" : i == current + 1 ? "then" : "later";
      row.lines = {into(turn),
                   turn.blade.grade.empty() ? "steel not identified" : turn.blade.grade};
    }
    view.order.push_back(std::move(row));
  }
}

void add_wait(const Sight& sight, const std::vector<Turn>& turns, BenchView& view) {
  const Turn* first = nullptr;
  for (const Turn& turn : turns) {
    if (!turn.quenched || turn.blade.tempers_since_quench > 0) continue;
    if (first == nullptr || *turn.blade.quenched_at < *first->blade.quenched_at) first = &turn;
  }
  if (first == nullptr) return;
  view.wait_label = std::to_string(first->blade.number) + ": time left to temper it";
  view.wait = minutes_seconds(*first->blade.quenched_at + sight.settings.temper_limit - sight.now);
  view.wait_notes = {"Your rule: within " + to_text(sight.settings.temper_limit) +
                     " of the quench."};
}

void add_turn(const Sight& sight, const db::FiringRow& firing, const Turn& turn, BenchView& view) {
  view.number = std::to_string(turn.blade.number);
  view.celsius = firing.set.in_celsius();
  view.tint_words = words(sight, firing.set) + ", as set";
  view.sentence = "Take out " + view.number + ", quench in " + into(turn);
  view.advice = "Edge down, in one go. Then hang it and hold the file ready.";
  view.target = view.number + " is in the " + (turn.medium.empty() ? "quench" : turn.medium);
  Typed fields{{"blade", view.number},
               {"set", to_text(firing.set, TemperatureUnit::celsius)},
               {"firing", std::to_string(firing.number)}};
  if (!turn.medium.empty()) fields["medium"] = turn.medium;
  if (firing.starts_at <= sight.now) view.record = DoNow{"log_quench", std::move(fields)};
  view.trouble = OpenForm{"log_finding", {{"blade", view.number}}};
  const Duration soaked = sight.now - firing.starts_at;
  BenchTile soak{view.number + " has soaked",
                 soaked.count() > 0 ? minutes_seconds(soaked) : "not yet in", "", ""};
  soak.note = soak_band(turn);
  view.tiles = {std::move(soak),
                {"Kiln", figure(firing.set, sight.settings.temperature_unit),
                 sight.settings.temperature_unit == TemperatureUnit::fahrenheit ? "°F" : "°C",
                 "set, not measured"},
                {"Into", into(turn), "", "by its route"}};
}

}  // namespace

BenchView bench_view(const Sight& sight, const std::vector<std::string>& put_off) {
  BenchView view;
  const auto second = sight.now.time_since_epoch().count() % 60;
  view.clock =
      to_text(sight.now, sight.zone()) + (second < 10 ? ":0" : ":") + std::to_string(second);
  const auto firing = hardening_at_hand(sight);
  if (!firing) {
    view.heading = "Bench";
    view.sentence = "No hardening is at hand";
    view.advice = "One that is booked within half a day shows here, blade by blade.";
    return view;
  }
  view.heading = "Quench, " + firing->kiln + ".";
  std::vector<Turn> turns = turns_of(sight, *firing);
  order_turns(turns, put_off);
  const auto next =
      std::find_if(turns.begin(), turns.end(), [](const Turn& t) { return !t.quenched; });
  const auto done =
      std::count_if(turns.begin(), turns.end(), [](const Turn& t) { return t.quenched; });
  view.progress = std::to_string(done) + " of " + std::to_string(turns.size()) + " quenched";
  add_order(sight, turns, static_cast<std::size_t>(next - turns.begin()), view);
  add_wait(sight, turns, view);
  add_undo(sight, turns, view);
  if (next == turns.end()) {
    view.sentence = "All are quenched";
    view.advice = "Into the temper oven with them; the clock runs at the right.";
    return view;
  }
  add_turn(sight, *firing, *next, view);
  if (next + 1 != turns.end()) {
    view.put_off = "Not yet, " + std::to_string((next + 1)->blade.number) + " first";
  }
  return view;
}

std::string in_words(const BenchView& bench) {
  std::string text = bench.heading + " " + bench.sentence + ". " + bench.advice;
  for (const BenchTile& tile : bench.tiles)
    text += " " + tile.label + ": " + tile.value + " " + tile.unit + ".";
  if (!bench.target.empty()) text += " Space records: " + bench.target + ".";
  if (!bench.wait.empty()) text += " " + bench.wait_label + ": " + bench.wait + ".";
  return text;
}

}  // namespace tangmark::desk
