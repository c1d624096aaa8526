// SPDX-License-Identifier: MIT
#include "domain/costing/firing_energy.h"

#include <algorithm>
#include <cmath>

namespace tangmark::costing {
namespace {

using std::chrono::minutes;

/// Heat content above 20 C in J/kg: the integral of the specific heat, piece by piece.
double heat_content(double c) {
  const auto low = [](double t) {  // 425 + 0.773 t - 1.69e-3 t^2 + 2.22e-6 t^3
    return t * (425 + t * (0.773 / 2 + t * (-1.69e-3 / 3 + t * 2.22e-6 / 4)));
  };
  if (c < 20) return (c - 20) * 440;
  double heat = low(std::min(c, 600.0)) - low(20);
  if (c > 600) {  // 666 + 13002 / (738 - t)
    const double t = std::min(c, 735.0);
    heat += 666 * (t - 600) + 13'002 * std::log((738 - 600.0) / (738 - t));
  }
  if (c > 735) {  // 545 + 17820 / (t - 731)
    const double t = std::min(c, 900.0);
    heat += 545 * (t - 735) + 17'820 * std::log((t - 731) / (735 - 731.0));
  }
  if (c > 900) heat += 650 * (c - 900);
  return heat;
}

std::int64_t ceil_div(std::int64_t a, std::int64_t b) {
  return (a + b - 1) / b;
}

/// Minutes to pass `by` at a rate in degrees C an hour, rounded up.
minutes time_for(TemperatureDifference by, std::int64_t c_per_h) {
  if (by <= TemperatureDifference{}) return minutes{0};
  return minutes{ceil_div(by.counts() * 60, 1800 * c_per_h)};
}

/// Whole watts to hold a temperature, as the planner counts them.
std::int64_t hold_watts(const HeatingKiln& kiln, Temperature at) {
  const std::int64_t counts = std::max<std::int64_t>(0, (at - kiln.room).counts());
  return kiln.hold_mw_per_c * counts / (1800 * 1000);
}

Problems faults(const HeatingKiln& kiln, const ExpectedFiring& firing) {
  Problems found;
  if (kiln.heat_c_per_h <= 0 || kiln.heat_w <= 0 || kiln.hold_mw_per_c < 0)
    found.push_back({"kiln", "The kiln's heating rate and powers are not known.",
                     "Give its heating rate, heating power and holding power."});
  if (firing.at <= kiln.room)
    found.push_back(
        {"temperature", "A firing must be hotter than the room.", "Give the set temperature."});
  if (firing.blades < 1)
    found.push_back({"blades", "At least one blade must share the firing.",
                     "Give the number of blades you expect in it."});
  const bool rate = firing.cooling && firing.cooling->c_per_h > 0;
  if ((firing.kind == FiringKind::anneal) != firing.cooling.has_value() ||
      (firing.cooling && !rate))
    found.push_back({"cooling",
                     "An anneal needs a cooling rate and its end; other firings have none.",
                     "Give degrees an hour and the temperature where it ends."});
  if (std::min({firing.load, firing.soak, firing.unload, firing.quench_each}) < minutes{0})
    found.push_back({"minutes", "The minutes of a firing cannot be negative.", "Check the times."});
  return found;
}

/// What the blades take: the share of the heating by which they slow it, or the heat of their mass.
Energy heat_of_blades(const HeatingKiln& kiln, const ExpectedFiring& firing) {
  if (kiln.load_mc_per_h <= 0)
    return Energy::joules(
        std::llround(joules_per_kg(kiln.room, firing.at) * firing.steel.in_kilograms()));
  const double rate = static_cast<double>(kiln.heat_c_per_h);
  const double share = static_cast<double>(kiln.load_mc_per_h * firing.blades) / 1000 / rate;
  const double heating_s = (firing.at - kiln.room).kelvins() / rate * 3600;
  return Energy::joules(std::llround(share * heating_s * static_cast<double>(kiln.heat_w)));
}

/// The middle of two temperatures in whole degrees C, rounded down as the planner does.
Temperature middle(Temperature a, Temperature b) {
  const auto mean = static_cast<std::int64_t>(std::floor((a.in_celsius() + b.in_celsius()) / 2));
  return Temperature::celsius(mean);
}

}  // namespace

double joules_per_kg(Temperature from, Temperature to) {
  return heat_content(to.in_celsius()) - heat_content(from.in_celsius());
}

Outcome<FiringUse> firing_use(const HeatingKiln& kiln, const ExpectedFiring& firing) {
  if (Problems found = faults(kiln, firing); !found.empty()) return found;
  FiringUse use;
  use.blades = firing.blades;
  const bool harden = firing.kind == FiringKind::harden;
  const minutes heat = time_for(firing.at - kiln.room, kiln.heat_c_per_h);
  const minutes out = harden ? firing.quench_each * firing.blades : firing.unload;
  const bool anneal = firing.kind == FiringKind::anneal;
  const minutes held = firing.load + firing.soak + (anneal ? minutes{0} : out);
  use.heat_up = Energy::watt_minutes(kiln.heat_w * heat.count());
  use.hold = Energy::watt_minutes(hold_watts(kiln, firing.at) * held.count());
  minutes cool{0};
  if (firing.cooling) {
    cool = time_for(firing.at - firing.cooling->down_to, firing.cooling->c_per_h);
    const Temperature mean = middle(firing.at, firing.cooling->down_to);
    use.cooling = Energy::watt_minutes(hold_watts(kiln, mean) * cool.count());
  }
  use.steel = heat_of_blades(kiln, firing);
  use.total = use.heat_up + use.hold + use.cooling + use.steel;
  use.hands_on = firing.load + out;
  use.attended = harden ? firing.soak : minutes{0};
  use.unattended = heat + cool + (harden ? minutes{0} : firing.soak);
  return use;
}

Money energy_share(const FiringUse& use, Money per_kwh) {
  return scaled_half_even(per_kwh, use.total.joules(), 3'600'000 * use.blades);
}

}  // namespace tangmark::costing
