// SPDX-License-Identifier: MIT
// When each firing begins, and how a change spreads to the firings after it.
#include <algorithm>
#include <cassert>

#include "domain/kiln/plan_timetable.h"

namespace tangmark::kiln {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }

// So many firings are re-timed before a change that only costs more and more is given up.
constexpr int patience = 24;
}  // namespace

std::optional<KilnLeft> Timetable::left_before(const Batch& b) const {
  if (b.before < 0) return tables_.kiln(b.kiln).left;
  const Batch& before = batch(b.before);
  return KilnLeft{before.end, before.off, before.off_c};
}

/// The blades are there: released, and rested since their last operation.
int Timetable::earliest(const Batch& b) const {
  int from = std::max({0, b.not_before, b.pushed});
  for (int m : b.members) {
    const OpFacts& o = tables_.op(m);
    if (o.before >= 0) {
      // A locked firing may stand before the blade's way to it has been found.
      if (batch_of(o.before) >= 0) from = std::max(from, end_of(o.before) + o.gap_min);
      else if (!b.locked) return never;
      continue;
    }
    from = std::max(from, tables_.blade(o.blade).release);
    if (const auto& end = tables_.the_case().blades[at(o.blade)].previous_end_min)
      from = std::max(from, *end + o.gap_min);
  }
  return from;
}

int Timetable::latest(const Batch& b) const {
  int until = never;
  for (int m : b.members) {
    const OpFacts& o = tables_.op(m);
    if (o.gap_max == never) continue;
    if (o.before >= 0 && batch_of(o.before) >= 0)
      until = std::min(until, end_of(o.before) + o.gap_max);
    if (o.before >= 0) continue;
    if (const auto& end = tables_.the_case().blades[at(o.blade)].previous_end_min)
      until = std::min(until, *end + o.gap_max);
  }
  return until;
}

/// Whether no minute of the span is covered by more than `but` spans.
bool Timetable::hands_free(int from, int length, int but) const {
  if (from + length > minutes()) return false;
  const auto begin = hands_at_.begin() + from;
  int most = 0;
  for (auto minute = begin; minute != begin + length; ++minute)
    most = std::max<int>(most, *minute);
  return most <= but;
}

/// Earliest minute from which the hands are free for so long; firings later in the order give way.
int Timetable::free_from(int from, int length, int position) const {
  if (length == 0 || hands_free(from, length)) return from;
  auto span = std::lower_bound(hands_.begin(), hands_.end(), from - longest_span_,
                               [](const Span& s, int m) { return s.start < m; });
  for (; span != hands_.end() && span->start < from + length; ++span) {
    if (span->end <= from) continue;
    if (position == never || span->batch == nobody || this->position(span->batch) < position ||
        (any_locked_ && batch(span->batch).locked))
      from = span->end;
  }
  return from;
}

/// The same, inside a window.
int Timetable::tail_from(int from, int length, int position) const {
  for (;;) {
    const int inside = tables_.in_window(from, length);
    if (inside == never) return never;
    from = free_from(inside, length, position);
    if (from == inside) return from;
  }
}

/// Earliest start from `from` on at which no other kiln of the circuit is on, to the first conflict
/// only: the caller asks again with the start it got.
int Timetable::circuit_free_from(int kiln, int position, int from, int on_at, int off) const {
  const int circuit = tables_.kiln(kiln).circuit;
  if (circuit < 0) return from;
  int start = from;
  for (int other : on_circuit_[at(circuit)]) {
    const Batch& o = batch(other);
    if (o.kiln == kiln || !(o.placed || o.locked)) continue;
    if (this->position(other) > position && !o.locked) continue;
    if (o.start - o.heating < off && on_at < o.off) start = std::max(start, from + o.off - on_at);
  }
  for (int k = 0; k < tables_.kilns(); ++k) {
    const KilnFacts& other = tables_.kiln(k);
    if (other.circuit == circuit && k != kiln && other.left && on_at < other.left->off_min)
      start = std::max(start, from + other.left->off_min - on_at);
  }
  return start;
}

