// SPDX-License-Identifier: MIT
#include "domain/commission/contact_rules.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::commission;

namespace {

CalendarDate november(unsigned day) {
  return date::year{2026} / 11 / day;
}

Commission a_commission(CommissionState state) {
  Commission commission{.customer = CustomerId{1}, .opened_at = {}};
  commission.number = 12;
  commission.state = state;
  return commission;
}

}  // namespace

TEST_CASE("catch 26: a waiting buyer is not left in silence longer than the shop's rule") {
  const auto waiting = a_commission(CommissionState::accepted);
  CHECK_FALSE(silent_too_long(waiting, november(1), november(25), 24));
  const auto caught = silent_too_long(waiting, november(1), november(25), 23);
  REQUIRE(caught);
  CHECK(caught->number == 26);
  CHECK(caught->weight == Weight::remark);
  CHECK_FALSE(
      silent_too_long(a_commission(CommissionState::delivered), november(1), november(25), 3));
}

TEST_CASE("catch 26: work does not start on a specification that nobody confirmed of late") {
  auto accepted = a_commission(CommissionState::accepted);
  CHECK(specification_not_confirmed(accepted, november(25), 90));
  accepted.accepted_on = date::year{2025} / 11 / 1;
  const auto old = specification_not_confirmed(accepted, november(25), 90);
  REQUIRE(old);
  CHECK(old->weight == Weight::ask);
  accepted.specification_confirmed_on = november(20);
  CHECK_FALSE(specification_not_confirmed(accepted, november(25), 90));
}

TEST_CASE("agreeing to the quote confirms the specification") {
  auto accepted = a_commission(CommissionState::accepted);
  accepted.accepted_on = november(20);
  CHECK_FALSE(specification_not_confirmed(accepted, november(25), 90));
}
