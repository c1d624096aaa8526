// SPDX-License-Identifier: MIT
#include "domain/stock/customers_material.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::stock;

namespace {
constexpr commission::CustomerId owner{3}, other{4};
}

TEST_CASE("catch 25: a customer's material is not used on another job") {
  CHECK_FALSE(customers_material_elsewhere(owner, owner, "9-1"));
  CHECK_FALSE(customers_material_elsewhere(std::nullopt, other, "9-1"));
  for (const std::optional<commission::CustomerId> job :
       {std::optional(other), std::optional<commission::CustomerId>()}) {
    const auto caught = customers_material_elsewhere(owner, job, "9-1");
    REQUIRE(caught);
    CHECK(caught->number == 25);
    CHECK(caught->weight == Weight::stop);
  }
}

TEST_CASE("catch 25: a remainder not given back asks at delivery") {
  const auto caught = remainder_not_returned("9", Mass::grams(340), MassUnit::gram);
  REQUIRE(caught);
  CHECK(caught->weight == Weight::ask);
  CHECK(caught->sentence.find("340 g") != std::string::npos);
}
