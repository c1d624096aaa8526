// SPDX-License-Identifier: MIT
#include "domain/kiln/plan_heat.h"

#include <algorithm>
#include <cmath>

namespace tangmark::kiln {

double coasting_c(int ambient_c, int off_c, int time_constant_min, int minutes) {
  return ambient_c +
         (off_c - ambient_c) * std::exp(-static_cast<double>(minutes) / time_constant_min);
}

std::optional<int> heating_min(int ambient_c, const PlanKiln& kiln,
                               const std::optional<KilnLeft>& left, int start_min, int temp_c) {
  if (!left) {
    auto need = divided_up(static_cast<std::int64_t>(temp_c - ambient_c) * 60, kiln.heat_c_per_h);
    return need <= start_min ? std::optional(static_cast<int>(need)) : std::nullopt;
  }
  const int idle = start_min - left->off_min;
  if (start_min < left->end_min || idle < 0) return std::nullopt;
  auto coasted = [&](int minutes) {
    return coasting_c(ambient_c, left->off_c, kiln.time_constant_min, minutes);
  };
  auto reaches = [&](int heating) {
    return coasted(idle - heating) + kiln.heat_c_per_h * heating / 60.0 >=
           temp_c - plan_tolerance_c;
  };
  if (coasted(idle) > temp_c + plan_tolerance_c || !reaches(idle)) return std::nullopt;
  // The earlier the switch, the hotter the kiln it finds: `reaches` only ever turns from no to yes.
  int low = 0;
  int high = idle;
  while (low < high) {
    const int middle = low + (high - low) / 2;
    if (reaches(middle)) high = middle;
    else low = middle + 1;
  }
  if (low > start_min - left->end_min) return std::nullopt;
  return low;
}

std::int64_t holding_w(int ambient_c, const PlanKiln& kiln, int temp_c) {
  const std::int64_t milliwatts = kiln.hold_mw_per_c * (temp_c - ambient_c);
  return milliwatts >= 0 ? milliwatts / 1000 : -divided_up(-milliwatts, 1000);
}

std::int64_t load_watt_min(int ambient_c, const PlanKiln& kiln, int temp_c, std::int64_t blades) {
  return kiln.load_mw_min_per_c * std::max(0, temp_c - ambient_c) * blades / 1000;
}

std::int64_t energy_mc(std::int64_t watt_minutes, std::int64_t cents_per_kwh) {
  return (watt_minutes * cents_per_kwh + 30) / 60;
}

}  // namespace tangmark::kiln
