// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_times.h"

#include <algorithm>

#include "domain/kiln/plan_heat.h"

namespace tangmark::kiln {
namespace {

using Operations = std::vector<const PlanOperation*>;

/// Minutes of controlled cooling; also sets where it ends. Slower and lower is always acceptable.
int cooling_min(const PlanFiring& firing, const Operations& operations, TimedFiring& timed) {
  int rate = operations.front()->cool_c_per_h;
  int down_to = operations.front()->cool_to_c;
  for (const PlanOperation* op : operations) {
    rate = std::min(rate, op->cool_c_per_h);
    down_to = std::min(down_to, op->cool_to_c);
  }
  timed.off_c = down_to;
  return static_cast<int>(
      divided_up(std::max<std::int64_t>(0, firing.temp_c - down_to) * 60, rate));
}

void set_quench_times(const PlanKiln& kiln, const Operations& operations, TimedFiring& t) {
  int quenched = t.soak_to_min;
  if (kiln.staggered)
    for (std::size_t i = 0; i + 1 < operations.size(); ++i)
      t.hands[0].second += operations[i]->quench_min;
  for (const PlanOperation* op : operations) t.member_end_min.push_back(quenched += op->quench_min);
  t.end_min = t.off_min = quenched;
  t.hands.emplace_back(t.soak_to_min, t.end_min);
}

}  // namespace

void set_times(const PlanKiln& kiln, const PlanFiring& firing, const Operations& operations,
               TimedFiring& t) {
  t.start_min = firing.start_min;
  t.soak_from_min = firing.start_min + kiln.load_min;
  t.soak_to_min = t.soak_from_min + firing.soak_min;
  t.off_c = firing.temp_c;
  t.hands.emplace_back(t.start_min, t.soak_from_min);
  if (firing.kind == PlanKind::harden) return set_quench_times(kiln, operations, t);
  const int cooling = firing.kind == PlanKind::anneal ? cooling_min(firing, operations, t) : 0;
  t.off_min = t.soak_to_min + cooling + (firing.kind == PlanKind::soak ? kiln.unload_min : 0);
  t.end_min = t.soak_to_min + cooling + firing.rest_min + kiln.unload_min;
  t.hands.emplace_back(t.end_min - kiln.unload_min, t.end_min);
  t.member_end_min.assign(operations.size(), t.end_min);
}

std::int64_t watt_min_at_heat(int ambient_c, const PlanKiln& kiln, const PlanFiring& firing,
                              const TimedFiring& t) {
  const auto blades = static_cast<std::int64_t>(firing.members.size());
  const std::int64_t load = load_watt_min(ambient_c, kiln, firing.temp_c, blades);
  const std::int64_t hold_w = holding_w(ambient_c, kiln, firing.temp_c);
  if (firing.kind != PlanKind::anneal) return load + hold_w * (t.end_min - t.start_min);
  const int sum = firing.temp_c + t.off_c;
  const int middle = sum >= 0 ? sum / 2 : -((1 - sum) / 2);
  return load + hold_w * (t.soak_to_min - t.start_min) +
         holding_w(ambient_c, kiln, middle) * (t.off_min - t.soak_to_min);
}

}  // namespace tangmark::kiln
