// SPDX-License-Identifier: MIT
#include "gui/desk/kiln_board_of.h"

#include <algorithm>
#include <cmath>

#include "db/store/bench_time_store.h"
#include "db/store/firing_reasons.h"
#include "db/store/kiln_store.h"
#include "db/store/record_store.h"
#include "gui/desk/firing_curve.h"

namespace tangmark::desk {
namespace {

using std::chrono::hours;

// Seen at once: a little of what was, and the two days ahead in which firings are moved by hand.
constexpr hours before_now{4};
constexpr hours after_now{40};
constexpr hours earlier_heat{48};  // firings that long gone still warm a kiln

void add_time(const Sight& sight, KilnBoard& board) {
  for (auto day = date::sys_days{sight.zone().date_of(board.from)};
       Instant{day} < board.to + hours{24}; day += date::days{1}) {
    const CalendarDate date{day};
    for (int hour = 0; hour < 24; hour += 6) {
      const Instant at = sight.zone().at(date, hours{hour});
      if (at < board.from || at > board.to) continue;
      board.ticks.push_back(
          {at, hour == 0 ? desk::day(sight, date) : clock_text(at, sight.zone()), hour == 0});
    }
  }
  for (const auto& [from, to] :
       db::attended_spans(db::load_bench_time(sight.shop), sight.zone(), board.from, board.to))
    board.attended.push_back({from, to});
}

void add_key(const Sight& sight, KilnBoard& board) {
  const TemperatureUnit unit = sight.settings.temperature_unit;
  board.key_title = std::string("Colour of the steel, ") +
                    (unit == TemperatureUnit::fahrenheit ? "°F:" : "°C:");
  for (const int celsius : {200, 255, 275, 295, 600, 780, 1060}) {
    board.key.push_back(
        {static_cast<double>(celsius), figure(Temperature::celsius(celsius), unit)});
  }
}

// Points as fine as a screen shows; the extremes of each stretch stay.
BoardCurve thinned(const kiln::KilnRecord& record) {
  constexpr std::size_t most = 600;
  BoardCurve all;
  for (std::size_t i = 0; i < record.rows(); ++i) {
    if (record.readings.empty() || !record.readings.front()[i]) continue;
    const auto at =
        std::chrono::floor<std::chrono::seconds>(std::chrono::milliseconds(record.ms[i]));
    all.push_back({Instant(at), record.readings.front()[i]->in_celsius()});
  }
  if (all.size() <= most) return all;
  BoardCurve few;
  const std::size_t step = 2 * all.size() / most + 1;
  for (std::size_t i = 0; i < all.size(); i += step) {
    const auto end = all.begin() + static_cast<std::ptrdiff_t>(std::min(all.size(), i + step));
    const auto [low, high] =
        std::minmax_element(all.begin() + static_cast<std::ptrdiff_t>(i), end,
                            [](const auto& a, const auto& b) { return a.celsius < b.celsius; });
    few.push_back(std::min(low, high) == low ? *low : *high);
    if (low != high) few.push_back(std::min(low, high) == low ? *high : *low);
  }
  return few;
}

// What its logger wrote; nothing is drawn as recorded that was only meant.
const BoardCurve& recorded(const Sight& sight, const db::FiringRow& firing, KilnMemory& memory) {
  const auto known = memory.recorded.find(firing.number);
  if (known != memory.recorded.end()) return known->second;
  BoardCurve curve;
  const auto kept = firing.recorded
                        ? db::find_firing(sight.shop, std::to_string(firing.number), "firing")
                        : Outcome<kiln::KeptFiring>(Problem{});
  if (kept) {
    const auto records = db::records_of_firing(sight.shop, kept->id);
    if (!records.empty()) curve = thinned(records.front().record);
  }
  return memory.recorded.emplace(firing.number, std::move(curve)).first->second;
}

BoardFiring drawn(const db::KilnRow& kiln, const db::FiringRow& firing, const std::string& caption,
                  const std::optional<SwitchedOff>& before, Instant until) {
  BoardFiring made;
  made.id = std::to_string(firing.number);
  made.caption = caption;
  made.busy_from = firing.heat_from;
  made.start = firing.starts_at;
  made.busy_to = firing.ends_at;
  made.planned = curve_of(kiln, firing, before, until);
  for (const auto& member : firing.members) made.blades.push_back(std::to_string(member.blade));
  made.may_move = firing.state == "booked" && !firing.locked;
  made.kept = firing.state == "booked" && firing.locked;
  return made;
}

// Firings of one kiln in order, each cooling until the next one heats.
std::vector<BoardFiring> drawn_lane(const Sight& sight, const db::KilnRow& kiln,
                                    std::vector<db::FiringRow> firings, Instant end,
                                    KilnMemory& memory) {
  std::sort(firings.begin(), firings.end(),
            [](const auto& a, const auto& b) { return a.starts_at < b.starts_at; });
  std::vector<BoardFiring> lane;
  std::optional<SwitchedOff> before;
  for (std::size_t i = 0; i < firings.size(); ++i) {
    const Instant until = i + 1 < firings.size() ? firings[i + 1].heat_from : end;
    lane.push_back(drawn(kiln, firings[i], caption_of(sight, firings[i]), before, until));
    lane.back().recorded = recorded(sight, firings[i], memory);
    before = off_of(kiln, firings[i]);
  }
  return lane;
}

void add_state(const Sight& sight, const db::KilnRow& kiln,
               const std::vector<db::FiringRow>& firings, BoardLane& lane) {
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
std::vector<db::FiringRow> as_proposed(std::vector<db::FiringRow> firings,
                                       const KilnProposal& proposal) {
  for (const ProposedFiring& change : proposal.firings) {
    if (change.number) {
      std::erase_if(firings, [&](const db::FiringRow& f) { return f.number == *change.number; });
    }
    if (!change.dropped) firings.push_back(change.firing);
  }
  return firings;
}

void mark_proposed(const Sight& sight, const db::KilnRow& kiln, const KilnProposal& proposal,
                   Instant end, BoardLane& lane) {
  for (const ProposedFiring& change : proposal.firings) {
    for (BoardFiring& firing : lane.firings) {
      if (change.dropped || firing.id != std::to_string(change.firing.number)) continue;
      if (change.firing.starts_at != firing.start) continue;
      firing.proposed = true;
      firing.caption += ", proposed";
      if (!change.number) continue;
      const auto old = db::firing_row(sight.shop, *change.number);
      if (old && old->kiln_id == kiln.id)
        firing.old_place =
            curve_of(kiln, *old, std::nullopt, std::min(end, old->ends_at + hours{3}));
    }
  }
}

void add_conflicts(const Sight& sight, KilnBoard& board) {
  const auto shop = db::shop_case(sight.shop, sight.now, db::Keep::locked_only);
  for (const db::BookedConflict& conflict : db::booked_conflicts(shop)) {
    const std::string id = std::to_string(conflict.firing);
    for (BoardLane& lane : board.lanes)
      for (const BoardFiring& firing : lane.firings) {
        if (firing.id != id) continue;
        const auto span = conflict.span.value_or(std::pair(firing.start, firing.busy_to));
        lane.conflicts.push_back({id, span.first, span.second, conflict.sentence});
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

KilnBoard board_of(const Sight& sight, const std::string& selected,
                   const std::optional<KilnProposal>& proposal, KilnMemory& memory) {
  KilnBoard board;
  board.now = sight.now;
  board.now_text = "now " + clock_text(sight.now, sight.zone());
  board.from = sight.now - before_now + memory.shift;
  board.to = sight.now + after_now + memory.shift;
  board.selected = selected;
  // A firing selected elsewhere in time is brought into sight, unless the maker looks around.
  const auto number = number_of(selected);
  const auto far =
      number && memory.shift == Duration{} ? db::firing_row(sight.shop, *number) : std::nullopt;
  if (far && (far->ends_at < board.from || far->heat_from > board.to)) {
    board.from = far->heat_from - hours{12};
    board.to = board.from + before_now + after_now;
  }
  board.range = to_text(board.from, sight.zone()) + " to " + to_text(board.to, sight.zone());
  std::vector<db::FiringRow> firings =
      db::firing_rows(sight.shop, board.from - earlier_heat, board.to);
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
    lane.firings = drawn_lane(sight, kiln, std::move(own), end, memory);
    if (proposal) mark_proposed(sight, kiln, *proposal, end, lane);
    board.lanes.push_back(std::move(lane));
  }
  if (!proposal) add_conflicts(sight, board);
  return board;
}

}  // namespace tangmark::desk
