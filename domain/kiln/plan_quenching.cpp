// SPDX-License-Identifier: MIT
// Hardening waits until its tanks are cool enough for it.
#include <algorithm>
#include <cmath>

#include "domain/kiln/plan_bath.h"
#include "domain/kiln/plan_timetable.h"

namespace tangmark::kiln {

namespace {

struct Quench {
  BathQuench quench;
  bool own = false;  ///< of the firing that looks for its place
};

/// The quenches in one tank, in their order.
class TankRow {
 public:
  TankRow(const PlanTables& tables, int bath) : tables_(tables), bath_(bath) {}

  void add(const Batch& b, int quench_at, bool own) {
    for (int m : b.members) {
      const OpFacts& o = tables_.op(m);
      quench_at += o.quench;
      if (o.bath == bath_) row_.push_back({{quench_at, o.warms_mk}, own});
    }
  }

  /// By how many minutes the own firing has to wait, nothing when it need not; `never` when waiting
  /// is of no use.
  int wait() {
    std::stable_sort(row_.begin(), row_.end(), [](const Quench& a, const Quench& b) {
      return a.quench.at_min < b.quench.at_min;
    });
    std::vector<BathQuench> row;
    for (const Quench& q : row_) row.push_back(q.quench);
    const auto hot = first_excess(bath(), row);
    if (!hot) return 0;
    if (!row_[hot->quench].own) return behind(hot->quench);
    return until_cool(hot->quench);
  }

 private:
  const PlanBath& bath() const { return tables_.the_case().baths[static_cast<std::size_t>(bath_)]; }

  /// Another's quench gets too hot by what came before it: the own firing goes behind it.
  int behind(std::size_t hot) const {
    for (std::size_t i = 0; i < hot; ++i)
      if (row_[i].own) return row_[hot].quench.at_min - row_[i].quench.at_min + 1;
    return 1;
  }

  /// What others left in the tank has to fade; what the own blades bring goes along with them.
  int until_cool(std::size_t hot) const {
    const double tau = bath().time_constant_min;
    const int at = row_[hot].quench.at_min;
    const int start = bath().now_c.value_or(bath().rest_c) - bath().rest_c;
    double others = start * std::exp(-at / tau);
    double own = 0;
    for (std::size_t i = 0; i <= hot; ++i) {
      const double left = row_[i].quench.warms_mk / 1000.0 *
                          std::exp(-(at - row_[i].quench.at_min) / tau);
      (row_[i].own ? own : others) += left;
    }
    const double room = bath().highest_c - bath().rest_c - own;
    if (room < 0) return never;
    if (others <= 0) return 1;
    return std::max(1, static_cast<int>(tau * std::log(others / std::max(room, plan_tolerance_c))));
  }

  const PlanTables& tables_;
  int bath_;
  std::vector<Quench> row_;
};

}  // namespace

void Timetable::mark_quenches_behind(int position) {
  for (std::size_t p = static_cast<std::size_t>(position) + 1; p < order_.size(); ++p)
    if (batch(order_[p]).warms_bath) mark(order_[p]);
}

/// Earliest start from `start` on at which no tank gets too hot, as far as the first tank that
/// does: the caller asks again with the start it got.
int Timetable::baths_cool_from(const Batch& b, int position, int start, int quench_at) const {
  for (int bath = 0; bath < static_cast<int>(tables_.the_case().baths.size()); ++bath) {
    if (std::none_of(b.members.begin(), b.members.end(),
                     [&](int m) { return tables_.op(m).bath == bath; }))
      continue;
    TankRow row(tables_, bath);
    for (int other : order_) {
      const Batch& o = batch(other);
      if (!o.warms_bath || !o.placed || &o == &b) continue;
      if (position != never && this->position(other) > position && !o.locked) continue;
      row.add(o, o.tail_at, false);
    }
    row.add(b, quench_at, true);
    if (const int wait = row.wait(); wait > 0) return wait == never ? never : start + wait;
  }
  return start;
}

}  // namespace tangmark::kiln
