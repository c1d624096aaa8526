// SPDX-License-Identifier: MIT
#include "domain/commission/commission_step.h"

#include <catch2/catch.hpp>

using namespace tangmark;
using namespace tangmark::commission;
using State = CommissionState;
using Step = CommissionStep;

TEST_CASE("a commission goes from enquiry to delivered in the order of a job") {
  State state = State::enquiry;
  for (const auto& [step, after] :
       {std::pair{Step::send_quote, State::quoted}, std::pair{Step::accept, State::accepted},
        std::pair{Step::take_money, State::accepted}, std::pair{Step::start_work, State::in_work},
        std::pair{Step::make_ready, State::ready}, std::pair{Step::deliver, State::delivered},
        std::pair{Step::take_money, State::delivered}}) {
    const auto next = after_step(state, step, "commission");
    REQUIRE(next);
    CHECK(*next == after);
    state = *next;
  }
}

TEST_CASE("an enquiry is not an order") {
  for (const Step step : {Step::take_money, Step::start_work, Step::make_ready, Step::deliver}) {
    const auto refused = after_step(State::enquiry, step, "commission");
    REQUIRE_FALSE(refused);
    CHECK(refused.problem().field == "commission");
    CHECK(refused.problem().sentence == "The commission is an enquiry, not an order.");
  }
}

TEST_CASE("what is over takes no more work") {
  for (const State over : {State::delivered, State::declined, State::cancelled})
    for (const Step step :
         {Step::add_items, Step::make_quote, Step::send_quote, Step::accept, Step::promise,
          Step::start_work, Step::make_ready, Step::deliver, Step::cancel})
      CHECK_FALSE(after_step(over, step, "commission"));
}

TEST_CASE("an accepted commission is cancelled, not declined") {
  CHECK(after_step(State::quoted, Step::decline, "commission"));
  CHECK_FALSE(after_step(State::accepted, Step::decline, "commission"));
  CHECK(after_step(State::accepted, Step::cancel, "commission"));
}
