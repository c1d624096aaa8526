// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_fitting.h"

#include <algorithm>

namespace tangmark::kiln {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }

constexpr std::size_t most_ways = 8;   // kept per operation
constexpr int most_gaps = 3;           // looked at per kiln
constexpr int least_wait_min = 20;     // less is not worth putting off
constexpr int may_push_min = 30;       // a firing may be asked to begin so much later
}  // namespace

/// The firings that the operations could join, by their starts, from the time the blade is there up
/// to the next firing that waits for it, or to where its lateness alone would cost too much.
void ChainFitting::list_joinable(int first, int last) {
  const PlanTables& tables = table_.tables();
  joinable_.resize(at(last - first + 1));
  for (auto& list : joinable_) list.clear();
  const OpFacts& start = tables.op(first);
  const int from = start.before >= 0 ? table_.end_of(start.before) + start.gap_min
                                     : tables.blade(start.blade).release;
  const int next = tables.op(last).after;
  const int until = next >= 0 ? table_.batch(table_.batch_of(next)).start + 2 * may_push_min
                              : tables.latest_end(start.blade, most_mc_);
  const auto& order = table_.order();
  for (std::size_t p = at(table_.position_at(from - may_push_min)); p < order.size(); ++p) {
    const Batch& batch = table_.batch(order[p]);
    if (batch.start > until) break;
    for (int op = first; op <= last; ++op)
      if (tables.op(op).kind == batch.kind && table_.suits(order[p], op))
        joinable_[at(op - first)].push_back(order[p]);
  }
}

/// Whether a way through this operation may still be cheap enough. The blade's own cost counts only
/// where its last operation is among those placed.
bool ChainFitting::affordable(int op, std::int64_t cost, int end) const {
  return cost + (to_the_end_ ? table_.tables().least_blade_mc(op, end) : 0) <= most_mc_;
}

void ChainFitting::add(Way way) {
  std::vector<Way>& ways = *adding_;
  for (const Way& w : ways)
    if (w.end <= way.end && w.cost <= way.cost && w.loose >= way.loose) return;
  std::erase_if(ways, [&](const Way& w) {
    return w.end >= way.end && w.cost >= way.cost && w.loose <= way.loose;
  });
  auto place = std::lower_bound(ways.begin(), ways.end(), way.cost,
                                [](const Way& w, std::int64_t c) { return w.cost < c; });
  ways.insert(place, way);
  if (ways.size() <= most_ways) return;
  // The cheapest, the earliest and the earliest loose one stay; the dearest of the others goes.
  auto earliest = [&](bool loose) {
    auto found = ways.end();
    for (auto w = ways.begin(); w != ways.end(); ++w)
      if (w->loose >= loose && (found == ways.end() || w->end < found->end)) found = w;
    return found;
  };
  const auto first = earliest(false);
  const auto first_loose = earliest(true);
  auto dearest = ways.end() - 1;
  while (dearest == first || dearest == first_loose) --dearest;
  ways.erase(dearest);
}

void ChainFitting::try_join(int op, const Way& before, int index, int from, int until) {
  const OpFacts& o = table_.tables().op(op);
  const std::vector<int>& joinable = joinable_[at(op - first_)];
  auto b = std::partition_point(joinable.begin(), joinable.end(), [&](int j) {
    return table_.batch(j).start < from - may_push_min;
  });
  for (; b != joinable.end(); ++b) {
    const Batch& batch = table_.batch(*b);
    if (batch.start > until) break;
    if (overlooked() || (op == avoided_op_ && *b == avoided_batch_)) continue;
    const int push = std::max(0, from - batch.start);
    int end = batch.end + push;
    std::int64_t cost = push * push_mc_per_min_;
    if (o.kind == PlanKind::harden) end += o.quench;
    else if (o.shortest_soak > batch.soak) end += o.shortest_soak - batch.soak;
    if (affordable(op, before.cost + cost, end))
      add({end, before.cost + cost, *b, -1, batch.start, index, false, false});
  }
}

