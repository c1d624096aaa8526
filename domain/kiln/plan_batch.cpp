// SPDX-License-Identifier: MIT
// What follows from the members of a firing: soak, temperature, cooling and cost.
#include <algorithm>

#include "domain/kiln/plan_timetable.h"

namespace tangmark::kiln {

bool Timetable::refit(Batch& b) {
  b.lowest_c = tables_.kiln(b.kiln).kiln.lowest_c;
  b.highest_c = tables_.kiln(b.kiln).kiln.highest_c;
  b.quench = 0;
  b.attended = false;
  b.warms_bath = false;
  for (int m : b.members) {
    const OpFacts& o = tables_.op(m);
    b.lowest_c = std::max(b.lowest_c, o.lowest_c);
    b.highest_c = std::min(b.highest_c, o.highest_c);
    b.quench += o.quench;
    b.attended = b.attended || o.attended;
    b.warms_bath = b.warms_bath || o.bath >= 0;
  }
  if (!settle_soak(b) || !settle_temp(b)) return false;
  settle_cooling(b);
  return true;
}

bool Timetable::settle_soak(Batch& b) const {
  auto limits = [&] {
    settle_loading(b);
    b.soak_lo = 0;
    b.soak_hi = never;
    const bool waits = b.kind == PlanKind::harden && !tables_.kiln(b.kiln).kiln.staggered;
    int waited = 0;  // in hardening a blade goes on soaking while those before it are quenched
    for (int m : b.members) {
      const OpFacts& o = tables_.op(m);
      b.soak_lo = std::max(b.soak_lo, o.shortest_soak - waited);
      b.soak_hi = std::min(b.soak_hi, o.longest_soak - waited);
      if (waits) waited += o.quench;
    }
    // The last one is in before the first comes out.
    b.soak_lo = std::max(b.soak_lo, b.loading - tables_.kiln(b.kiln).kiln.load_min);
    return b.soak_lo <= b.soak_hi;
  };
  if (limits()) return true;
  if (b.kind != PlanKind::harden) return false;
  // Those that bear the least soaking first.
  std::stable_sort(b.members.begin(), b.members.end(), [&](int x, int y) {
    const OpFacts& a = tables_.op(x);
    const OpFacts& c = tables_.op(y);
    return a.longest_soak + a.quench < c.longest_soak + c.quench;
  });
  return limits();
}

/// Keeps the temperature where it is if it serves and is somebody's target, else the lowest that
/// is.
bool Timetable::settle_temp(Batch& b) const {
  int lowest = never;
  for (int m : b.members) {
    const int target = tables_.op(m).target_c;
    if (target < b.lowest_c || target > b.highest_c) continue;
    if (target == b.temp_c) return true;
    lowest = std::min(lowest, target);
  }
  if (lowest == never) return false;
  b.temp_c = lowest;
  return true;
}

void Timetable::settle_cooling(Batch& b) const {
  b.off_c = b.temp_c;
  b.cooling = 0;
  if (b.kind != PlanKind::anneal) return;
  int rate = never;
  int down_to = never;
  for (int m : b.members) {
    rate = std::min(rate, tables_.op(m).cool_c_per_h);
    down_to = std::min(down_to, tables_.op(m).cool_to_c);
  }
  b.off_c = down_to;
  b.cooling = static_cast<int>(
      divided_up(std::max<std::int64_t>(0, b.temp_c - down_to) * 60, rate));
}

void Timetable::settle_loading(Batch& b) const {
  const PlanKiln& kiln = tables_.kiln(b.kiln).kiln;
  b.loading = kiln.load_min;
  if (kiln.staggered && b.kind == PlanKind::harden && !b.members.empty())
    b.loading += b.quench - tables_.op(b.members.back()).quench;
}

std::int64_t Timetable::cost_of(const Batch& b) const {
  const PlanCase& c = tables_.the_case();
  const PlanKiln& kiln = tables_.kiln(b.kiln).kiln;
  const int at_heat =
      b.kind == PlanKind::anneal ? kiln.load_min + b.soak : b.end - b.start;
  std::int64_t watt_min =
      holding_w(c.ambient_c, kiln, b.temp_c) * at_heat + kiln.heat_w * b.heating;
  if (kiln.load_mw_min_per_c > 0)
    watt_min +=
        load_watt_min(c.ambient_c, kiln, b.temp_c, static_cast<std::int64_t>(b.members.size()));
  if (b.cooling > 0)
    watt_min += holding_w(c.ambient_c, kiln, (b.temp_c + b.off_c) / 2) * b.cooling;
  const int hands = b.loading + (b.kind == PlanKind::harden ? b.quench : kiln.unload_min);
  return energy_mc(watt_min, c.prices.energy_cents_per_kwh) +
         c.prices.attention_mc_per_min * hands;
}

std::int64_t Timetable::blade_cost(int op, int end) const {
  const BladeFacts& blade = tables_.blade(tables_.op(op).blade);
  return blade.late_mc * std::max(0, end - blade.due) +
         tables_.the_case().prices.flow_mc_per_min * (end - blade.release);
}

}  // namespace tangmark::kiln
