// SPDX-License-Identifier: MIT
#include "domain/costing/loss.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::costing;

namespace {
Money eur(std::int64_t minor) { return {minor, Currency()}; }
}  // namespace

TEST_CASE("a route that loses nothing costs the sum of its steps") {
  const auto good = cost_per_good({{eur(300'00)}, {eur(125'50)}});
  REQUIRE(good.ok());
  CHECK(good->per_good == eur(425'50));
  CHECK(good->loss == eur(0));
  CHECK(good->started_per_good == Approx(1));
}

TEST_CASE("what was spent before a loss is paid by the survivors, what comes after is not") {
  // 300 before a quench that 3 of 4 survive, 100 after it: 300 / 0.75 + 100.
  const auto good = cost_per_good({{eur(300'00), Share::percent(75)}, {eur(100'00)}});
  CHECK(good->per_good == eur(500'00));
  CHECK(good->steps == eur(400'00));
  CHECK(good->loss == eur(100'00));
  CHECK(good->started_per_good == Approx(1 / 0.75));
}

TEST_CASE("losses of several operations multiply") {
  // (10 / 0.5 + 20) / 0.8 + 5 = 55
  const auto good = cost_per_good(
      {{eur(10'00), Share::percent(50)}, {eur(20'00), Share::percent(80)}, {eur(5'00)}});
  CHECK(good->per_good == eur(55'00));
}

TEST_CASE("the cost of a good blade is rounded once, half to even") {
  CHECK(cost_per_good({{eur(1), Share::percent(40)}})->per_good == eur(2));    // 2.5 to 2
  CHECK(cost_per_good({{eur(3), Share::percent(40)}})->per_good == eur(8));    // 7.5 to 8
  CHECK(cost_per_good({{eur(100), Share::millionths(333'333)}})->per_good == eur(300));
}

TEST_CASE("thirty risky operations are still costed exactly") {
  std::vector<StepAtRisk> steps(30, {eur(1'00), Share::percent(50)});
  // sum_{k=1..30} 2^k = 2^31 - 2
  CHECK(cost_per_good(steps)->per_good == eur((2'147'483'648 - 2) * 100));
}

TEST_CASE("a loss that cannot be costed is refused by its step") {
  const Currency yen = *Currency::of("JPY");
  const auto bad = cost_per_good({{eur(-1)}, {eur(1), Share{}}, {Money(1, yen)}});
  REQUIRE_FALSE(bad.ok());
  REQUIRE(bad.problems().size() == 3);
  CHECK(bad.problems()[0].field == "step 1");
  CHECK(bad.problems()[1].field == "step 2");
  CHECK(bad.problems()[2].field == "step 3");
  CHECK_FALSE(cost_per_good({}).ok());
  CHECK_FALSE(cost_per_good({{eur(1), Share::percent(101)}}).ok());
  CHECK_FALSE(
      cost_per_good(std::vector<StepAtRisk>(40, {eur(1), Share::millionths(1)})).ok());
}
