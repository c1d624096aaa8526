// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace tangmark::desk {

/// The seven places of the window, in the order of their keys 1 to 7.
enum class Place { today, commissions, steel, blades, kiln, certificates, shop };

inline constexpr std::array all_places{Place::today, Place::commissions, Place::steel,
                                       Place::blades, Place::kiln, Place::certificates,
                                       Place::shop};

/// "Today", "Commissions" ...
std::string_view name(Place place);
/// From the name, upper or lower case.
std::optional<Place> place_called(std::string_view name);

}  // namespace tangmark::desk
