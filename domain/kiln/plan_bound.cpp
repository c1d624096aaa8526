// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_bound.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tangmark::kiln {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }

/// Lowest set temperature at which the kiln can serve the operation.
int coolest(const PlanTables& tables, int kiln, int op) {
  return std::max(tables.op(op).lowest_c, tables.kiln(kiln).kiln.lowest_c);
}

int least_cooling(const OpFacts& op, int temp_c) {
  if (op.kind != PlanKind::anneal) return 0;
  return static_cast<int>(
      divided_up(std::max<std::int64_t>(0, temp_c - op.cool_to_c) * 60, op.cool_c_per_h));
}

/// Minutes of heating that bring the kiln from where the plan finds it to that temperature.
int least_heating(const PlanTables& tables, int kiln, int temp_c) {
  const KilnFacts& facts = tables.kiln(kiln);
  int from = tables.the_case().ambient_c;
  if (facts.left) from = std::max(from, facts.left->off_c);
  return static_cast<int>(
      divided_up(std::max<std::int64_t>(0, temp_c - from) * 60, facts.kiln.heat_c_per_h));
}

/// Earliest end of one operation on one kiln for a blade that may go in from `from` on.
int earliest_end(const PlanTables& tables, int kiln, int op, int from) {
  const OpFacts& o = tables.op(op);
  const PlanKiln& k = tables.kiln(kiln).kiln;
  const int temp = coolest(tables, kiln, op);
  int start = std::max(from, least_heating(tables, kiln, temp));
  if (const auto& left = tables.kiln(kiln).left) start = std::max(start, left->end_min);
  const int tail = o.kind == PlanKind::harden ? o.quench : k.unload_min;
  const int inside = k.load_min + o.shortest_soak + least_cooling(o, temp);
  if (o.attended) {
    start = tables.in_window(start, inside + tail);
    return start == never ? never : start + inside + tail;
  }
  start = tables.in_window(start, k.load_min);
  if (start == never) return never;
  const int unloads = tables.in_window(start + inside, tail);
  return unloads == never ? never : unloads + tail;
}

/// Operations that could meet in a firing, and what their firings cost at least.
class SharedFirings {
 public:
  SharedFirings(const PlanTables& tables, std::vector<int> ops)
      : tables_(tables), ops_(std::move(ops)) {}

  /// Hands and holding of all of them.
  double least_mc() {
    if (ops_.size() == 1) return alone(ops_.front());
    double shares = 0;
    double own = 0;
    double cheapest = HUGE_VAL;
    for (int op : ops_) {
      shares += share_of(op);
      own += own_mc(op);
      cheapest = std::min(cheapest, cheapest_firing(op));
    }
    return own + std::max(shares, cheapest * firings());
  }

 private:
  double price() const {
    return static_cast<double>(tables_.the_case().prices.energy_cents_per_kwh) / 60;
  }
  double hands_mc() const {
    return static_cast<double>(tables_.the_case().prices.attention_mc_per_min);
  }
  std::int64_t hold_w(int kiln, int op) const {
    return std::max<std::int64_t>(0,
                                  holding_w(tables_.the_case().ambient_c, tables_.kiln(kiln).kiln,
                                            coolest(tables_, kiln, op)));
  }
  int least_minutes_at_heat(int kiln, int op) const {
    const OpFacts& o = tables_.op(op);
    const PlanKiln& k = tables_.kiln(kiln).kiln;
    return k.load_min + (o.kind == PlanKind::soak ? o.shortest_soak + k.unload_min
                         : o.kind == PlanKind::anneal ? o.shortest_soak : 0);
  }

  /// Of a firing of this operation, what the others in it share. Rounding takes half a millicent.
  /// The soak of a hardening is not counted: the first one in may wait for the last.
  double firing_mc(int kiln, int op) const {
    const PlanKiln& k = tables_.kiln(kiln).kiln;
    const int hands =
        k.load_min + (tables_.op(op).kind == PlanKind::harden ? 0 : k.unload_min);
    return hands_mc() * hands +
           price() * static_cast<double>(hold_w(kiln, op)) * least_minutes_at_heat(kiln, op) - 0.5;
  }

