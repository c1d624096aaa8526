// SPDX-License-Identifier: MIT
#include "domain/costing/billet_cost.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::costing;

namespace {
Money eur(std::int64_t minor) {
  return {minor, Currency()};
}
BilletMaking a_billet() {
  return {{{"W1 bar", Mass::grams(900), eur(9'00)}, {"15N20 bar", Mass::grams(600), eur(12'00)}},
          {Mass::grams(100)},
          Mass::grams(900),
          {eur(19'00)}};
}
}  // namespace

TEST_CASE("scale and crop thrown away make the rest of the billet dearer") {
  const auto billet = billet_cost(a_billet());
  REQUIRE(billet.ok());
  CHECK(billet->in == Mass::grams(1500));
  CHECK(billet->lost == Mass::grams(500));
  CHECK(billet->usable == Mass::grams(1000));
  CHECK(billet->cost == eur(40'00));
  CHECK(*cost_of_piece(*billet, Mass::grams(250)) == eur(10'00));
  CHECK(*cost_of_piece(*billet, Mass::grams(1000)) == billet->cost);
}

TEST_CASE("costs come down from a billet into a billet made of its pieces") {
  const auto first = billet_cost(a_billet());
  const auto second =
      billet_cost({{{"half of it", Mass::grams(500), *cost_of_piece(*first, Mass::grams(500))},
                    {"core", Mass::grams(250), eur(5'00)}},
                   {},
                   Mass::grams(500),
                   {}});
  CHECK(second->cost == eur(25'00));
  CHECK(*cost_of_piece(*second, Mass::grams(100)) == eur(5'00));
}

TEST_CASE("more mass out of a billet than went in is refused") {
  BilletMaking making = a_billet();
  making.finished = Mass::grams(1401);
  CHECK(billet_cost(making).problem().field == "finished");
  making.finished = Mass{};
  CHECK_FALSE(billet_cost(making).ok());
  CHECK_FALSE(billet_cost({}).ok());
  CHECK_FALSE(cost_of_piece(*billet_cost(a_billet()), Mass::grams(1001)).ok());
  making = a_billet();
  making.work.push_back(Money(1, *Currency::of("USD")));
  CHECK(billet_cost(making).problem().field == "work");
}
