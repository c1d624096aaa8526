// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_search.h"

#include <cassert>
#include <set>

#include "domain/kiln/plan_annealing.h"
#include "domain/kiln/plan_check.h"
#include "domain/kiln/plan_reasons.h"

namespace tangmark::kiln {

PlanAnswer plan_firings(const PlanCase& a_case, const SearchLimits& limits, std::uint64_t seed) {
  const PlanTables tables(a_case);
  PlanAnnealing search(tables, seed);
  search.start();
  search.run(limits, 0);
  PlanAnswer answer;
  answer.plan = search.best();
  answer.iterations = search.iterations();
  std::set<std::string> left_out;
  for (int b : search.unplaced()) {
    const std::string& id = a_case.blades[static_cast<std::size_t>(b)].id;
    left_out.insert(id);
    answer.unplaced.push_back(reason_unplaced(a_case, answer.plan, id));
  }
  const PlanCheck check = check_plan(a_case, answer.plan, left_out);

  assert(check.feasible() && "the planner keeps every rule");
  answer.cost = *check.cost;
  return answer;
}

}  // namespace tangmark::kiln
