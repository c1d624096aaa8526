// SPDX-License-Identifier: MIT
#include "domain/costing/learning.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "domain/costing/loss_rate.h"

using namespace tangmark;
using namespace tangmark::costing;

TEST_CASE("with nothing on record the guess stands") {
  const Estimate e = estimate(2.0, {});
  CHECK(e.figure == 2.0);
  CHECK(e.n == 0);
  CHECK(e.why() == "2 from the model; nothing on record yet.");
}

TEST_CASE("three actuals weigh as much as the guess, thirty drown it") {
  CHECK(estimate(2.0, {1.0, 1.0, 1.0}).figure == Approx(1.5));
  CHECK(estimate(2.0, std::vector<double>(30, 1.0)).figure == Approx(36.0 / 33));
}

TEST_CASE("a forgotten timer does not move the estimate") {
  CHECK(estimate(2.0, {1.4, 1.5, 1.6}).figure == estimate(2.0, {1.4, 1.5, 96.0}).figure);
}

TEST_CASE("an estimate says its counts and its spread") {
  const Estimate e = estimate(2.0, {1.2, 1.4, 1.6, 2.0});
  CHECK(e.why() ==
        "1.71 from your last 4 (median 1.5, half of them 1.35 to 1.7); the model says 2.");
  CHECK(e.record->least == 1.2);
  CHECK(e.record->most == 2.0);
}

TEST_CASE("figures that cannot be are left out of the record") {
  CHECK(seen({-1.0, std::nan(""), 3.0})->n == 1);
  CHECK_FALSE(seen({-1.0}).has_value());
}

TEST_CASE("a change is proposed from three actuals on, when it is worth saying") {
  CHECK_FALSE(proposal("Finish grind", 2.0, {1.0, 1.0}).has_value());
  CHECK_FALSE(proposal("Finish grind", 2.0, {2.0, 2.05, 2.1}).has_value());
  const auto p = proposal("Finish grind", 2.0, {1.0, 1.0, 1.0});
  REQUIRE(p.has_value());
  CHECK(p->now == 2.0);
  CHECK(p->estimate.figure == Approx(1.5));
}

TEST_CASE("losses are told as counts with their band") {
  const auto r = loss_rate({3, 11});
  CHECK(r->counts() == "3 of 11");
  CHECK(r->rate == Approx(3.0 / 11));
  CHECK(r->low < r->rate);
  CHECK(r->high > r->rate);
  CHECK(loss_rate({0, 4})->low == 0);
  CHECK(loss_rate({4, 4})->high == 1);
}

TEST_CASE("counts that cannot be are refused") {
  CHECK_FALSE(loss_rate({0, 0}).ok());
  CHECK_FALSE(loss_rate({5, 4}).ok());
  CHECK_FALSE(loss_rate({-1, 4}).ok());
  CHECK(loss_rate({1, 4}, 1.0).problem().field == "confidence");
}

TEST_CASE("a survival is drawn from the guess toward the record and never reaches zero") {
  CHECK(survival_estimate(Share::percent(90), {0, 0}) == Share::percent(90));
  CHECK(survival_estimate(Share::percent(90), {5, 10}) == Share::percent(70));
  CHECK(survival_estimate(Share{}, {10, 10}) > Share{});
}
