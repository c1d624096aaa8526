// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <cstdint>
#include <optional>

#include "domain/measure/energy.h"
#include "domain/measure/mass.h"
#include "domain/measure/money.h"
#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"

namespace tangmark::costing {

/// What a firing costs to heat. Assumptions:
/// - the kiln starts at room temperature, heats at one rate with one power, then holds with a power
///   that grows in step with the heat above the room; whole minutes, the heat-up rounded up;
/// - in controlled cooling the kiln is fed the holding power of the middle temperature;
/// - the steel's own heat is added, by the kiln's records where they tell it, else by its mass; it
/// is
///   small beside the brick's, and is never used for sharing.
struct HeatingKiln {
  Temperature room = Temperature::celsius(20);
  std::int64_t heat_c_per_h = 0;   ///< degrees C an hour while heating
  std::int64_t heat_w = 0;         ///< watts while heating
  std::int64_t hold_mw_per_c = 0;  ///< milliwatts for each degree C above the room
  /// Thousandths of a degree C an hour by which each blade inside slows the heating; 0: not known.
  std::int64_t load_mc_per_h = 0;
  friend bool operator==(const HeatingKiln&, const HeatingKiln&) = default;
};

/// soak: in together, out together. harden: pulled and quenched one by one, always attended.
/// anneal: soaked, then cooled at a set rate inside the kiln.
enum class FiringKind { soak, harden, anneal };

struct ControlledCooling {
  Temperature down_to;
  std::int64_t c_per_h = 0;
  friend bool operator==(const ControlledCooling&, const ControlledCooling&) = default;
};

struct ExpectedFiring {
  FiringKind kind = FiringKind::soak;
  Temperature at;
  std::chrono::minutes load{}, soak{}, unload{};
  std::chrono::minutes quench_each{};        ///< harden only
  std::optional<ControlledCooling> cooling;  ///< anneal only
  Mass steel;                                ///< all blades in it together
  std::int64_t blades = 1;                   ///< the load the maker expects: who shares the firing
  friend bool operator==(const ExpectedFiring&, const ExpectedFiring&) = default;
};

struct FiringUse {
  Energy heat_up, hold, cooling, steel;
  Energy total;                       ///< the sum of the four
  std::chrono::minutes hands_on{};    ///< load and unload, or load and quench
  std::chrono::minutes attended{};    ///< the soak of a harden firing
  std::chrono::minutes unattended{};  ///< heat-up, other soaks, controlled cooling
  std::int64_t blades = 1;
  friend bool operator==(const FiringUse&, const FiringUse&) = default;
};

/// Refuses a kiln without rates, a temperature not above the room, no blades, an anneal without a
/// cooling rate.
Outcome<FiringUse> firing_use(const HeatingKiln& kiln, const ExpectedFiring& firing);

/// One blade's part of the electricity: by slot, never by mass. Half to even.
Money energy_share(const FiringUse& use, Money per_kwh);

/// Heat to bring a kilogram of carbon steel from one temperature to another.
/// Source: specific heat of carbon steel, EN 1993-1-2:2005, 3.4.1.2, integrated (formulas from
/// memory). Valid: 20 to 1200 C; outside, the nearest end's specific heat is carried on.
double joules_per_kg(Temperature from, Temperature to);

}  // namespace tangmark::costing
