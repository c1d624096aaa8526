// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_timetable.h"

#include <algorithm>
#include <cassert>

namespace tangmark::kiln {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }
}  // namespace

Timetable::Timetable(const PlanTables& tables) : tables_(tables) {
  first_.assign(at(tables.kilns()), -1);
  last_ = first_;
  op_batch_.assign(tables.ops().size(), -1);
  op_end_.assign(tables.ops().size(), 0);
  op_cost_.assign(tables.ops().size(), 0);
  op_saved_at_.assign(tables.ops().size(), 0);
  hands_at_.assign(at(tables.horizon() + 1), 0);
  on_circuit_.resize(at(tables.circuits()));
  int longest_quench = 0;
  for (const OpFacts& op : tables.ops()) longest_quench = std::max(longest_quench, op.quench);
  for (int k = 0; k < tables.kilns(); ++k) {
    const PlanKiln& kiln = tables.kiln(k).kiln;
    longest_span_ = std::max({longest_span_, kiln.unload_min,
                              kiln.load_min + kiln.slots * longest_quench});
  }
  for (const auto& [from, to] : tables.the_case().hands_taken) {
    if (to <= 0) continue;
    longest_span_ = std::max(longest_span_, to - std::max(0, from));
    insert_span({std::max(0, from), to, nobody});
  }
}

int Timetable::position_at(int minute) const {
  auto found = std::lower_bound(order_.begin(), order_.end(), minute,
                                [&](int b, int m) { return batch(b).start < m; });
  return static_cast<int>(found - order_.begin());
}

void Timetable::begin() {
  ++change_;
  saved_count_ = 0;
  saved_ops_.clear();
  order_touched_ = false;
  circuits_touched_ = false;
  saved_cost_ = cost_;
  saved_first_ = first_;
  saved_last_ = last_;
  opened_.clear();
  dropped_.clear();
  first_dirty_ = never;
  freed_from_ = never;
  freed_to_ = -1;
}

void Timetable::keep() {
  for (int b : dropped_) free_batches_.push_back(b);
}

void Timetable::undo() {
  unmark_all();
  for (std::size_t i = 0; i < saved_count_; ++i) {
    const int b = saved_[i].first;
    if (batch(b).placed) drop_spans(b);
  }
  for (int b : opened_) free_batches_.push_back(b);
  for (std::size_t i = 0; i < saved_count_; ++i) {
    const int b = saved_[i].first;
    std::swap(batches_[at(b)], saved_[i].second);
    if (batch(b).placed) add_spans(b);
  }
  for (auto s = saved_ops_.rbegin(); s != saved_ops_.rend(); ++s) {
    op_batch_[at(s->op)] = s->batch;
    op_end_[at(s->op)] = s->end;
    op_cost_[at(s->op)] = s->cost_mc;
  }
  if (order_touched_) {
    order_.swap(saved_order_);
    renumber(0, static_cast<int>(order_.size()));
  }
  if (circuits_touched_) list_circuits();
  first_ = saved_first_;
  last_ = saved_last_;
  cost_ = saved_cost_;
}

void Timetable::list_circuits() {
  for (auto& list : on_circuit_) list.clear();
  for (int b : order_)
    if (const int circuit = tables_.kiln(batch(b).kiln).circuit; circuit >= 0)
      on_circuit_[at(circuit)].push_back(b);
}

Batch& Timetable::touch(int b) {
  if (saved_at_[at(b)] != change_) {
    saved_at_[at(b)] = change_;
    if (saved_count_ == saved_.size()) saved_.emplace_back();
    saved_[saved_count_].first = b;
    saved_[saved_count_].second = batches_[at(b)];
    ++saved_count_;
  }
  return batches_[at(b)];
}

void Timetable::touch_op(int op) {
  if (op_saved_at_[at(op)] == change_) return;
  op_saved_at_[at(op)] = change_;
  saved_ops_.push_back({op, batch_of(op), end_of(op), op_cost_[at(op)]});
}

void Timetable::touch_order() {
  if (order_touched_) return;
  order_touched_ = true;
  saved_order_ = order_;
}

void Timetable::renumber(int from, int to) {
  for (int p = from; p < to; ++p) position_[at(order_[at(p)])] = p;
}

void Timetable::insert_in_order(int b, int position) {
  touch_order();
  order_.insert(order_.begin() + position, b);
  renumber(position, static_cast<int>(order_.size()));
  if (first_dirty_ >= position && first_dirty_ != never) ++first_dirty_;
}

void Timetable::erase_from_order(int b) {
  touch_order();
  const int p = position(b);
  order_.erase(order_.begin() + p);
  renumber(p, static_cast<int>(order_.size()));
  if (first_dirty_ > p && first_dirty_ != never) --first_dirty_;
}

/// Joins the firing to its neighbours on its kiln, by its place in the order.
void Timetable::link(int b) {
  const int kiln = batch(b).kiln;
  int before = -1;
  for (int p = position(b) - 1; p >= 0 && before < 0; --p)
    if (batch(order_[at(p)]).kiln == kiln) before = order_[at(p)];
  const int after = before >= 0 ? batch(before).after : first_[at(kiln)];
  Batch& mine = touch(b);
  mine.before = before;
  mine.after = after;
  if (before >= 0) touch(before).after = b;
  else first_[at(kiln)] = b;
  if (after >= 0) {
    touch(after).before = b;
    mark(after);
  } else {
    last_[at(kiln)] = b;
  }
  const int circuit = tables_.kiln(kiln).circuit;
  if (circuit >= 0) {
    on_circuit_[at(circuit)].push_back(b);
    circuits_touched_ = true;
  }
}

