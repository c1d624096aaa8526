// SPDX-License-Identifier: MIT
// The changes that the search tries: what it takes out, where it puts it back, what it moves whole.
#include <algorithm>

#include "domain/kiln/plan_annealing.h"

namespace tangmark::kiln {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }

// Firings of a kiln further apart than this are of different days.
constexpr int longest_break_min = 480;
}  // namespace

int PlanAnnealing::random_firing() {
  return table_.order()[at(chance_.below(static_cast<int>(table_.order().size())))];
}

/// The one of some with the fewest blades: it is the nearest to being saved.
int PlanAnnealing::sparse_firing() {
  int sparse = random_firing();
  for (int more = 0; more < 2; ++more) {
    const int other = random_firing();
    if (table_.batch(other).members.size() < table_.batch(sparse).members.size()) sparse = other;
  }
  return sparse;
}

bool PlanAnnealing::take_out(Stretch s) {
  for (int op = s.first; op <= s.second; ++op)
    if (table_.batch_of(op) < 0 || !movable(op)) return false;
  if (chance_.one_in(static_cast<int>(taken_.size()) + 1)) {
    const int op = s.first + chance_.below(s.second - s.first + 1);
    fitting_.avoid(op, table_.batch_of(op));
  }
  for (int op = s.first; op <= s.second; ++op) table_.leave(op);
  taken_.push_back(s);
  return true;
}

/// Any blade; one that is late rather than one that is not.
int PlanAnnealing::random_blade() {
  const int count = static_cast<int>(tables_.blades().size());
  const int one = chance_.below(count);
  if (chance_.one_in(2)) return one;
  const int other = chance_.below(count);
  auto lateness = [&](int b) {
    const BladeFacts& facts = tables_.blade(b);
    return facts.late_mc * std::max(0, table_.end_of(facts.first_op + facts.ops - 1) - facts.due);
  };
  return lateness(other) > lateness(one) ? other : one;
}

/// Some blades that have to do with each other: those that share a firing with the first.
void PlanAnnealing::take_blades(int count) {
  int blade = random_blade();
  std::vector<int> near;
  for (int i = 0; i < tables_.blade(blade).ops; ++i)
    if (const int b = table_.batch_of(tables_.op_of(blade, i)); b >= 0)
      for (int m : table_.batch(b).members) near.push_back(tables_.op(m).blade);
  for (int i = 0; i < count; ++i) {
    const BladeFacts& facts = tables_.blade(blade);
    int first = facts.first_op;
    int last = facts.first_op + facts.ops - 1;
    if (chance_.one_in(3)) first += chance_.below(facts.ops);
    if (chance_.one_in(3)) last = first + chance_.below(last - first + 1);
    take_out({first, last});
    blade = near.empty() || chance_.one_in(4)
                ? chance_.below(static_cast<int>(tables_.blades().size()))
                : near[at(chance_.below(static_cast<int>(near.size())))];
  }
}

/// Everything in one firing, with what comes before or after it for its blades.
void PlanAnnealing::take_firing() {
  const int firing = chance_.one_in(2) ? sparse_firing() : random_firing();
  const std::vector<int> members = table_.batch(firing).members;
  const int style = chance_.below(4);
  for (int m : members) {
    const OpFacts& o = tables_.op(m);
    const BladeFacts& blade = tables_.blade(o.blade);
    const int end = blade.first_op + blade.ops - 1;
    if (style == 0) take_out({m, m});
    if (style == 1) take_out({m, end});
    if (style == 2) take_out({blade.first_op, end});
    if (style == 3) take_out({blade.first_op, m});
  }
}

/// All firings that begin within some hours.
void PlanAnnealing::take_day() {
  const int from = table_.batch(random_firing()).start;
  const int until = from + 60 + chance_.below(720);
  std::vector<int> ops;
  for (int b : table_.order())
    if (table_.batch(b).start >= from && table_.batch(b).start < until)
      for (int m : table_.batch(b).members) ops.push_back(m);
  std::sort(ops.begin(), ops.end());
  for (std::size_t i = 0; i < ops.size() && taken_.size() < 8;) {
    std::size_t j = i;
    while (j + 1 < ops.size() && ops[j + 1] == ops[j] + 1 &&
           tables_.op(ops[j + 1]).blade == tables_.op(ops[j]).blade)
      ++j;
    take_out({ops[i], ops[j]});
    i = j + 1;
  }
}

/// One stretch of two that follow each other: the second could not find a place before the first.
void PlanAnnealing::join_stretches() {
  std::sort(taken_.begin(), taken_.end());
  std::size_t kept = 0;
  for (std::size_t i = 1; i < taken_.size(); ++i) {
    Stretch& last = taken_[kept];
    const Stretch& next = taken_[i];
    if (next.first == last.second + 1 && tables_.op(next.first).index > 0)
      last.second = next.second;
    else taken_[++kept] = next;
  }
  taken_.resize(kept + 1);
}

/// Sometimes a chain is not begun before some time between its release and when it is due.
void PlanAnnealing::begin_late(Stretch s) {
  fitting_.not_before(0);
  const OpFacts& first = tables_.op(s.first);
  if (first.before >= 0 || !chance_.one_in(3)) return;
  const BladeFacts& blade = tables_.blade(first.blade);
  const int leeway = blade.due - blade.release - tables_.least_chain(s.first);
  if (leeway > 0) fitting_.not_before(blade.release + chance_.below(leeway));
}

