// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_json.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "domain/kiln/plan_kind.h"

namespace tangmark::kiln {
namespace {

using nlohmann::json;

json firing_json(const PlanFiring& f) {
  json members = json::array();
  for (const PlanMember& m : f.members)
    members.push_back({{"blade", m.blade}, {"op", m.operation}});
  json out{{"kiln", f.kiln},       {"kind", word_of(f.kind)}, {"temp", f.temp_c},
           {"start", f.start_min}, {"soak", f.soak_min},   {"members", std::move(members)}};
  if (f.kind == PlanKind::anneal) out["rest"] = f.rest_min;
  return out;
}

json plan_json(const FiringPlan& plan) {
  json firings = json::array();
  for (const PlanFiring& f : plan.firings) firings.push_back(firing_json(f));
  return {{"instance", plan.instance}, {"firings", std::move(firings)}};
}

json operation_json(const PlanOperation& op) {
  json out{{"kind", word_of(op.kind)},          {"temp", op.target_c},
           {"t_lo", op.lowest_c},            {"t_hi", op.highest_c},
           {"soak_min", op.shortest_soak_min}, {"soak_max", op.longest_soak_min},
           {"unattended", op.unattended},    {"gap_min", op.shortest_gap_min},
           {"gap_max", op.longest_gap_min ? json(*op.longest_gap_min) : json(nullptr)}};
  if (op.kind == PlanKind::harden) out["quench_min"] = op.quench_min;
  if (!op.bath.empty()) {
    out["bath"] = op.bath;
    out["bath_rise_mk"] = op.warms_mk;
  }
  if (op.kind == PlanKind::anneal) {
    out["cool_c_per_h"] = op.cool_c_per_h;
    out["cool_to"] = op.cool_to_c;
  }
  return out;
}

json blade_json(const PlanBlade& b) {
  json ops = json::array();
  for (const PlanOperation& op : b.operations) ops.push_back(operation_json(op));
  json out{{"id", b.id},         {"length_mm", b.length_mm},    {"release", b.release_min},
           {"due", b.due_min},   {"weight", b.late_mc_per_min}, {"ops", std::move(ops)}};
  if (b.previous_end_min) out["previous_end"] = *b.previous_end_min;
  return out;
}

json kiln_json(const PlanKiln& k) {
  json out{{"id", k.id},
           {"slots", k.slots},
           {"max_len_mm", k.max_length_mm},
           {"t_min", k.lowest_c},
           {"t_max", k.highest_c},
           {"heat_c_per_h", k.heat_c_per_h},
           {"tau_min", k.time_constant_min},
           {"heat_w", k.heat_w},
           {"hold_mw_per_c", k.hold_mw_per_c},
           {"load_min", k.load_min},
           {"unload_min", k.unload_min},
           {"circuit", k.circuit ? json(*k.circuit) : json(nullptr)}};
  if (k.state)
    out["kiln_state"] = {{"off_temp", k.state->off_c},
                         {"off_at", k.state->off_at_min},
                         {"free_at", k.state->free_at_min}};
  if (k.staggered) out["stagger"] = true;
  if (k.load_mw_min_per_c > 0) out["load_mw_min_per_c"] = k.load_mw_min_per_c;
  return out;
}

json bath_json(const PlanBath& b) {
  json out{{"id", b.id},
           {"rest_temp", b.rest_c},
           {"t_max", b.highest_c},
           {"tau_min", b.time_constant_min}};
  if (b.now_c) out["now_temp"] = *b.now_c;
  return out;
}

json answer_json(const PlanAnswer& answer) {
  json out = plan_json(answer.plan);
  out["objective"] = answer.cost.total_mc();
  out["parts"] = {{"tardiness", answer.cost.tardiness_mc},
                  {"energy", answer.cost.energy_mc},
                  {"attention", answer.cost.attention_mc},
                  {"flow", answer.cost.flow_mc}};
  out["lower_bound"] = answer.bound_mc;
  out["iterations"] = answer.iterations;
  out["unplaced"] = json::array();
  for (const Unplaced& u : answer.unplaced)
    out["unplaced"].push_back({{"blade", u.blade},
                               {"op", u.operation},
                               {"rule", fmt::format("R{}", u.rule)},
                               {"why", u.why},
                               {"change", u.change}});
  return out;
}

std::string text_of(const json& value) {
  return value.dump(1, ' ', false, json::error_handler_t::replace) + "\n";
}

}  // namespace

std::string write_plan_case(const PlanCase& c) {
  json out{{"format", "kiln-plan-1"},
           {"name", c.name},
           {"horizon", c.horizon_min},
           {"ambient_c", c.ambient_c},
           {"cost",
            {{"energy_cents_per_kwh", c.prices.energy_cents_per_kwh},
             {"attention_mc_per_min", c.prices.attention_mc_per_min},
             {"flow_mc_per_min", c.prices.flow_mc_per_min}}},
           {"windows", c.windows},
           {"kilns", json::array()},
           {"blades", json::array()}};
  for (const PlanKiln& k : c.kilns) out["kilns"].push_back(kiln_json(k));
  for (const PlanBlade& b : c.blades) out["blades"].push_back(blade_json(b));
  if (!c.locked.empty()) {
    out["locked"] = json::array();
    for (const PlanFiring& f : c.locked) out["locked"].push_back(firing_json(f));
  }
  for (const PlanBath& b : c.baths) out["baths"].push_back(bath_json(b));
  if (!c.hands_taken.empty()) out["hands_taken"] = c.hands_taken;
  return text_of(out);
}

std::string write_firing_plan(const FiringPlan& plan) { return text_of(plan_json(plan)); }

Outcome<PlanText> plan_case_text(std::string_view case_json, const SearchLimits& limits,
                                 std::uint64_t seed) {
  auto c = read_plan_case(case_json);
  if (!c) return c.problems();
  const PlanAnswer answer = plan_firings(*c, limits, seed);
  return PlanText{text_of(answer_json(answer)), answer.unplaced.empty()};
}

}  // namespace tangmark::kiln