void Timetable::unlink(int b) {
  Batch& mine = touch(b);
  if (mine.before >= 0) touch(mine.before).after = mine.after;
  else first_[at(mine.kiln)] = mine.after;
  if (mine.after >= 0) {
    touch(mine.after).before = mine.before;
    mark(mine.after);
  } else {
    last_[at(mine.kiln)] = mine.before;
  }
  mine.before = mine.after = -1;
  const int circuit = tables_.kiln(mine.kiln).circuit;
  if (circuit >= 0) {
    std::erase(on_circuit_[at(circuit)], b);
    circuits_touched_ = true;
    free_up(mine);
  }
}

int Timetable::open(int kiln, PlanKind kind, int position, int around) {
  int b;
  if (free_batches_.empty()) {
    b = static_cast<int>(batches_.size());
    batches_.emplace_back();
    position_.push_back(0);
    saved_at_.push_back(0);
    dirty_.push_back(0);
    released_at_.push_back(0);
  } else {
    b = free_batches_.back();
    free_batches_.pop_back();
  }
  saved_at_[at(b)] = 0;  // a number from the free list may have been saved in this very change
  opened_.push_back(b);
  Batch& fresh = batches_[at(b)];
  fresh.members.clear();
  fresh = Batch{.members = std::move(fresh.members)};
  touch(b);
  Batch& mine = batches_[at(b)];
  mine.kiln = kiln;
  mine.kind = kind;
  mine.start = around;
  insert_in_order(b, position);
  link(b);
  mark(b);
  return b;
}

bool Timetable::suits(int b, int op) const {
  const Batch& batch = this->batch(b);
  const OpFacts& o = tables_.op(op);
  if (batch.locked || o.kind != batch.kind || !tables_.serves(batch.kiln, op)) return false;
  if (batch.members.empty()) return true;
  if (static_cast<int>(batch.members.size()) >= tables_.kiln(batch.kiln).kiln.slots) return false;
  if (std::max(o.lowest_c, batch.lowest_c) > std::min(o.highest_c, batch.highest_c)) return false;
  for (int m : batch.members)
    if (tables_.op(m).blade == o.blade) return false;
  // In hardening the newcomer is quenched last unless its soak asks otherwise: refit tells.
  return o.kind == PlanKind::harden ||
         std::max(o.shortest_soak, batch.soak_lo) <= std::min(o.longest_soak, batch.soak_hi);
}

bool Timetable::join(int b, int op) {
  if (!suits(b, op)) return false;
  Batch& mine = touch(b);
  mine.members.push_back(op);
  mine.reshaped = true;
  if (!refit(mine)) {
    mine.members.pop_back();
    if (!mine.members.empty()) refit(mine);
    return false;
  }
  touch_op(op);
  assert(batch_of(op) < 0 && "an operation is in one firing only");
  op_batch_[at(op)] = b;
  mark(b);
  return true;
}

void Timetable::leave(int op) {
  const int b = batch_of(op);
  touch_op(op);
  op_batch_[at(op)] = -1;
  cost_ -= op_cost_[at(op)];
  op_cost_[at(op)] = 0;
  if (const int next = tables_.op(op).after; next >= 0 && batch_of(next) >= 0)
    mark(batch_of(next));
  Batch& mine = touch(b);
  std::erase(mine.members, op);
  mine.reshaped = true;
  if (!mine.members.empty()) {
    refit(mine);
    mark(b);
    return;
  }
  if (mine.placed) {
    cost_ -= mine.cost_mc;
    drop_spans(b);
    free_up(mine);
    mine.placed = false;
  }
  if (mine.warms_bath) mark_quenches_behind(position(b));
  unlink(b);
  erase_from_order(b);
  dropped_.push_back(b);
}

bool Timetable::move(int b, int kiln, int position) {
  if (batch(b).locked) return false;
  if (kiln != batch(b).kiln) {
    if (static_cast<int>(batch(b).members.size()) > tables_.kiln(kiln).kiln.slots) return false;
    for (int m : batch(b).members)
      if (!tables_.serves(kiln, m)) return false;
  }
  unlink(b);
  erase_from_order(b);
  touch(b).kiln = kiln;
  batches_[at(b)].reshaped = true;
  insert_in_order(b, std::min(position, static_cast<int>(order_.size())));
  link(b);
  mark(b);
  return refit(batches_[at(b)]);
}

void Timetable::hold(int b, int not_before) {
  touch(b).not_before = not_before;
  mark(b);
}

bool Timetable::set_temp(int b, int temp_c) {
  Batch& mine = touch(b);
  mine.temp_c = temp_c;
  mine.reshaped = true;
  mark(b);
  return refit(mine) && mine.temp_c == temp_c;
}

bool Timetable::swap_quench(int b, int first, int second) {
  Batch& mine = touch(b);
  std::swap(mine.members[at(first)], mine.members[at(second)]);
  mine.reshaped = true;
  mark(b);
  return refit(mine);
}

void Timetable::lock(int b, const PlanFiring& as_planned, const std::vector<int>& members) {
  Batch& mine = touch(b);
  mine.members = members;
  refit(mine);
  mine.members = members;  // the quench keeps its order
  for (int m : members) {
    touch_op(m);
    op_batch_[at(m)] = b;
  }
  mine.temp_c = as_planned.temp_c;
  mine.start = as_planned.start_min;
  mine.soak = as_planned.soak_min;
  mine.rest = as_planned.rest_min;
  mine.locked = true;
  any_locked_ = true;
  settle_cooling(mine);
  settle_loading(mine);
}

}  // namespace tangmark::kiln
