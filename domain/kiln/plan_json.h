// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "domain/kiln/plan_case.h"
#include "domain/kiln/plan_search.h"
#include "domain/measure/outcome.h"

namespace tangmark::kiln {

/// Planning cases and plans as text: JSON objects (RFC 8259) whose format is named "kiln-plan-1".
/// Every number is whole. Beyond that format these fields may stand in a case, and may all be left
/// away:
/// - `locked`: firings as in a plan, which stay exactly where they are;
/// - in a kiln `kiln_state` {"off_temp", "off_at", "free_at"}: how it was left, in minutes of the
///   plan;
/// - in a kiln `stagger` (true): blades for hardening go in at the intervals of their quench and
///   all soak alike, the maker at the door until the last is in;
/// - in a kiln `load_mw_min_per_c`: what each blade in a firing draws beside holding,
///   milliwatt-minutes for each degree above the room; it joins the energy of the firing before
///   that is rounded;
/// - in a blade `previous_end`: when the operation before its first one ended;
/// - `baths` [{"id", "rest_temp", "t_max", "tau_min", "now_temp"}] and in a harden operation `bath`
///   and `bath_rise_mk` (thousandths of a degree by which the blade warms the tank): no quench
///   takes a tank above its `t_max`; how it warms and cools stands in plan_bath.h. Without
///   `now_temp` it begins at rest;
/// - `hands_taken` [[from, to]]: the maker's hands are elsewhere, at what ran before the plan. A
/// firing that runs as the plan begins is told by the state of its kiln, the `previous_end` of its
/// blades and the `hands_taken` of its unloading. Other fields are passed over.

/// Reads and judges a case. Problems name the path of the field ("blades[3].ops[1].t_lo"): a
/// missing field, a wrong type, a number out of reason, windows out of order, a name used twice or
/// unknown.
Outcome<PlanCase> read_plan_case(std::string_view json);
std::string write_plan_case(const PlanCase& a_case);

Outcome<FiringPlan> read_firing_plan(std::string_view json);
std::string write_firing_plan(const FiringPlan& plan);

/// A plan as text; `complete` is false when blades had to be left out, which the text then lists
/// under `unplaced` [{blade, op, rule, why, change}]. Beside it stand `objective` (millicents),
/// `lower_bound`, `parts` and `iterations`.
struct PlanText {
  std::string json;
  bool complete = true;
};

/// Reads a case, plans it and writes the plan.
Outcome<PlanText> plan_case_text(std::string_view case_json, const SearchLimits& limits,
                                 std::uint64_t seed);

}  // namespace tangmark::kiln
