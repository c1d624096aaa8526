// SPDX-License-Identifier: MIT
#include "domain/commission/promise_rules.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::commission;

namespace {

CalendarDate december(unsigned day) {
  return date::year{2026} / 12 / day;
}

std::optional<Promise> promised(unsigned day) {
  return Promise{
      .commission = CommissionId{1}, .day = december(day), .made_at = {}, .words = {}, .told = {}};
}

}  // namespace

TEST_CASE("catch 19: a promise earlier than the forecast asks") {
  const auto caught = promise_before_forecast(december(10), december(12));
  REQUIRE(caught);
  CHECK(caught->number == 19);
  CHECK(caught->weight == Weight::ask);
  CHECK_FALSE(promise_before_forecast(december(12), december(12)));
  CHECK_FALSE(promise_before_forecast(december(10), std::nullopt));
}

TEST_CASE("catch 19: a promised day is not moved later without the buyer told") {
  const auto caught = moved_without_telling(promised(10), december(17), std::nullopt);
  REQUIRE(caught);
  CHECK(caught->weight == Weight::stop);
  CHECK_FALSE(moved_without_telling(promised(10), december(17), "by letter"));
  CHECK_FALSE(moved_without_telling(promised(10), december(3), std::nullopt));
  CHECK_FALSE(moved_without_telling(std::nullopt, december(17), std::nullopt));
}
