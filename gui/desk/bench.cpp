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
  for (const db::FiringRow& firing : db::firing_rows(sight.shop, sight.now - at_hand, sight.now + at_hand)) {
    if (firing.kind == "harden" && (firing.state == "booked" || firing.state == "running")) return firing;
  }
  return std::nullopt;
}

std::vector<Turn> turns_of(const Sight& sight, const db::FiringRow& firing) {
  const std::vector<db::BladeRow> blades = db::blades_in_shop(sight.shop);
  std::vector<Turn> turns;
  for (const auto& member : firing.members) {
    const auto found = std::find_if(blades.begin(), blades.end(),
                                    [&](const db::BladeRow& b) { return b.number == member.blade; });
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

std::string into(const Turn& turn) { return turn.medium.empty() ? "the quench" : turn.medium; }

void add_order(const Sight& sight, const std::vector<Turn>& turns, std::size_t current, BenchView& view) {
  for (std::size_t i = 0; i < turns.size(); ++i) {
    const Turn& turn = turns[i];
    BenchBlade row;
    row.number = std::to_string(turn.blade.number);
    row.here = i == current;
    row.done = turn.quenched;
    if (turn.quenched) {
      row.state = "out " + clock_text(*turn.blade.quenched_at, sight.zone());
      row.lines = {"quenched, " + into(turn), minutes_seconds(sight.now - *turn.blade.quenched_at) + " since quench"};
    } else {
      row.state = row.here ? "next" : i == current + 1 ? "then" : "later";
      row.lines = {into(turn), turn.blade.grade.empty() ? "steel not identified" : turn.blade.grade};
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
  view.wait_notes = {"Your rule: within " + to_text(sight.settings.temper_limit) + " of the quench."};
}

void add_turn(const Sight& sight, const db::FiringRow& firing, const Turn& turn, BenchView& view) {
  view.number = std::to_string(turn.blade.number);
  view.celsius = firing.set.in_celsius();
  view.tint_words = words(sight, firing.set) + ", as set";
  view.sentence = "Take out " + view.number + ", quench in " + into(turn);
  view.advice = "Edge down, in one go. Then hang it and hold the file ready.";
  view.target = view.number + " is in the " + (turn.medium.empty() ? "quench" : turn.medium);
  Typed fields{{"blade", view.number}, {"set", to_text(firing.set, TemperatureUnit::celsius)},
               {"firing", std::to_string(firing.number)}};
  if (!turn.medium.empty()) fields["medium"] = turn.medium;
  if (firing.starts_at <= sight.now) view.record = DoNow{"log_quench", std::move(fields)};
  view.trouble = OpenForm{"log_finding", {{"blade", view.number}}};
  const Duration soaked = sight.now - firing.starts_at;
  BenchTile soak{view.number + " has soaked", soaked.count() > 0 ? minutes_seconds(soaked) : "not yet in", "", ""};
  if (turn.soak_least) soak.note = "At least " + to_text(*turn.soak_least);
  if (turn.soak_most) soak.note += ", at most " + to_text(*turn.soak_most);
  view.tiles = {std::move(soak),
                {"Kiln", figure(firing.set, sight.settings.temperature_unit),
                 sight.settings.temperature_unit == TemperatureUnit::fahrenheit ? "°F" : "°C", "set, not measured"},
                {"Into", into(turn), "", "by its route"}};
}

}  // namespace

BenchView bench_view(const Sight& sight) {
  BenchView view;
  view.clock = to_text(sight.now, sight.zone());
  const auto firing = hardening_at_hand(sight);
  if (!firing) {
    view.heading = "Bench";
    view.sentence = "No hardening is at hand";
    view.advice = "One that is booked within half a day shows here, blade by blade.";
    return view;
  }
  view.heading = "Quench, " + firing->kiln + ".";
  const std::vector<Turn> turns = turns_of(sight, *firing);
  const auto next = std::find_if(turns.begin(), turns.end(), [](const Turn& t) { return !t.quenched; });
  const auto done = std::count_if(turns.begin(), turns.end(), [](const Turn& t) { return t.quenched; });
  view.progress = std::to_string(done) + " of " + std::to_string(turns.size()) + " quenched";
  add_order(sight, turns, static_cast<std::size_t>(next - turns.begin()), view);
  add_wait(sight, turns, view);
  if (next == turns.end()) {
    view.sentence = "All are quenched";
    view.advice = "Into the temper oven with them; the clock runs at the right.";
    return view;
  }
  add_turn(sight, *firing, *next, view);
  return view;
}

std::string in_words(const BenchView& bench) {
  std::string text = bench.heading + " " + bench.sentence + ". " + bench.advice;
  for (const BenchTile& tile : bench.tiles) text += " " + tile.label + ": " + tile.value + " " + tile.unit + ".";
  if (!bench.target.empty()) text += " Space records: " + bench.target + ".";
  if (!bench.wait.empty()) text += " " + bench.wait_label + ": " + bench.wait + ".";
  return text;
}

}  // namespace tangmark::desk
