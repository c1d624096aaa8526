// SPDX-License-Identifier: MIT
#include "domain/stock/bath_heat.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::stock;

namespace {

constexpr auto celsius = [](int c) { return Temperature::celsius(c); };
constexpr auto mm = [](int n) { return Length::nanometres(n * 1'000'000LL); };

// The specific heat of carbon steel by EN 1993-1-2:2005, 3.4.1.2, J/kg K; from memory.
double specific_heat(double c) {
  if (c < 600) return 425 + 0.773 * c - 1.69e-3 * c * c + 2.22e-6 * c * c * c;
  if (c < 735) return 666 + 13002 / (738 - c);
  if (c < 900) return 545 + 17820 / (c - 731);
  return 650;
}

double summed_kj(int from, int to) {
  double joules = 0;
  for (int step = from * 100; step < to * 100; ++step)
    joules += specific_heat((step + 0.5) / 100) / 100;
  return joules / 1000;
}

Bath oil(std::int64_t litres) {
  Bath bath;
  bath.medium = "fast oil";
  bath.volume = Volume::microlitres(litres * 1'000'000);
  bath.low = celsius(40);
  return bath;
}

}  // namespace

TEST_CASE("the heat of steel is the standard's specific heat added up degree by degree") {
  for (const int hot : {200, 590, 700, 800, 850, 1100}) {
    INFO(hot << " C");
    CHECK(static_cast<double>(heat_of_steel_per_kg(celsius(hot), celsius(20)).joules()) / 1000 ==
          Approx(summed_kj(20, hot)).epsilon(1e-3));
  }
}

TEST_CASE("a pound of steel warms a gallon of oil by forty to seventy degrees") {
  // 250 x 40 x 8.66 mm ground to two thirds is 0.454 kg; 3.785 l of oil at 1.7 kJ/l C take 6.43 kJ
  // a degree; the steel gives about 0.454 x 550 = 250 kJ, so 39 degrees.
  Bath bath = oil(1);
  bath.volume = Volume::microlitres(3'785'000);
  const auto rise = warms_by(bath, mm(250), mm(40), Length::nanometres(8'660'000), celsius(800));
  REQUIRE(rise);
  CHECK(rise->kelvins() == Approx(39).margin(2));
}

TEST_CASE("twice the oil warms half as much, and water less than oil") {
  const auto one = warms_by(oil(10), mm(300), {}, {}, celsius(800));
  const auto two = warms_by(oil(20), mm(300), {}, {}, celsius(800));
  Bath water = oil(10);
  water.medium = "water";
  CHECK(one->kelvins() == Approx(2 * two->kelvins()).epsilon(1e-3));
  CHECK(*warms_by(water, mm(300), {}, {}, celsius(800)) < *one);
}

TEST_CASE("nothing is said of plates, or of a tank whose volume is not entered") {
  Bath plates = oil(10);
  plates.medium = "aluminium plates";
  CHECK_FALSE(warms_by(plates, mm(300), {}, {}, celsius(800)));
  Bath unknown = oil(10);
  unknown.volume.reset();
  CHECK_FALSE(warms_by(unknown, mm(300), {}, {}, celsius(800)));
}
