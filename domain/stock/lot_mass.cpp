// SPDX-License-Identifier: MIT
#include "domain/stock/lot_mass.h"

namespace tangmark::stock {

std::optional<Mass> mass_of_bar_by_sizes(const Lot& lot) {
  if (!lot.section || !lot.length) return std::nullopt;
  const Density density = lot.density.value_or(Density{});
  if (*lot.section == Section::flat && lot.width && lot.thickness)
    return bar_mass(*lot.length, *lot.width, *lot.thickness, density);
  if (*lot.section == Section::round && lot.diameter)
    return round_mass(*lot.length, *lot.diameter, density);
  return std::nullopt;
}

std::optional<Mass> mass_of_lot(const Lot& lot) {
  if (lot.mass) return lot.mass;
  const auto one = mass_of_bar_by_sizes(lot);
  if (!one) return std::nullopt;
  return Mass::micrograms(one->micrograms() * lot.count);
}

std::optional<Money> price_per_kg(const Lot& lot) {
  const auto mass = mass_of_lot(lot);
  if (!mass || *mass <= Mass()) return std::nullopt;
  return scaled_half_even(lot.price, Mass::grams(1000).micrograms(), mass->micrograms());
}

}  // namespace tangmark::stock
