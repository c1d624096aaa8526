// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "db/shop_file.h"
#include "domain/blade/blade_id.h"
#include "domain/blade/operation.h"
#include "domain/kiln/plan_case.h"
#include "domain/measure/temperature.h"

namespace tangmark::db {

/// Pulling one blade and letting the kiln recover, in minutes. Common practice, no source.
inline constexpr int quench_min = 4;

/// A step of a blade's route that is still to come, as the planner asks for it. What the maker left
/// open is empty.
struct PlanStep {
  blade::RouteStepId id;
  std::string operation;
  blade::Heat heat;
  Duration bench;    ///< hands-on and attended
  Duration waiting;  ///< unattended
  std::optional<Temperature> temperature, low, high, cool_to;
  std::optional<Duration> soak, soak_max, gap_max;
  std::optional<TemperatureDifference> cool_per_h;
  bool unattended_allowed;
};

/// The steps of a blade that are neither done nor skipped, in the order of its route. Throws
/// Failure when the file is damaged.
std::vector<PlanStep> open_steps(const ShopFile& shop, blade::BladeId blade);

/// A step with a temperature as an operation of the planner, in minutes and whole degrees C. Where
/// nothing is said: within 5 C of the set point, soaked 10 min for hardening and 2 h for tempering;
/// a furnace cool of 28 C an hour down to 650 C, the usual published limit for high-carbon grades.
/// The rest common practice, no source.
kiln::PlanOperation plan_operation(const PlanStep& step);

/// A span in minutes, rounded up.
int whole_minutes(Duration span);

}  // namespace tangmark::db
