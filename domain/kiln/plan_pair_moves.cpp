// SPDX-License-Identifier: MIT
// Changes of the search in which one blade takes another for its guide: hardened together, they are
// tempered together, and so what moves is the rest of the chain and not one operation.
#include <algorithm>

#include "domain/kiln/plan_annealing.h"

namespace tangmark::kiln {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }
}  // namespace

/// Another firing of the same kind not far off in the order; -1 when there is none that may change.
int PlanAnnealing::random_like(int firing) {
  const int n = static_cast<int>(table_.order().size());
  const int reach = 8 + n / 8;
  const Batch& one = table_.batch(firing);
  for (int tries = 0; tries < 6; ++tries) {
    const int p =
        std::clamp(table_.position(firing) - reach + chance_.below(2 * reach + 1), 0, n - 1);
    const int other = table_.order()[at(p)];
    const Batch& o = table_.batch(other);
    if (other != firing && o.kind == one.kind && !o.locked &&
        std::max(o.lowest_c, one.lowest_c) <= std::min(o.highest_c, one.highest_c))
      return other;
  }
  return -1;
}

/// The operation and those behind it into the firings of the guide's, as far as these take them.
/// False when not even the first goes in.
bool PlanAnnealing::follow(int op, int guide) {
  bool any = false;
  while (op >= 0 && guide >= 0 && movable(op)) {
    const int into = table_.batch_of(guide);
    if (into < 0 || table_.batch_of(op) < 0) break;
    if (into != table_.batch_of(op)) {
      if (!table_.suits(into, op)) break;
      table_.leave(op);
      if (!table_.join(into, op)) return false;
    }
    any = true;
    op = tables_.op(op).after;
    guide = tables_.op(guide).after;
  }
  return any;
}

/// One blade of a firing, or all of them, after a blade of another.
bool PlanAnnealing::follow_guide() {
  const int from = chance_.one_in(2) ? sparse_firing() : random_firing();
  if (table_.batch(from).locked) return false;
  const int into = random_like(from);
  if (into < 0) return false;
  const std::vector<int>& guides = table_.batch(into).members;
  const int guide = guides[at(chance_.below(static_cast<int>(guides.size())))];
  block_ = table_.batch(from).members;
  if (chance_.one_in(2))
    block_.assign(1, block_[at(chance_.below(static_cast<int>(block_.size())))]);
  for (int op : block_)
    if (!follow(op, guide)) return false;
  return true;
}

/// Two blades change places, from the operation on at which they are in like firings.
bool PlanAnnealing::swap_blades() {
  const int one = random_firing();
  if (table_.batch(one).locked) return false;
  const int other = random_like(one);
  if (other < 0) return false;
  const auto member_of = [&](int b) {
    const std::vector<int>& members = table_.batch(b).members;
    return members[at(chance_.below(static_cast<int>(members.size())))];
  };
  int x = member_of(one);
  int y = member_of(other);
  bool any = false;
  for (; x >= 0 && y >= 0; x = tables_.op(x).after, y = tables_.op(y).after) {
    const int bx = table_.batch_of(x);
    const int by = table_.batch_of(y);
    if (bx < 0 || by < 0 || tables_.op(x).kind != tables_.op(y).kind || !movable(x) || !movable(y))
      break;
    if (bx == by) continue;
    // A firing of one would be dropped while it is empty.
    if (table_.batch(bx).members.size() < 2 || table_.batch(by).members.size() < 2) break;
    table_.leave(x);
    table_.leave(y);
    if (!table_.join(by, x) || !table_.join(bx, y)) return false;
    any = true;
  }
  return any;
}

/// What two kilns do over some hours, the other way round.
bool PlanAnnealing::swap_kilns() {
  if (tables_.kilns() < 2) return false;
  const int first = random_firing();
  const int kiln = table_.batch(first).kiln;
  const int other = (kiln + 1 + chance_.below(tables_.kilns() - 1)) % tables_.kilns();
  const int from = table_.batch(first).start;
  const int until = from + 60 + chance_.below(1440);
  block_.clear();
  for (int b : table_.order()) {
    const Batch& batch = table_.batch(b);
    if (batch.start >= from && batch.start < until && (batch.kiln == kiln || batch.kiln == other))
      block_.push_back(b);
  }
  for (int b : block_) {
    const int to = table_.batch(b).kiln == kiln ? other : kiln;
    if (!table_.move(b, to, table_.position(b))) return false;
  }
  return !block_.empty();
}

}  // namespace tangmark::kiln
