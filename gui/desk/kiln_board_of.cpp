// SPDX-License-Identifier: MIT
#include "gui/desk/kiln_board_of.h"

#include <algorithm>
#include <cmath>

#include "gui/desk/firing_curve.h"

namespace tangmark::desk {
namespace {

using std::chrono::hours;

// Seen at once: a little of what was, and the two days ahead in which firings are moved by hand.
constexpr hours before_now{4};
constexpr hours after_now{40};
constexpr hours earlier_heat{48};  // firings that long gone still warm a kiln

void add_time(const Sight& sight, KilnBoard& board) {
  const std::vector<db::BenchHoursRow> week = db::bench_hours(sight.shop);
  const std::vector<CalendarDate> off = db::days_off(sight.shop);
  for (auto day = date::sys_days{sight.zone().date_of(board.from)}; Instant{day} < board.to + hours{24};
       day += date::days{1}) {
    const CalendarDate date{day};
    for (int hour = 0; hour < 24; hour += 6) {
      const Instant at = sight.zone().at(date, hours{hour});
      if (at < board.from || at > board.to) continue;
      board.ticks.push_back({at, hour == 0 ? desk::day(sight, date) : clock_text(at, sight.zone()), hour == 0});
    }
    if (std::find(off.begin(), off.end(), date) != off.end()) continue;
    const int weekday = static_cast<int>(date::weekday{day}.iso_encoding());
    for (const db::BenchHoursRow& row : week) {
      if (row.weekday != weekday) continue;
      const BoardSpan span{sight.zone().at(date, row.from), sight.zone().at(date, row.to)};
      if (span.to > board.from && span.from < board.to) board.attended.push_back(span);
    }
  }
}

void add_key(const Sight& sight, KilnBoard& board) {
  const TemperatureUnit unit = sight.settings.temperature_unit;
  board.key_title = std::string("Colour of the steel, ") +
                    (unit == TemperatureUnit::fahrenheit ? "°F:" : "°C:");
  for (const int celsius : {200, 255, 275, 295, 600, 780, 1060}) {
    board.key.push_back({static_cast<double>(celsius), figure(Temperature::celsius(celsius), unit)});
  }
}

BoardFiring drawn(const Sight& sight, const db::KilnRow& kiln, const db::FiringRow& firing,
                  const std::optional<SwitchedOff>& before, Instant until) {
  BoardFiring made;
  made.id = std::to_string(firing.number);
  made.caption = caption_of(sight, firing);
  made.busy_from = firing.heat_from;
  made.start = firing.starts_at;
  made.busy_to = firing.ends_at;
  made.planned = curve_of(kiln, firing, before, until);
  for (const auto& member : firing.members) made.blades.push_back(std::to_string(member.blade));
  made.may_move = firing.state == "booked" && !firing.locked;
  // What was run is drawn thick up to its end, or to now: that much has been seen to happen.
  if (firing.state == "done" || firing.state == "running") {
    const Instant seen = firing.actual_end.value_or(std::min(sight.now, off_of(kiln, firing).at));
    for (const CurvePoint& point : made.planned) {
      if (point.at <= seen) made.recorded.push_back(point);
    }
  }
  return made;
}

// Firings of one kiln in order, each cooling until the next one heats.
std::vector<BoardFiring> drawn_lane(const Sight& sight, const db::KilnRow& kiln, std::vector<db::FiringRow> firings,
                                    Instant end) {
  std::sort(firings.begin(), firings.end(), [](const auto& a, const auto& b) { return a.starts_at < b.starts_at; });
  std::vector<BoardFiring> lane;
  std::optional<SwitchedOff> before;
  for (std::size_t i = 0; i < firings.size(); ++i) {
    const Instant until = i + 1 < firings.size() ? firings[i + 1].heat_from : end;
    lane.push_back(drawn(sight, kiln, firings[i], before, until));
    before = off_of(kiln, firings[i]);
  }
  return lane;
}

void add_state(const Sight& sight, const db::KilnRow& kiln, const std::vector<db::FiringRow>& firings, BoardLane& lane) {
  const db::FiringRow* last = nullptr;
  const db::FiringRow* next = nullptr;
  for (const db::FiringRow& firing : firings) {
    if (firing.kiln_id != kiln.id) continue;
    if (firing.heat_from <= sight.now) {
      if (last == nullptr || firing.starts_at > last->starts_at) last = &firing;
    } else if (next == nullptr || firing.starts_at < next->starts_at) {
      next = &firing;
    }
  }
  if (last == nullptr) {
    lane.now = "cold";
    lane.state = "by the model";
  } else {
    const SwitchedOff off = off_of(kiln, *last);
    double celsius = last->set.in_celsius();
    if (sight.now > off.at) celsius = coasted(kiln, off, sight.now);
    lane.now = "now about " + words(sight, Temperature::celsius(std::lround(celsius)));
    lane.state = sight.now > off.at ? "off since " + clock_text(off.at, sight.zone())
                                    : "until " + clock_text(last->ends_at, sight.zone());
  }
  if (next != nullptr && last == nullptr) lane.state = "on at " + when(sight, next->heat_from);
}

// The firings as a proposal would have them: moved ones at their new place, dropped ones gone.
std::vector<db::FiringRow> as_proposed(std::vector<db::FiringRow> firings, const KilnProposal& proposal) {
  for (const ProposedFiring& change : proposal.firings) {
    if (change.number) {
      std::erase_if(firings, [&](const db::FiringRow& f) { return f.number == *change.number; });
    }
    if (!change.dropped) firings.push_back(change.firing);
  }
  return firings;
}

void mark_proposed(const Sight& sight, const db::KilnRow& kiln, const KilnProposal& proposal, Instant end,
                   BoardLane& lane) {
  for (const ProposedFiring& change : proposal.firings) {
    for (BoardFiring& firing : lane.firings) {
      if (change.dropped || firing.id != std::to_string(change.firing.number)) continue;
      if (change.firing.starts_at != firing.start) continue;
      firing.proposed = true;
      firing.caption += ", proposed";
      if (!change.number) continue;
      const auto old = db::firing_row(sight.shop, *change.number);
      if (old && old->kiln_id == kiln.id) firing.old_place = curve_of(kiln, *old, std::nullopt, std::min(end, old->ends_at + hours{3}));
    }
  }
}

}  // namespace

std::string caption_of(const Sight& sight, const db::FiringRow& firing) {
  std::string operation = firing.kind;
  if (!firing.members.empty() && !firing.members.front().operation.empty()) {
    operation = firing.members.front().operation;
  }
  return words(sight, firing.set) + " " + operation;
}

KilnBoard board_of(const Sight& sight, const std::string& selected, const std::optional<KilnProposal>& proposal) {
  KilnBoard board;
  board.now = sight.now;
  board.now_text = "now " + clock_text(sight.now, sight.zone());
  board.from = sight.now - before_now;
  board.to = sight.now + after_now;
  board.selected = selected;
  std::vector<db::FiringRow> firings = db::firing_rows(sight.shop, board.from - earlier_heat, board.to);
  // A firing selected elsewhere in time is brought into sight.
  const auto number = number_of(selected);
  const auto far = number ? db::firing_row(sight.shop, *number) : std::nullopt;
  if (far && (far->ends_at < board.from || far->heat_from > board.to)) {
    board.from = far->heat_from - hours{12};
    board.to = board.from + before_now + after_now;
    firings = db::firing_rows(sight.shop, board.from - earlier_heat, board.to);
  }
  add_time(sight, board);
  add_key(sight, board);
  if (proposal) firings = as_proposed(std::move(firings), *proposal);
  const Instant end = board.to + hours{12};
  for (const db::KilnRow& kiln : db::kiln_rows(sight.shop)) {
    BoardLane lane;
    lane.id = kiln.name;
    lane.name = kiln.name;
    std::vector<db::FiringRow> own;
    for (const db::FiringRow& firing : firings) {
      if (firing.kiln_id == kiln.id) own.push_back(firing);
    }
    double hottest = 0;
    for (const db::FiringRow& firing : own) hottest = std::max(hottest, firing.set.in_celsius());
    lane.top_celsius = hottest > 0 ? hottest * 1.02 : kiln.high.in_celsius();
    add_state(sight, kiln, own, lane);
    lane.firings = drawn_lane(sight, kiln, std::move(own), end);
    if (proposal) mark_proposed(sight, kiln, *proposal, end, lane);
    board.lanes.push_back(std::move(lane));
  }
  return board;
}

}  // namespace tangmark::desk