  double cheapest_firing(int op) const {
    double least = HUGE_VAL;
    for (int k = 0; k < tables_.kilns(); ++k)
      if (tables_.serves(k, op)) least = std::min(least, firing_mc(k, op));
    return std::max(0.0, least);
  }

  /// Of a firing of several, what this operation costs by itself: its quench.
  double own_mc(int op) const {
    double least = HUGE_VAL;
    for (int k = 0; k < tables_.kilns(); ++k)
      if (tables_.serves(k, op))
        least = std::min(least, price() * static_cast<double>(hold_w(k, op)));
    return tables_.op(op).kind == PlanKind::harden
               ? tables_.op(op).quench * (least + hands_mc()) : 0;
  }

  double share_of(int op) const {
    int companions = 0;
    std::vector<int> blades;
    for (int other : ops_) {
      const OpFacts& a = tables_.op(op);
      const OpFacts& b = tables_.op(other);
      if (other != op && (a.blade == b.blade || std::max(a.lowest_c, b.lowest_c) >
                                                    std::min(a.highest_c, b.highest_c)))
        continue;
      if (std::find(blades.begin(), blades.end(), b.blade) == blades.end()) {
        blades.push_back(b.blade);
        ++companions;
      }
    }
    double least = HUGE_VAL;
    for (int k = 0; k < tables_.kilns(); ++k)
      if (tables_.serves(k, op))
        least = std::min(least, firing_mc(k, op) /
                                    std::clamp(companions, 1, tables_.kiln(k).kiln.slots));
    return std::max(0.0, least);
  }

  /// As many firings at least: the range that ends first is served at its end, together with as
  /// many others as the largest kiln takes, those that end first.
  int firings() {
    int slots = 1;
    for (int k = 0; k < tables_.kilns(); ++k)
      for (int op : ops_)
        if (tables_.serves(k, op)) slots = std::max(slots, tables_.kiln(k).kiln.slots);
    std::sort(ops_.begin(), ops_.end(), [&](int a, int b) {
      return tables_.op(a).highest_c < tables_.op(b).highest_c;
    });
    std::vector<char> done(ops_.size(), 0);
    int count = 0;
    for (std::size_t i = 0; i < ops_.size(); ++i) {
      if (done[i]) continue;
      ++count;
      const int temp = tables_.op(ops_[i]).highest_c;
      for (std::size_t j = i, in = 0; j < ops_.size() && in < at(slots); ++j)
        if (!done[j] && tables_.op(ops_[j]).lowest_c <= temp) {
          done[j] = 1;
          ++in;
        }
    }
    return count;
  }

  /// The one operation that shares with nobody, exact to the millicent.
  double alone(int op) const {
    const OpFacts& o = tables_.op(op);
    const PlanCase& c = tables_.the_case();
    std::int64_t least = -1;
    for (int k = 0; k < tables_.kilns(); ++k) {
      if (!tables_.serves(k, op)) continue;
      const PlanKiln& kiln = tables_.kiln(k).kiln;
      const int temp = coolest(tables_, k, op);
      const int tail = o.kind == PlanKind::harden ? o.quench : kiln.unload_min;
      const int at_heat = kiln.load_min + o.shortest_soak + (o.kind == PlanKind::anneal ? 0 : tail);
      std::int64_t watt_min = hold_w(k, op) * at_heat;
      if (const int cooling = least_cooling(o, temp); cooling > 0)
        watt_min += std::max<std::int64_t>(
            0, holding_w(c.ambient_c, kiln, (temp + o.cool_to_c) / 2) * cooling);
      const std::int64_t mc = energy_mc(watt_min, c.prices.energy_cents_per_kwh) +
                              c.prices.attention_mc_per_min * (kiln.load_min + tail);
      least = least < 0 ? mc : std::min(least, mc);
    }
    return static_cast<double>(std::max<std::int64_t>(0, least));
  }

