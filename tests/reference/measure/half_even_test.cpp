// SPDX-License-Identifier: MIT
// Source: General Decimal Arithmetic Testcases (M. Cowlishaw, IBM, version 2.59), rounding.decTest,
// section "rounding: half_even": cases radx170 to radx199, rsux170 to rsux199 (sums kept to a whole
// number) and rdvx301 to rdvx318 (quotients kept to five figures).
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <string>

#include "domain/measure/money.h"

using namespace tangmark;

namespace {

struct Sum {
  std::int64_t whole;
  const char* added;  // at most seven decimals
  std::int64_t rounded;
};

struct Quotient {
  std::int64_t dividend;
  std::int64_t divisor_e4;  // in ten-thousandths
  std::int64_t rounded;
  std::int64_t scale;  // 10 where the published result has one decimal
};

std::int64_t ten_millionths(const char* decimal) {
  return std::llround(std::strtod(decimal, nullptr) * 1e7);
}

}  // namespace

TEST_CASE("sums round half to even as published for decimal arithmetic") {
  const auto row = GENERATE(values<Sum>({
      {12345, "-0.1", 12345},         {12345, "-0.01", 12345},     {12345, "-0.00001", 12345},
      {12345, "-0.0000001", 12345},   {12345, "0", 12345},         {12345, "0.0000001", 12345},
      {12345, "0.1", 12345},          {12346, "0.49999", 12346},   {12346, "0.5", 12346},
      {12346, "0.50001", 12347},      {12345, "0.4", 12345},       {12345, "0.49", 12345},
      {12345, "0.499", 12345},        {12345, "0.49999", 12345},   {12345, "0.5", 12346},
      {12345, "0.50001", 12346},      {12345, "0.5001", 12346},    {12345, "0.501", 12346},
      {12345, "0.51", 12346},         {12345, "0.6", 12346},       {-12345, "-0.1", -12345},
      {-12345, "-0.0000001", -12345}, {-12345, "0", -12345},       {-12345, "0.0000001", -12345},
      {-12345, "0.1", -12345},        {-12346, "0.49999", -12346}, {-12346, "0.5", -12346},
      {-12346, "0.50001", -12345},    {-12345, "0.4", -12345},     {-12345, "0.49", -12345},
      {-12345, "0.499", -12345},      {-12345, "0.49999", -12345}, {-12345, "0.5", -12344},
      {-12345, "0.50001", -12344},    {-12345, "0.5001", -12344},  {-12345, "0.501", -12344},
      {-12345, "0.51", -12344},       {-12345, "0.6", -12344},
  }));
  CAPTURE(row.whole, row.added);
  const Money exact(row.whole * 10'000'000 + ten_millionths(row.added), Currency());
  CHECK(scaled_half_even(exact, 1, 10'000'000).minor() == row.rounded);
}

TEST_CASE("quotients round half to even as published for decimal arithmetic") {
  const auto row = GENERATE(values<Quotient>({
      {12345, 10000, 12345, 1},
      {12345, 10001, 12344, 1},
      {12345, 10010, 12333, 1},
      {12345, 10100, 12223, 1},
      {12345, 11000, 11223, 1},
      {12355, 40000, 30888, 10},
      {12345, 40000, 30862, 10},
      {12355, 40001, 30887, 10},
      {12345, 40001, 30862, 10},
      {12345, 49000, 25194, 10},
      {12345, 49900, 24739, 10},
      {12345, 49990, 24695, 10},
      {12345, 49999, 24690, 10},
      {12345, 50000, 24690, 10},
      {12345, 50001, 24690, 10},
      {12345, 50010, 24685, 10},
      {12345, 50100, 24641, 10},
      {12345, 51000, 24206, 10},
  }));
  CAPTURE(row.dividend, row.divisor_e4);
  const Money dividend(row.dividend, Currency());
  CHECK(scaled_half_even(dividend, 10'000 * row.scale, row.divisor_e4).minor() == row.rounded);
}
