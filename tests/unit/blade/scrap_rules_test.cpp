// SPDX-License-Identifier: MIT
#include "domain/blade/scrap_rules.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::blade;

TEST_CASE("27: a scrap needs somebody to bear its cost") {
  REQUIRE(scrap_without_cost(23, std::nullopt));
  CHECK(scrap_without_cost(23, std::nullopt)->number == 27);
  CHECK(scrap_without_cost(23, std::nullopt)->weight == Weight::stop);
  CHECK_FALSE(scrap_without_cost(23, CostGoesTo::shop));
}

TEST_CASE("27: a scrap that leaves a commission without its blade is said") {
  REQUIRE(scrap_leaves_promise(23, 7, false));
  CHECK(scrap_leaves_promise(23, 7, false)->sentence.find("Commission 7") != std::string::npos);
  CHECK_FALSE(scrap_leaves_promise(23, 7, true));
  CHECK_FALSE(scrap_leaves_promise(23, std::nullopt, false));
}