  const PlanTables& tables_;
  std::vector<int> ops_;
};

/// Operations of one kind whose temperature ranges hang together, by their lower ends.
std::vector<std::vector<int>> groups(const PlanTables& tables, std::vector<int> ops) {
  std::sort(ops.begin(), ops.end(), [&](int a, int b) {
    const OpFacts& x = tables.op(a);
    const OpFacts& y = tables.op(b);
    return std::tie(x.kind, x.lowest_c) < std::tie(y.kind, y.lowest_c);
  });
  std::vector<std::vector<int>> all;
  int reach = 0;
  for (int op : ops) {
    const OpFacts& o = tables.op(op);
    if (all.empty() || tables.op(all.back().front()).kind != o.kind || o.lowest_c > reach) {
      all.emplace_back();
      reach = o.highest_c;
    }
    all.back().push_back(op);
    reach = std::max(reach, o.highest_c);
  }
  return all;
}

std::int64_t least_heating_mc(const PlanTables& tables, const std::vector<int>& ops) {
  std::int64_t most = 0;
  for (int op : ops) {
    std::int64_t least = -1;
    for (int k = 0; k < tables.kilns(); ++k) {
      if (!tables.serves(k, op)) continue;
      const std::int64_t watt_min =
          tables.kiln(k).kiln.heat_w * least_heating(tables, k, coolest(tables, k, op));
      least = least < 0 ? watt_min : std::min(least, watt_min);
    }
    most = std::max(most, least);
  }
  // Heating joins the holding of firings that are rounded each by itself: one millicent may be
  // lost.
  const std::int64_t cents = tables.the_case().prices.energy_cents_per_kwh;
  return std::max<std::int64_t>(0, most * cents / 60 - 1);
}

}  // namespace

std::vector<int> earliest_ends(const PlanTables& tables) {
  std::vector<int> ends;
  for (std::size_t b = 0; b < tables.blades().size(); ++b) {
    const BladeFacts& facts = tables.blades()[b];
    int end = facts.release;
    if (const auto& before = tables.the_case().blades[b].previous_end_min)
      end = std::max(end, *before + tables.op(facts.first_op).gap_min);
    for (int op = facts.first_op; op < facts.first_op + facts.ops && end != never; ++op) {
      const int from = op == facts.first_op ? std::max(0, end) : end + tables.op(op).gap_min;
      end = never;
      for (int k = 0; k < tables.kilns(); ++k)
        if (tables.serves(k, op)) end = std::min(end, earliest_end(tables, k, op, from));
    }
    ends.push_back(end);
  }
  return ends;
}

std::int64_t least_cost_mc(const PlanTables& tables, const std::set<int>& blades_left_out) {
  std::vector<int> ops;
  std::int64_t sum = 0;
  const std::vector<int> ends = earliest_ends(tables);
  for (int b = 0; b < static_cast<int>(ends.size()); ++b) {
    const BladeFacts& facts = tables.blade(b);
    if (blades_left_out.contains(b)) continue;
    if (ends[at(b)] == never) return 0;  // it has no way: there is no plan to bound
    sum += facts.late_mc * std::max(0, ends[at(b)] - facts.due) +
           tables.the_case().prices.flow_mc_per_min * (ends[at(b)] - facts.release);
    for (int op = facts.first_op; op < facts.first_op + facts.ops; ++op) ops.push_back(op);
  }
  if (ops.empty()) return 0;
  double firings = 0;
  for (auto& group : groups(tables, ops)) firings += SharedFirings(tables, group).least_mc();
  // Doubles carry the sum to far below a hundredth; the cost is a whole number not below it.
  return sum + least_heating_mc(tables, ops) +
         static_cast<std::int64_t>(std::ceil(firings - 0.01));
}

}  // namespace tangmark::kiln