void ChainFitting::try_gap(int op, int kiln, int after, const Way& before, int index, int from,
                           int until) {
  const Probed* known = nullptr;
  for (const Probed& p : probed_)
    if (p.kiln == kiln && p.after == after && p.from <= from &&
        (p.found ? from <= p.probe.start && p.probe.start <= until : until <= p.until))
      known = &p;
  if (!known) {
    probed_.push_back({kiln, after, from, until, false, {}});
    probed_.back().found = table_.probe(op, kiln, after, from, until, probed_.back().probe);
    known = &probed_.back();
  }
  if (!known->found) return;
  const Timetable::Probe& found = known->probe;
  if (found.pushes > 0 && !may_push_) return;
  const std::int64_t cost = before.cost + found.cost_mc + found.pushes * push_mc_per_min_;
  if (affordable(op, cost, found.end))
    add({found.end, cost, -1, kiln, found.start, index, until == never, false});
  if (late_too_) try_late(op, kiln, after, before, index, from, until, found);
}

/// A firing that ends just as its kiln's next one may begin leaves the kiln warm for it.
void ChainFitting::try_late(int op, int kiln, int after, const Way& before, int index, int from,
                            int until, const Timetable::Probe& early) {
  const int next = after >= 0 ? table_.batch(after).after : table_.first_on(kiln);
  if (next < 0) return;
  const PlanTables& tables = table_.tables();
  const Batch& n = table_.batch(next);
  const OpFacts& o = tables.op(op);
  const int off_c = o.kind == PlanKind::anneal ? o.cool_to_c : o.target_c;
  const int length = early.end - early.start;
  const int ready = tables.ready(kiln, KilnLeft{0, 0, off_c}, n.temp_c);
  int start = std::min(n.start - ready - length, until);
  start = tables.latest_in_window(start, o.attended ? length : tables.kiln(kiln).kiln.load_min);
  if (start < early.start + least_wait_min || start < from) return;
  Timetable::Probe late;
  if (!table_.probe(op, kiln, after, start, until, late) || late.pushes > 0) return;
  const std::int64_t cost = before.cost + late.cost_mc;
  if (affordable(op, cost, late.end))
    add({late.end, cost, -1, kiln, late.start, index, until == never, true});
}

void ChainFitting::try_open(int op, const Way& before, int index, int from, int until) {
  for (int k = 0; k < table_.tables().kilns(); ++k) {
    if (!table_.tables().serves(k, op) || overlooked()) continue;
    if (!affordable(op, before.cost + table_.tables().least_firing_mc(k, op), from)) continue;
    int after = table_.last_on(k);
    while (after >= 0 && table_.batch(after).start >= from) after = table_.batch(after).before;
    const int length = table_.tables().least_length(k, op);
    for (int gap = 0, looked = 0; gap < most_gaps && looked < 4 * most_gaps; ++looked) {
      const int next = after >= 0 ? table_.batch(after).after : table_.first_on(k);
      const int empty = after >= 0 ? std::max(from, table_.batch(after).end) : from;
      if (next < 0 || may_push_ || empty + length <= table_.batch(next).start) {
        try_gap(op, k, after, before, index, from, until);
        ++gap;
      }
      if (next < 0 || table_.batch(next).start > until) break;
      after = next;
    }
  }
}

std::optional<std::int64_t> ChainFitting::closing_cost(int op, const Way& way) const {
  const PlanTables& tables = table_.tables();
  const OpFacts& o = tables.op(op);
  if (o.after < 0) {
    const BladeFacts& blade = tables.blade(o.blade);
    return way.cost + blade.late_mc * std::max(0, way.end - blade.due) +
           tables.the_case().prices.flow_mc_per_min * (way.end - blade.release);
  }
  // Another firing waits for the blade; being late there pushes it.
  const OpFacts& next = tables.op(o.after);
  const int gap = table_.batch(table_.batch_of(o.after)).start - way.end;
  if (gap > next.gap_max && !way.loose) return std::nullopt;
  const int push = std::max(0, next.gap_min - gap);
  return push > 2 * may_push_min ? std::nullopt : std::optional(way.cost + push * push_mc_per_min_);
}