/// Places quench, unloading or rest after the soak. False: `start` was moved on, begin again.
bool Timetable::fit_tail(const Batch& b, int position, int latest, int& start, Times& t) const {
  const PlanKiln& kiln = tables_.kiln(b.kiln).kiln;
  const int tail = b.kind == PlanKind::harden ? b.quench : kiln.unload_min;
  const int ready = start + kiln.load_min + b.soak_lo + b.cooling;
  const int found =
      b.attended ? free_from(ready, tail, position) : tail_from(ready, tail, position);
  if (found == never) return start = never, false;
  const int wait = found - ready;
  t.soak = b.soak_lo;
  t.rest = 0;
  if (wait > 0) {
    t.blocked = true;
    if (b.attended && found + tail > tables_.window_end(start))
      return start = tables_.window_end(start), false;
    if (b.kind == PlanKind::anneal) {
      t.rest = wait;
    } else {
      const int stretch = b.soak_hi - b.soak_lo;
      if (wait > stretch) return start += wait - stretch, false;
      // Going in later costs less than soaking longer; the end is the same.
      const int later = start + wait;
      if (later <= latest && tables_.in_window(later, kiln.load_min) == later &&
          free_from(later, b.loading, position) == later)
        start = later;
      else
        t.soak += wait;
    }
  }
  t.end = start + kiln.load_min + t.soak + b.cooling + t.rest + tail;
  t.off = b.kind == PlanKind::anneal ? start + kiln.load_min + t.soak + b.cooling : t.end;
  return true;
}

bool Timetable::find_times(const Batch& b, int position, const std::optional<KilnLeft>& left,
                           int from, int latest, Times& t) const {
  const PlanKiln& kiln = tables_.kiln(b.kiln).kiln;
  const int length = kiln.load_min + (!b.attended ? 0
                                      : b.soak_lo + b.cooling +
                                            (b.kind == PlanKind::harden ? b.quench
                                                                        : kiln.unload_min));
  int start = from;
  for (;;) {
    if (start >= tables_.horizon()) return false;
    start = tables_.in_window(start, length);
    if (start == never) return false;
    if (const int free = free_from(start, b.loading, position); free != start) {
      t.blocked = true;
      start = free;
      continue;
    }
    if (!fit_tail(b, position, latest, start, t)) continue;
    t.heating = tables_.heating(b.kiln, left, start, b.temp_c);
    if (t.heating < 0) {
      ++start;  // only for a kiln that is still running when the plan begins
      continue;
    }
    const int on_at = start - t.heating;
    int free = circuit_free_from(b.kiln, position, start, on_at, t.off);
    if (free == start && b.warms_bath) free = baths_cool_from(b, position, start, t.end - b.quench);
    if (free == start) break;
    t.blocked = true;
    start = free;
  }
  t.start = start;
  return t.end <= tables_.horizon();
}

bool Timetable::find_locked_times(int id, Times& t) const {
  const Batch& b = batch(id);
  const PlanKiln& kiln = tables_.kiln(b.kiln).kiln;
  t.start = b.start;
  t.soak = b.soak;
  t.rest = b.rest;
  const int cooled = t.start + kiln.load_min + t.soak + b.cooling;
  t.end = cooled + t.rest + (b.kind == PlanKind::harden ? b.quench : kiln.unload_min);
  t.off = b.kind == PlanKind::anneal ? cooled : t.end;
  t.heating = tables_.heating(b.kiln, left_before(b), t.start, b.temp_c);
  return t.heating >= 0 && earliest(b) <= t.start &&
         circuit_free_from(b.kiln, position(id), t.start, t.start - t.heating, t.off) == t.start &&
         (!b.warms_bath || baths_cool_from(b, position(id), t.start, t.end - b.quench) == t.start);
}

