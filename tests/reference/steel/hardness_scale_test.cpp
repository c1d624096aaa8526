// SPDX-License-Identifier: MIT
#include "domain/steel/hardness_scale.h"

#include <catch2/catch.hpp>

using namespace tangmark::steel;

// Source: ASTM E140 Table 1 (non-austenitic steel, HRC to HV), every whole row from 20 to 68; 37 of
// the rows agree in three independent reprints, the others are the standard's.
TEST_CASE("each whole row of the hardness table converts both ways") {
  struct Row {
    double hrc, hv;
  };
  const Row rows[] = {{68, 940}, {67, 900}, {66, 865}, {65, 832}, {64, 800}, {63, 772}, {62, 746},
                      {61, 720}, {60, 697}, {59, 674}, {58, 653}, {57, 633}, {56, 613}, {55, 595},
                      {54, 577}, {53, 560}, {52, 544}, {51, 528}, {50, 513}, {49, 498}, {48, 484},
                      {47, 471}, {46, 458}, {45, 446}, {44, 434}, {43, 423}, {42, 412}, {41, 402},
                      {40, 392}, {39, 382}, {38, 372}, {37, 363}, {36, 354}, {35, 345}, {34, 336},
                      {33, 327}, {32, 318}, {31, 310}, {30, 302}, {29, 294}, {28, 286}, {27, 279},
                      {26, 272}, {25, 266}, {24, 260}, {23, 254}, {22, 248}, {21, 243}, {20, 238}};
  for (const Row& row : rows) {
    CAPTURE(row.hrc);
    CHECK(to_vickers({row.hrc}).value().points == row.hv);
    CHECK(to_rockwell_c({row.hv}).value().points == row.hrc);
  }
}

// Source: ISO 18265 steel table (same data as DIN 50150), from memory; laid out by HV and measured
// on other steels, so it agrees with E140 within about half a point.
TEST_CASE("the other standard's table agrees within half a point") {
  struct Row {
    double hv, hrc;
  };
  const Row rows[] = {{240, 20.3}, {300, 29.8}, {400, 40.8}, {500, 49.1}, {600, 55.2}, {640, 57.3},
                      {700, 60.1}, {740, 61.8}, {800, 64.0}, {840, 65.3}, {900, 67.0}, {940, 68.0}};
  for (const Row& row : rows) {
    CAPTURE(row.hv);
    CHECK(to_rockwell_c({row.hv}).value().points == Approx(row.hrc).margin(0.5));
  }
}

TEST_CASE("between rows the scale is linear and beyond the table it is refused") {
  CHECK(to_vickers({60.5}).value().points == Approx(708.5));
  CHECK(to_rockwell_c({708.5}).value().points == Approx(60.5));
  CHECK_FALSE(to_vickers({19.9}).ok());
  CHECK_FALSE(to_vickers({68.1}).ok());
  CHECK_FALSE(to_rockwell_c({237}).ok());
  CHECK_FALSE(to_rockwell_c({941}).ok());
}