bool ChainFitting::put(int first, int last, const std::vector<int>& chosen) {
  int least = 0;
  if (const int before = table_.tables().op(first).before; before >= 0)
    least = table_.position(table_.batch_of(before)) + 1;
  for (int op = first; op <= last; ++op) {
    const Way& way = ways_[at(op - first + 1)][at(chosen[at(op - first)])];
    int b = way.batch;
    if (b < 0) {
      const int place = std::max(least, table_.position_at(way.start));
      b = table_.open(way.kiln, table_.tables().op(op).kind, place, way.start);
      if (way.held) table_.hold(b, way.start);
    }
    if (!table_.join(b, op)) return false;
    least = table_.position(b) + 1;
  }
  return true;
}

/// From when to when the operation may begin on its way from the one before it.
std::pair<int, int> ChainFitting::span_after(int op, const Way& way) const {
  const PlanTables& tables = table_.tables();
  const OpFacts& o = tables.op(op);
  if (o.before >= 0)
    return {way.end + o.gap_min, o.gap_max == never || way.loose ? never : way.end + o.gap_max};
  const auto& end = tables.the_case().blades[at(o.blade)].previous_end_min;
  return {std::max({0, not_before_, tables.blade(o.blade).release, end ? *end + o.gap_min : 0}),
          end && o.gap_max != never ? *end + o.gap_max : never};
}

void ChainFitting::find_ways(int op) {
  adding_ = &ways_[at(op - first_ + 1)];
  adding_->clear();
  probed_.clear();
  const std::vector<Way>& before = ways_[at(op - first_)];
  for (int i = 0; i < static_cast<int>(before.size()); ++i) {
    const auto [from, until] = span_after(op, before[at(i)]);
    try_join(op, before[at(i)], i, from, until);
    try_open(op, before[at(i)], i, from, until);
  }
}

/// The cheapest way through all of them, back from its end; false when there is none.
bool ChainFitting::choose(int last) {
  std::optional<std::int64_t> best;
  int chosen = -1;
  const std::vector<Way>& ends = ways_[at(last - first_ + 1)];
  for (int i = 0; i < static_cast<int>(ends.size()); ++i) {
    const auto cost = closing_cost(last, ends[at(i)]);
    if (!cost || *cost > most_mc_ || (best && *cost >= *best)) continue;
    best = cost;
    chosen = i;
  }
  if (!best) return false;
  cost_mc_ = *best;
  chosen_.assign(at(last - first_ + 1), 0);
  for (int op = last; op >= first_; --op) {
    chosen_[at(op - first_)] = chosen;
    chosen = ways_[at(op - first_ + 1)][at(chosen)].from;
  }
  return true;
}

bool ChainFitting::fit(int first, int last, std::int64_t most_mc) {
  const PlanTables& tables = table_.tables();
  first_ = first;
  most_mc_ = most_mc;
  to_the_end_ = tables.op(last).after < 0;
  list_joinable(first, last);
  may_push_ = crowding_ == Crowding::sometimes && chance_.one_in(2);
  late_too_ = chance_.one_in(2);
  ways_.resize(std::max(ways_.size(), at(last - first + 2)));
  const OpFacts& start = tables.op(first);
  const int left = start.before >= 0 ? table_.end_of(start.before) : 0;
  ways_[0].assign(1, {left, 0, -1, -1, 0, -1, false, false});
  for (int op = first; op <= last; ++op) find_ways(op);
  return choose(last) && put(first, last, chosen_);
}

}  // namespace tangmark::kiln
