// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_bath.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "domain/kiln/plan_heat.h"

namespace tangmark::kiln {

std::optional<BathExcess> first_excess(const PlanBath& bath, const std::vector<BathQuench>& row) {
  double above = bath.now_c.value_or(bath.rest_c) - bath.rest_c;
  int from = 0;
  for (std::size_t i = 0; i < row.size(); ++i) {
    above *= std::exp(-static_cast<double>(row[i].at_min - from) / bath.time_constant_min);
    above += row[i].warms_mk / 1000.0;
    from = row[i].at_min;
    if (bath.rest_c + above > bath.highest_c + plan_tolerance_c)
      return BathExcess{i, bath.rest_c + above};
  }
  return std::nullopt;
}

namespace {

/// A quench and the firing that it belongs to.
struct Quenched {
  BathQuench quench;
  std::size_t firing = 0;
  std::string blade;
};

const PlanOperation* operation_of(const PlanCase& a_case, const PlanMember& member) {
  for (const PlanBlade& blade : a_case.blades)
    if (blade.id == member.blade)
      return &blade.operations[static_cast<std::size_t>(member.operation)];
  return nullptr;
}

std::vector<Quenched> quenched_in(const PlanCase& a_case, const FiringPlan& plan,
                                  const std::vector<TimedFiring>& firings,
                                  const std::string& bath) {
  std::vector<Quenched> all;
  for (const TimedFiring& timed : firings) {
    const PlanFiring& firing = plan.firings[timed.firing];
    if (firing.kind != PlanKind::harden) continue;
    for (std::size_t i = 0; i < firing.members.size(); ++i) {
      const PlanOperation* op = operation_of(a_case, firing.members[i]);
      if (op && op->bath == bath)
        all.push_back({{timed.member_end_min[i], op->warms_mk}, timed.firing,
                       firing.members[i].blade});
    }
  }
  std::stable_sort(all.begin(), all.end(), [](const Quenched& a, const Quenched& b) {
    return a.quench.at_min < b.quench.at_min;
  });
  return all;
}

}  // namespace

std::vector<PlanViolation> judge_baths(const PlanCase& a_case, const FiringPlan& plan,
                                       const std::vector<TimedFiring>& firings) {
  std::vector<PlanViolation> violations;
  for (const PlanBath& bath : a_case.baths) {
    const std::vector<Quenched> all = quenched_in(a_case, plan, firings, bath.id);
    std::vector<BathQuench> row;
    for (const Quenched& one : all) row.push_back(one.quench);
    const auto hot = first_excess(bath, row);
    if (!hot) continue;
    const Quenched& last = all[hot->quench];
    PlanViolation violation{16, {}, last.firing, {}, last.blade,
                            std::pair(last.quench.at_min, last.quench.at_min + 1)};
    violation.sentence = fmt::format(
        "The quench of blade {} at minute {} takes the {} to {:.1f} C; its limit is {} C.",
        last.blade, last.quench.at_min, bath.id, hot->celsius, bath.highest_c);
    violations.push_back(std::move(violation));
  }
  return violations;
}

}  // namespace tangmark::kiln
