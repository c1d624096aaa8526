// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/measure/mass.h"
#include "domain/measure/money.h"
#include "domain/stock/lot.h"

namespace tangmark::stock {

/// Mass of one bar by its sizes and density (7850 kg/m3 when not given); none without a section.
std::optional<Mass> mass_of_bar_by_sizes(const Lot& lot);
/// Mass of all bars of a lot: as weighed, else by sizes; none when neither is known.
std::optional<Mass> mass_of_lot(const Lot& lot);
/// What a kilogram of it cost, half to even; none when the mass is not known.
std::optional<Money> price_per_kg(const Lot& lot);

}  // namespace tangmark::stock
