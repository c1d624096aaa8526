// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace tangmark::kiln {

/// A planning case and its plan, as plain integers: minutes from the start of the plan, whole
/// degrees Celsius, money in millicents (1000 to a cent). Every span of time is half open, [from,
/// to). The planner works on these; the shop's own values are turned into them at its door. The
/// rules that a plan must keep are stated in plan_check.h.

enum class PlanKind { soak, harden, anneal };

/// One heat operation of a blade. The gaps run from the blade's own end of its previous operation
/// to the start of the firing; on a first operation they count only if the blade says
/// `previous_end`.
struct PlanOperation {
  PlanKind kind = PlanKind::soak;
  int target_c = 0;           ///< the temperature wanted
  int lowest_c = 0;           ///< a firing set lower does not serve
  int highest_c = 0;          ///< a firing set higher does not serve
  int shortest_soak_min = 0;
  int longest_soak_min = 0;
  bool unattended = true;     ///< false: the maker stays in the shop; hardening is always attended
  int quench_min = 0;         ///< harden only: minutes to pull and quench this blade
  int cool_c_per_h = 0;       ///< anneal only: the fastest controlled cooling, above zero
  int cool_to_c = 0;          ///< anneal only: controlled cooling down to here
  int shortest_gap_min = 0;
  std::optional<int> longest_gap_min{};
  std::string bath{};         ///< harden only: the tank it is quenched in; empty: none is watched
  int warms_mk = 0;           ///< thousandths of a degree by which its quench warms that tank
  friend bool operator==(const PlanOperation&, const PlanOperation&) = default;
};

/// A blade and the chain of operations still before it.
struct PlanBlade {
  std::string id;
  int length_mm = 0;
  int release_min = 0;                ///< not before this minute
  int due_min = 0;
  std::int64_t late_mc_per_min = 0;   ///< what each late minute costs
  std::vector<PlanOperation> operations{};
  /// The minute at which an operation done before this plan ended (usually zero or less): the gaps
  /// of the first operation then count from it. Empty: they are ignored.
  std::optional<int> previous_end_min{};
  friend bool operator==(const PlanBlade&, const PlanBlade&) = default;
};

/// What a kiln carries over from before the plan: it was switched off at `off_c` at minute
/// `off_at_min` (zero or less for a kiln that is coasting, more for one still running) and is empty
/// from `free_at_min`.
struct PlanKilnState {
  int off_c = 0;
  int off_at_min = 0;
  int free_at_min = 0;
  friend bool operator==(const PlanKilnState&, const PlanKilnState&) = default;
};

/// A kiln or oven. It heats at a constant rate, coasts down exponentially when off, and draws power
/// in proportion to its height above the room while it holds.
struct PlanKiln {
  std::string id;
  int slots = 0;              ///< blades in one firing
  int max_length_mm = 0;
  int lowest_c = 0;           ///< lowest set temperature
  int highest_c = 0;          ///< highest set temperature
  int heat_c_per_h = 0;
  int time_constant_min = 0;  ///< of natural cooling
  std::int64_t heat_w = 0;
  std::int64_t hold_mw_per_c = 0;
  int load_min = 0;
  int unload_min = 0;
  std::optional<std::string> circuit{};    ///< of the kilns on one circuit only one may be on
  std::optional<PlanKilnState> state{};    ///< empty: cold when the plan begins
  /// Blades for hardening go in one by one, at the intervals at which they will be quenched, so
  /// that each soaks as long as the next. The maker stays at the door until the last is in.
  bool staggered = false;
  /// What each blade in a firing draws beside holding, milliwatt-minutes for each degree of the
  /// firing above the room: the load effect of the kiln's records. Zero: only the brick counts.
  std::int64_t load_mw_min_per_c = 0;
  friend bool operator==(const PlanKiln&, const PlanKiln&) = default;
};

/// A quench tank that may not get too hot; how it warms stands in plan_bath.h.
struct PlanBath {
  std::string id;
  int rest_c = 0;             ///< where it stands when it is left alone
  int highest_c = 0;          ///< no quench may take it above
  int time_constant_min = 0;  ///< of its way back to rest
  std::optional<int> now_c{}; ///< when the plan begins; empty: at rest
  friend bool operator==(const PlanBath&, const PlanBath&) = default;
};

struct PlanMember {
  std::string blade;
  int operation = 0;  ///< counted from 0
  friend bool operator==(const PlanMember&, const PlanMember&) = default;
};

/// One firing. The kiln is at `temp_c` at `start_min`; it was heated before. In hardening the order
/// of the members is the order of the quench.
struct PlanFiring {
  std::string kiln;
  PlanKind kind = PlanKind::soak;
  int temp_c = 0;
  int start_min = 0;
  int soak_min = 0;
  int rest_min = 0;  ///< anneal only: wait in the switched-off kiln before unloading
  std::vector<PlanMember> members{};
  friend bool operator==(const PlanFiring&, const PlanFiring&) = default;
};

struct PlanPrices {
  std::int64_t energy_cents_per_kwh = 0;
  std::int64_t attention_mc_per_min = 0;  ///< each minute of hands-on work
  std::int64_t flow_mc_per_min = 0;       ///< each minute a blade is in work
  friend bool operator==(const PlanPrices&, const PlanPrices&) = default;
};

/// Everything the planner may know. `locked` firings are kept exactly as they stand. In the spans
/// of `hands_taken` the maker is in the shop but has no hand free: a firing that ran before the
/// plan is unloaded then.
struct PlanCase {
  std::string name;
  int horizon_min = 0;  ///< nothing ends later
  int ambient_c = 20;
  PlanPrices prices{};
  std::vector<std::pair<int, int>> windows{};  ///< the maker is in the shop; sorted, apart
  std::vector<PlanKiln> kilns{};
  std::vector<PlanBlade> blades{};
  std::vector<PlanFiring> locked{};
  std::vector<PlanBath> baths{};
  std::vector<std::pair<int, int>> hands_taken{};
  friend bool operator==(const PlanCase&, const PlanCase&) = default;
};

/// The firings of one case, in any order.
struct FiringPlan {
  std::string instance;
  std::vector<PlanFiring> firings{};
  friend bool operator==(const FiringPlan&, const FiringPlan&) = default;
};

/// What a plan costs, in millicents; a plan is the better the less the total.
struct PlanCost {
  std::int64_t tardiness_mc = 0;
  std::int64_t energy_mc = 0;
  std::int64_t attention_mc = 0;
  std::int64_t flow_mc = 0;
  std::int64_t total_mc() const { return tardiness_mc + energy_mc + attention_mc + flow_mc; }
  friend bool operator==(const PlanCost&, const PlanCost&) = default;
};

}  // namespace tangmark::kiln
