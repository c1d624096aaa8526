// SPDX-License-Identifier: MIT
// Transformation temperatures: formulas against figures that others measured or printed.
#include <catch2/catch.hpp>

#include "domain/steel/critical_points.h"
#include "domain/steel/martensite_start.h"

using namespace tangmark;
using namespace tangmark::steel;

namespace {

Composition steel_of(const char* text) {
  return parse_composition(text, "composition").value();
}

}  // namespace

// Source: "approximate critical temperatures" as printed in steelmakers' and heat treaters'
// handbooks (from memory, in F there), compositions the middle of each grade; a producer group's
// technical cards of Cf53 (Ac1 730, Ac3 765 C) and 100Cr6 (Ac1 755 C). Andrews himself claims about
// 15 C either way; the handbooks round to 5 or 10 F, so 25 C is allowed.
TEST_CASE("Andrews' formulas come near the critical temperatures of the handbooks") {
  struct Row {
    const char* name;
    const char* steel;
    double ac1_c, ac3_c;  // no Ac3 where it is nought
  };
  const Row rows[] = {
      {"1045", "C:0.46,Mn:0.75,Si:0.25", 727, 780},
      {"4130", "C:0.30,Mn:0.50,Si:0.25,Cr:0.95,Mo:0.20", 757, 810},
      {"4140", "C:0.40,Mn:0.88,Si:0.25,Cr:0.95,Mo:0.20", 732, 804},
      {"4340", "C:0.40,Mn:0.70,Si:0.25,Ni:1.83,Cr:0.80,Mo:0.25", 724, 774},
      {"5140", "C:0.40,Mn:0.80,Si:0.25,Cr:0.80", 738, 788},
      {"5160", "C:0.60,Mn:0.88,Si:0.25,Cr:0.80", 710, 766},
      {"6150", "C:0.50,Mn:0.80,Si:0.25,Cr:0.95,V:0.15", 749, 788},
      {"8640", "C:0.40,Mn:0.88,Si:0.25,Ni:0.55,Cr:0.50,Mo:0.20", 732, 780},
      {"1095", "C:0.95,Mn:0.40,Si:0.20", 730, 0},
      {"Cf53", "C:0.535,Mn:0.55,Si:0.25", 730, 765},
      {"100Cr6", "C:0.99,Mn:0.35,Si:0.25,Cr:1.48", 755, 0},
  };
  for (const Row& row : rows) {
    CAPTURE(row.name);
    const auto points = critical_points(steel_of(row.steel)).value();
    CHECK(points.ac1_c == Approx(row.ac1_c).margin(25));
    if (row.ac3_c > 0) CHECK(points.ac3_c.value() == Approx(row.ac3_c).margin(25));
  }
}

// Source: martensite starts as measured and printed in handbooks (from memory), and a producer
// group's technical card of Cf53 (320 C). 30 C is what such formulas are good for.
TEST_CASE("both formulas come near the martensite starts of the handbooks") {
  struct Row {
    const char* name;
    const char* steel;
    double ms_c;
  };
  const Row rows[] = {
      {"1040", "C:0.40,Mn:0.75,Si:0.25", 345},
      {"4130", "C:0.30,Mn:0.50,Si:0.25,Cr:0.95,Mo:0.20", 380},
      {"4140", "C:0.40,Mn:0.88,Si:0.25,Cr:0.95,Mo:0.20", 338},
      {"4340", "C:0.40,Mn:0.70,Si:0.25,Ni:1.83,Cr:0.80,Mo:0.25", 290},
      {"5140", "C:0.40,Mn:0.80,Si:0.25,Cr:0.80", 330},
      {"5160", "C:0.60,Mn:0.88,Si:0.25,Cr:0.80", 255},
      {"8630", "C:0.30,Mn:0.80,Si:0.25,Ni:0.55,Cr:0.50,Mo:0.20", 365},
      {"Cf53", "C:0.535,Mn:0.55,Si:0.25", 320},
  };
  for (const Row& row : rows) {
    CAPTURE(row.name);
    const auto ms = martensite_start(steel_of(row.steel)).value();
    CHECK(ms.andrews_c == Approx(row.ms_c).margin(30));
    CHECK(ms.steven_haynes_c == Approx(row.ms_c).margin(40));
  }
}

// Source: a university's public program library restates Andrews' linear form with -7.5 Si as
// 539 - 423 C - 30.4 Mn - 12.1 Cr - 17.7 Ni - 7.5 Mo - 7.5 Si; each coefficient on its own.
TEST_CASE("each element moves the martensite start by its printed coefficient") {
  struct Row {
    const char* steel;
    double fall;
  };
  const double plain = martensite_start(steel_of("C:0.30")).value().andrews_c;
  CHECK(plain == Approx(539 - 423 * 0.30));
  for (const Row& row :
       {Row{"C:0.30,Mn:1", 30.4}, Row{"C:0.30,Cr:1", 12.1}, Row{"C:0.30,Ni:1", 17.7},
        Row{"C:0.30,Mo:1", 7.5}, Row{"C:0.30,Si:1", 7.5}}) {
    CAPTURE(row.steel);
    CHECK(plain - martensite_start(steel_of(row.steel)).value().andrews_c == Approx(row.fall));
  }
}