bool PlanAnnealing::put_back() {
  join_stretches();
  for (std::size_t i = taken_.size(); i > 1; --i)
    std::swap(taken_[i - 1], taken_[at(chance_.below(static_cast<int>(i)))]);
  std::int64_t left = limit_ - table_.cost_mc() + slack_mc_;
  for (const Stretch& s : taken_) {
    begin_late(s);
    if (!fitting_.fit(s.first, s.second, left)) {
      fitting_.not_before(0);
      return false;
    }
    left -= fitting_.cost_mc();
  }
  fitting_.not_before(0);
  return true;
}

/// A blade without a place, to be put in together with what is taken out for it.
void PlanAnnealing::take_unplaced() {
  const int blade = unplaced_[at(chance_.below(static_cast<int>(unplaced_.size())))];
  const BladeFacts& facts = tables_.blade(blade);
  const int end = facts.first_op + facts.ops;
  for (int op = facts.first_op; op < end; ++op)
    if (table_.batch_of(op) >= 0) return;  // partly locked: only the careful way serves
  taken_.push_back({facts.first_op, end - 1});
  trying_ = blade;
  limit_ += unplaced_mc;
}

bool PlanAnnealing::remake() {
  taken_.clear();
  if (!unplaced_.empty() && chance_.one_in(4)) take_unplaced();
  const int style = chance_.below(10);
  if (style < 5) take_blades(1 + chance_.below(3));
  else if (style < 8) take_firing();
  else take_day();
  fitting_.overlook(chance_.below(250));
  if (chance_.one_in(2)) fitting_.avoid(-1, -1);
  return !taken_.empty() && put_back();
}

bool PlanAnnealing::shift_firing() {
  const int b = random_firing();
  const int p = table_.position(b);
  int kiln = table_.batch(b).kiln;
  if (chance_.one_in(2)) kiln = chance_.below(tables_.kilns());
  const int n = static_cast<int>(table_.order().size());
  const int to = std::clamp(p - 4 + chance_.below(9), 0, n - 1);
  table_.hold(b, 0);
  return table_.move(b, kiln, to);
}

/// Firings that follow each other on a kiln, together to another place in the order.
bool PlanAnnealing::shift_block() {
  block_.assign(1, random_firing());
  for (int more = 1 + chance_.below(4); more > 0; --more) {
    const Batch& last = table_.batch(block_.back());
    if (last.after < 0 || table_.batch(last.after).start > last.end + longest_break_min) break;
    block_.push_back(last.after);
  }
  const int n = static_cast<int>(table_.order().size());
  const int reach = 8 + n / 8;
  int to = table_.position(block_.front()) - reach + chance_.below(2 * reach + 1);
  int after = table_.order()[at(std::clamp(to, 0, n - 1))];
  if (std::find(block_.begin(), block_.end(), after) != block_.end()) return false;
  const int kiln = chance_.one_in(2) ? table_.batch(after).kiln : table_.batch(block_[0]).kiln;
  for (int b : block_) {
    table_.hold(b, 0);
    to = table_.position(after) + (table_.position(b) < table_.position(after) ? 0 : 1);
    if (!table_.move(b, kiln, to)) return false;
    after = b;
  }
  return true;
}

/// All blades of one firing into another, which goes to a larger kiln if it must.
bool PlanAnnealing::merge_firings() {
  const int from = chance_.one_in(2) ? sparse_firing() : random_firing();
  const Batch& gone = table_.batch(from);
  const int n = static_cast<int>(table_.order().size());
  const int reach = 8 + n / 8;
  const int p = std::clamp(table_.position(from) - reach + chance_.below(2 * reach + 1), 0, n - 1);
  const int into = table_.order()[at(p)];
  const Batch& kept = table_.batch(into);
  if (into == from || kept.kind != gone.kind || kept.locked || gone.locked ||
      std::max(kept.lowest_c, gone.lowest_c) > std::min(kept.highest_c, gone.highest_c))
    return false;
  const std::size_t all = kept.members.size() + gone.members.size();
  block_ = gone.members;
  if (all > at(tables_.kiln(kept.kiln).kiln.slots)) {
    const int kiln = chance_.below(tables_.kilns());
    if (all > at(tables_.kiln(kiln).kiln.slots) || !table_.move(into, kiln, p)) return false;
  }
  for (int op : block_) {
    table_.leave(op);
    if (!table_.join(into, op)) return false;
  }
  return true;
}

bool PlanAnnealing::hold_firing() {
  const int b = random_firing();
  const Batch& batch = table_.batch(b);
  if (batch.locked) return false;
  int until = 0;
  if (batch.not_before == 0 || chance_.one_in(2)) {
    if (batch.after >= 0 && chance_.one_in(2)) {
      until = table_.batch(batch.after).start - (batch.end - batch.start) - chance_.below(10);
    } else {
      until = tables_.in_window(batch.start + chance_.below(900), 1);
      if (until == never) return false;
    }
  }
  table_.hold(b, until);
  return true;
}

bool PlanAnnealing::change_temp() {
  const int b = random_firing();
  const Batch& batch = table_.batch(b);
  const int m = batch.members[at(chance_.below(static_cast<int>(batch.members.size())))];
  if (batch.locked || tables_.op(m).target_c == batch.temp_c) return false;
  return table_.set_temp(b, tables_.op(m).target_c);
}

bool PlanAnnealing::try_step() {
  if (chance_.one_in(10)) return shift_block();
  if (chance_.one_in(16)) return merge_firings();
  if (chance_.one_in(12)) return follow_guide();
  if (chance_.one_in(24)) return swap_blades();
  if (chance_.one_in(60)) return swap_kilns();
  const int style = chance_.below(16);
  if (style < 10) return remake();
  if (style < 13) return shift_firing();
  if (style < 15) return hold_firing();
  return change_temp();
}

}  // namespace tangmark::kiln
