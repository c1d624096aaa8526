// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>

#include "domain/measure/energy.h"
#include "domain/measure/length.h"
#include "domain/measure/mass.h"
#include "domain/measure/temperature.h"
#include "domain/stock/bath.h"

namespace tangmark::stock {

/// How much heat a blade brings into a bath, and by how much that warms it. An estimate.
///
/// Assumes: all of the blade goes in at its hardening temperature and comes out as warm as the
/// bath; ground, it has two thirds of the volume of length, width and thickness; 40 by 5 mm where
/// these are not entered; the bath is stirred. Common practice, no source.

/// What steel gives off from `hot` down to `cold`, for each kilogram.
/// **Source**: specific heat of carbon steel, EN 1993-1-2:2005, 3.4.1.2, integrated; from memory.
/// **Valid**: 20 to 1200 C, about 562 kJ/kg from 800 to 20 C. Outside: taken as at the nearer end.
Energy heat_of_steel_per_kg(Temperature hot, Temperature cold);

/// What a litre takes for each degree: oil 1.7 kJ (0.87 kg/l at 2.0 kJ/kg; common practice, no
/// source), water and brine 4.1 kJ. Empty for any other medium.
std::optional<Energy> heat_per_litre_and_degree(std::string_view medium);

/// By how much the quench of a blade warms the bath; empty without the bath's volume or medium.
std::optional<TemperatureDifference> warms_by(const Bath& bath, Length length,
                                              std::optional<Length> width,
                                              std::optional<Length> thickness, Temperature hot);

/// Where the bath stands when it is left alone: the lower end of its band, else the room.
Temperature rest_of(const Bath& bath);

}  // namespace tangmark::stock
