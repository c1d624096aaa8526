// SPDX-License-Identifier: MIT
// Questions to a timetable that leave it as it is.
#include <algorithm>

#include "domain/kiln/plan_timetable.h"

namespace tangmark::kiln {

/// A firing of one operation on a kiln, without its times; false when the kiln does not reach.
bool Timetable::shape_probed(int op, int kiln) const {
  const OpFacts& o = tables_.op(op);
  Batch& b = probed_;
  b.kiln = kiln;
  b.kind = o.kind;
  b.temp_c = o.target_c;
  b.members.assign(1, op);
  const PlanKiln& facts = tables_.kiln(kiln).kiln;
  b.lowest_c = std::max(o.lowest_c, facts.lowest_c);
  b.highest_c = std::min(o.highest_c, facts.highest_c);
  if (b.temp_c < b.lowest_c || b.temp_c > b.highest_c) return false;
  b.quench = o.quench;
  b.attended = o.attended;
  b.warms_bath = o.bath >= 0;
  b.soak_lo = o.shortest_soak;
  b.soak_hi = o.longest_soak;
  settle_cooling(b);
  settle_loading(b);
  return true;
}

bool Timetable::probe(int op, int kiln, int after, int from, int until, Probe& found) const {
  if (!shape_probed(op, kiln)) return false;
  Batch& b = probed_;
  const PlanKiln& facts = tables_.kiln(kiln).kiln;
  std::optional<KilnLeft> left = tables_.kiln(kiln).left;
  if (after >= 0) left = KilnLeft{batch(after).end, batch(after).off, batch(after).off_c};
  Times t;
  from = std::max(from, tables_.ready(kiln, left, b.temp_c));
  if (from > until || !find_times(b, never, left, from, until, t) || t.start > until) return false;
  b.start = t.start;
  b.soak = t.soak;
  b.rest = t.rest;
  b.off = t.off;
  b.end = t.end;
  b.heating = t.heating;
  found = {t.start, t.end, 0, cost_of(b)};
  const int next = after >= 0 ? batch(after).after : first_on(kiln);
  if (next < 0) return true;
  const Batch& n = batch(next);
  const KilnLeft mine{b.end, b.off, b.off_c};
  const int ready = tables_.ready(kiln, mine, n.temp_c);
  found.pushes = std::max(0, ready - n.start);
  const int heating = tables_.heating(kiln, mine, std::max(ready, n.start), n.temp_c);
  found.cost_mc += (heating - n.heating) * facts.heat_w *
                   tables_.the_case().prices.energy_cents_per_kwh / 60;
  return true;
}

FiringPlan Timetable::plan() const {
  const PlanCase& c = tables_.the_case();
  FiringPlan plan{c.name, {}};
  for (int id : order_) {
    const Batch& b = batch(id);
    PlanFiring f{tables_.kiln(b.kiln).kiln.id, b.kind, b.temp_c, b.start, b.soak, b.rest, {}};
    for (int m : b.members)
      f.members.push_back(
          {c.blades[static_cast<std::size_t>(tables_.op(m).blade)].id, tables_.op(m).index});
    plan.firings.push_back(std::move(f));
  }
  return plan;
}

}  // namespace tangmark::kiln
