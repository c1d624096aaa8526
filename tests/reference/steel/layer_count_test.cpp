// SPDX-License-Identifier: MIT
#include <catch2/catch.hpp>

#include "domain/steel/layer_count.h"

using namespace tangmark;
using namespace tangmark::steel;

namespace {

std::int64_t counted(std::int64_t start, const std::string& operations) {
  const auto restacks = parse_restacks(operations, "operations");
  REQUIRE(restacks);
  const auto layers = nominal_layers(start, *restacks);
  REQUIRE(layers);
  return *layers;
}

std::string folds(int n) {
  std::string all = "fold";
  for (int i = 1; i < n; ++i) all += ",fold";
  return all;
}

}  // namespace

// Source: a published question-and-answer page on folded blades: "start with two layers and fold
// them 11 times (2 * 2^11 = 4096)", and once more for 8192.
TEST_CASE("two layers folded eleven and twelve times") {
  CHECK(counted(2, folds(11)) == 4096);
  CHECK(counted(2, folds(12)) == 8192);
}

// Common practice, no source: a restack of n pieces multiplies the layers by n; welded faces of one
// steel are still counted as two. Nine layers each of two steels and two restacks of three are the
// usual way to 162.
TEST_CASE("a stack of eighteen restacked twice by three") {
  CHECK(counted(18, "cut3,cut3") == 162);
  CHECK(counted(7, "cut3,cut4") == 84);
}