bool Timetable::place(int id) {
  Times t;
  const Batch& b = batch(id);
  if (b.reshaped && !b.locked && !refit(touch(id))) return false;
  if (b.locked) {
    if (!find_locked_times(id, t)) return false;
  } else {
    const auto left = left_before(b);
    const int from = std::max(earliest(b), tables_.ready(b.kiln, left, b.temp_c));
    if (from >= tables_.horizon() || !find_times(b, position(id), left, from, latest(b), t))
      return false;
    touch(id).wanted = from;
  }
  return apply(id, t);
}

void Timetable::free_up(const Batch& b) {
  freed_from_ = std::min(freed_from_, b.start - b.heating);
  freed_to_ = std::max({freed_to_, b.off, b.end});
}

/// False when a blade's next firing stands earlier in the order.
bool Timetable::apply(int id, const Times& t) {
  Batch& b = touch(id);
  const bool reshaped = b.reshaped || !b.placed;
  b.blocked = t.blocked;
  const bool same = !reshaped && b.start == t.start && b.soak == t.soak && b.rest == t.rest &&
                    b.end == t.end && b.heating == t.heating;
  if (same) return true;
  const int position = this->position(id);
  if (b.placed) {
    drop_spans(id);
    cost_ -= b.cost_mc;
    free_up(b);
  }
  const PlanKiln& kiln = tables_.kiln(b.kiln).kiln;
  const bool leaves_same = !reshaped && b.end == t.end && b.off == t.off;
  b.placed = true;
  b.reshaped = false;
  b.start = t.start;
  b.soak = t.soak;
  b.rest = t.rest;
  b.off = t.off;
  b.end = t.end;
  b.heating = t.heating;
  b.load_end = b.start + b.loading;
  b.tail_at = b.end - (b.kind == PlanKind::harden ? b.quench : kiln.unload_min);
  b.cost_mc = cost_of(b);
  cost_ += b.cost_mc;
  add_spans(id);
  mark_collisions(b.start, b.load_end, position);
  mark_collisions(b.tail_at, b.end, position);
  if (b.after >= 0 && !leaves_same) mark(b.after);
  if (const int circuit = tables_.kiln(b.kiln).circuit; circuit >= 0)
    for (int other : on_circuit_[at(circuit)])
      if (this->position(other) > position && batch(other).kiln != b.kiln) mark(other);
  if (b.warms_bath) mark_quenches_behind(position);
  return apply_members(id, position, reshaped);
}

/// Hands the new ends on to the blades and what comes next for them.
bool Timetable::apply_members(int id, int position, bool reshaped) {
  const Batch& b = batch(id);
  int quenched = b.tail_at;
  for (int m : b.members) {
    const OpFacts& o = tables_.op(m);
    int end = b.end;
    if (b.kind == PlanKind::harden) end = quenched += o.quench;
    if (!reshaped && end_of(m) == end) continue;
    touch_op(m);
    op_end_[at(m)] = end;
    if (o.after < 0) {
      cost_ -= op_cost_[at(m)];
      op_cost_[at(m)] = blade_cost(m, end);
      cost_ += op_cost_[at(m)];
    } else if (const int next = batch_of(o.after); next >= 0) {
      if (this->position(next) < position) return false;
      mark(next);
    }
  }
  return true;
}

void Timetable::mark(int b) {
  if (!dirty_[at(b)]) {
    dirty_[at(b)] = 1;
    marked_.push_back(b);
  }
  first_dirty_ = std::min(first_dirty_, position(b));
}

void Timetable::unmark_all() {
  for (int b : marked_) dirty_[at(b)] = 0;
  marked_.clear();
}

void Timetable::mark_collisions(int start, int end, int position) {
  if (start == end || hands_free(start, end - start, 1)) return;
  auto span = std::lower_bound(hands_.begin(), hands_.end(), start - longest_span_,
                               [](const Span& s, int m) { return s.start < m; });
  for (; span != hands_.end() && span->start < end; ++span)
    if (span->end > start && span->batch != nobody && this->position(span->batch) > position)
      mark(span->batch);
}

