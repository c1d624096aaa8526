// SPDX-License-Identifier: MIT
#include "db/store/plan_step.h"

#include <algorithm>

#include "db/row.h"

namespace tangmark::db {

using namespace std::chrono_literals;
using std::chrono::minutes;

std::vector<PlanStep> open_steps(const ShopFile& shop, blade::BladeId id) {
  Query q(shop,
          "SELECT * FROM route_step WHERE blade_id = ? AND done_at IS NULL "
          "AND skipped_why IS NULL ORDER BY position");
  q.bind(id);
  std::vector<PlanStep> steps;
  while (q.next()) {
    const auto known = blade::trade_operation(q.text("operation"));
    steps.push_back({q.id<blade::RouteStepId>("id"), q.text("operation"),
                     known ? known->heat : blade::Heat::none,
                     q.duration("hands_on_s") + q.duration("attended_s"),
                     q.duration("unattended_s"), q.maybe_temperature("temperature_k1800"),
                     q.maybe_temperature("low_k1800"), q.maybe_temperature("high_k1800"),
                     q.maybe_temperature("cool_to_k1800"), q.maybe_duration("soak_s"),
                     q.maybe_duration("soak_max_s"), q.maybe_duration("gap_max_s"),
                     q.maybe_difference("cool_k1800_per_h"), q.yes("unattended_allowed")});
  }
  return steps;
}

int whole_minutes(Duration span) {
  return static_cast<int>(std::chrono::ceil<minutes>(span).count());
}

kiln::PlanOperation plan_operation(const PlanStep& step) {
  kiln::PlanOperation op;
  const Temperature target = *step.temperature;
  op.kind = step.heat == blade::Heat::harden   ? kiln::PlanKind::harden
            : step.heat == blade::Heat::anneal ? kiln::PlanKind::anneal
                                               : kiln::PlanKind::soak;
  op.target_c = static_cast<int>(target.whole_celsius());
  op.lowest_c = static_cast<int>(
      step.low.value_or(target + TemperatureDifference::celsius(-5)).whole_celsius());
  op.highest_c = static_cast<int>(
      step.high.value_or(target + TemperatureDifference::celsius(5)).whole_celsius());
  op.shortest_soak_min = whole_minutes(
      step.soak.value_or(step.heat == blade::Heat::soak ? Duration(2h) : Duration(10min)));
  const Duration longest =
      step.soak_max.value_or(minutes(op.shortest_soak_min) +
                             (step.heat == blade::Heat::harden ? Duration(20min) : Duration(1h)));
  op.longest_soak_min = std::max(op.shortest_soak_min, whole_minutes(longest));
  op.unattended = step.heat != blade::Heat::harden && step.unattended_allowed;
  if (step.heat == blade::Heat::harden) op.quench_min = quench_min;
  if (step.heat == blade::Heat::anneal) {
    // 28 C an hour down to 650 C: the usual published limit for high-carbon grades.
    op.cool_c_per_h = std::max(
        1,
        static_cast<int>(step.cool_per_h.value_or(TemperatureDifference::celsius(28)).kelvins()));
    op.cool_to_c =
        static_cast<int>(step.cool_to.value_or(Temperature::celsius(650)).whole_celsius());
  }
  return op;
}

}  // namespace tangmark::db
