// SPDX-License-Identifier: MIT
#include "domain/stock/lot_mass.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::stock;

namespace {

Lot two_flat_bars() {
  Lot lot;
  lot.section = Section::flat;
  lot.length = Length::millimetres(1000);
  lot.width = Length::millimetres(50);
  lot.thickness = Length::millimetres(4);
  lot.count = 2;
  lot.price = Money(62'80, Currency());
  return lot;
}

}  // namespace

TEST_CASE("a lot weighs what its sizes say until it is weighed") {
  Lot lot = two_flat_bars();
  CHECK(mass_of_lot(lot) == Mass::grams(3140));  // 2 x 200 cm3 x 7.85 g/cm3
  lot.mass = Mass::grams(3100);
  CHECK(mass_of_lot(lot) == Mass::grams(3100));
}

TEST_CASE("a kilogram costs the price of the lot over its mass") {
  CHECK(price_per_kg(two_flat_bars()) == Money(20'00, Currency()));  // 62.80 / 3.14 kg
}

TEST_CASE("a lump of no section and no mass has no price per kilogram") {
  Lot lot;
  lot.price = Money(10'00, Currency());
  CHECK_FALSE(mass_of_lot(lot));
  CHECK_FALSE(price_per_kg(lot));
}
