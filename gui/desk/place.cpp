// SPDX-License-Identifier: MIT
#include "gui/desk/place.h"

#include <algorithm>
#include <cctype>

namespace tangmark::desk {

std::string_view name(Place place) {
  switch (place) {
    case Place::today: return "Today";
    case Place::commissions: return "Commissions";
    case Place::steel: return "Steel";
    case Place::blades: return "Blades";
    case Place::kiln: return "Kiln";
    case Place::certificates: return "Certificates";
    case Place::shop: return "Shop";
  }
  return {};
}

std::optional<Place> place_called(std::string_view wanted) {
  const auto same = [](char a, char b) {
    return std::tolower(static_cast<unsigned char>(a)) ==
           std::tolower(static_cast<unsigned char>(b));
  };
  for (Place place : all_places) {
    const std::string_view own = name(place);
    if (std::equal(own.begin(), own.end(), wanted.begin(), wanted.end(), same)) return place;
  }
  return std::nullopt;
}

}  // namespace tangmark::desk