void Timetable::insert_span(Span span) {
  if (span.start == span.end) return;
  auto place = std::upper_bound(hands_.begin(), hands_.end(), span.start,
                                [](int m, const Span& s) { return m < s.start; });
  hands_.insert(place, span);
  for (int m = span.start; m < std::min(span.end, minutes()); ++m) ++hands_at_[at(m)];
}

void Timetable::erase_span(int start, int end, int b) {
  if (start == end) return;
  for (int m = start; m < std::min(end, minutes()); ++m) --hands_at_[at(m)];
  auto span = std::lower_bound(hands_.begin(), hands_.end(), start,
                               [](const Span& s, int m) { return s.start < m; });
  while (span != hands_.end() && span->start == start && span->batch != b) ++span;
  if (span != hands_.end() && span->start == start) hands_.erase(span);
}

void Timetable::add_spans(int id) {
  const Batch& b = batch(id);
  insert_span({b.start, b.load_end, id});
  insert_span({b.tail_at, b.end, id});
}

void Timetable::drop_spans(int id) {
  const Batch& b = batch(id);
  erase_span(b.start, b.load_end, id);
  erase_span(b.tail_at, b.end, id);
}

/// Holds back the firings that came too early for this one to follow in time. False when one is
/// locked; `back` is then the earliest place in the order to begin again from.
bool Timetable::chase(int id, int& back) {
  const Batch& b = batch(id);
  for (int m : b.members) {
    const OpFacts& o = tables_.op(m);
    if (o.gap_max == never) continue;
    if (o.before < 0) {
      const auto& end = tables_.the_case().blades[at(o.blade)].previous_end_min;
      if (end && b.start - *end > o.gap_max) return false;
      continue;
    }
    if (batch_of(o.before) < 0) continue;  // only before a locked firing
    const int excess = b.start - end_of(o.before) - o.gap_max;
    if (excess <= 0) continue;
    const int earlier = batch_of(o.before);
    if (batch(earlier).locked) return false;
    Batch& pushed = touch(earlier);
    // Of a soak that was stretched or a rest, the start could move without the end.
    const int stretched = pushed.soak - pushed.soak_lo + pushed.rest;
    pushed.pushed = std::max(pushed.pushed, pushed.start + excess + stretched);
    released_at_[at(earlier)] = change_;  // it stays pushed for the rest of this change
    mark(earlier);
    mark(id);
    back = std::min(back, position(earlier));
  }
  return true;
}

bool Timetable::settle(std::int64_t most_mc, int retries) {
  int placed = 0;
  for (int p = std::max(0, first_dirty_ == never ? 0 : first_dirty_);
       p < static_cast<int>(order_.size()); ++p) {
    const int id = order_[at(p)];
    const Batch& b = batch(id);
    const bool may_move_up = b.blocked && b.wanted < freed_to_ && b.end > freed_from_;
    if (!dirty_[at(id)] && !may_move_up) continue;
    if (b.pushed > 0 && released_at_[at(id)] != change_) {
      touch(id).pushed = 0;
      released_at_[at(id)] = change_;
    }
    dirty_[at(id)] = 0;
    if (!place(id)) return false;
    if (++placed > patience && cost_ > most_mc) return false;
    int back = never;
    if (!chase(id, back)) return false;
    if (back != never) {
      if (--retries < 0) return false;
      p = back - 1;
    }
  }
  unmark_all();
  sort_order();
  return true;
}

/// Keeps the order that of the starts, so that later changes find places by time.
void Timetable::sort_order() {
  for (std::size_t i = 1; i < order_.size(); ++i) {
    const int b = order_[i];
    if (batch(order_[i - 1]).start <= batch(b).start) continue;
    touch_order();
    std::size_t j = i;
    for (; j > 0 && batch(order_[j - 1]).start > batch(b).start; --j) {
      order_[j] = order_[j - 1];
      position_[at(order_[j])] = static_cast<int>(j);
    }
    order_[j] = b;
    position_[at(b)] = static_cast<int>(j);
  }
}

}  // namespace tangmark::kiln
