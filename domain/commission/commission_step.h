// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "domain/commission/commission.h"
#include "domain/measure/outcome.h"

namespace tangmark::commission {

/// What can be done to a commission, in the order of a job.
enum class CommissionStep {
  add_items,
  make_quote,
  send_quote,
  accept,
  decline,
  take_money,
  promise,
  start_work,
  make_ready,
  deliver,
  cancel
};

/// The state after a step, or why a commission in this state cannot take it. Rules: an enquiry is
/// not an order; a declined or cancelled one takes no more work; a delivered one takes money only.
Outcome<CommissionState> after_step(CommissionState now, CommissionStep step,
                                    std::string_view field);

}  // namespace tangmark::commission
