// SPDX-License-Identifier: MIT
#include "domain/commission/commission_step.h"

#include <fmt/format.h>

namespace tangmark::commission {
namespace {

using S = CommissionState;

struct Rule {
  bool allowed;
  S after;
  std::string_view remedy;  // when it is not allowed
};

bool is_before_acceptance(S now) {
  return now == S::enquiry || now == S::quoted;
}

Rule rule_for(S now, CommissionStep step) {
  switch (step) {
    case CommissionStep::add_items:
      return {!is_over(now), now, "Open a new commission."};
    case CommissionStep::make_quote:
      return {!is_over(now), now, "Open a new commission."};
    case CommissionStep::send_quote:
      return {!is_over(now), now == S::enquiry ? S::quoted : now, "Open a new commission."};
    case CommissionStep::accept:
      return {!is_over(now), is_before_acceptance(now) ? S::accepted : now,
              "Open a new commission."};
    case CommissionStep::decline:
      return {is_before_acceptance(now), S::declined, "Cancel an accepted commission instead."};
    case CommissionStep::take_money:
      return {is_under_way(now) || now == S::delivered, now, "Accept the quote first."};
    case CommissionStep::promise:
      return {!is_over(now), now, "Open a new commission."};
    case CommissionStep::start_work:
      return {is_under_way(now), now == S::accepted ? S::in_work : now, "Accept the quote first."};
    case CommissionStep::make_ready:
      return {is_under_way(now), S::ready, "Accept the quote first."};
    case CommissionStep::deliver:
      return {is_under_way(now), S::delivered, "Only accepted work can be delivered."};
    case CommissionStep::cancel:
      return {!is_over(now), S::cancelled, "There is nothing left to cancel."};
  }
  return {false, now, ""};
}

}  // namespace

Outcome<CommissionState> after_step(CommissionState now, CommissionStep step,
                                    std::string_view field) {
  const Rule rule = rule_for(now, step);
  if (rule.allowed) return rule.after;
  const bool enquiry = now == S::enquiry;
  return Problem{std::string(field),
                 fmt::format("The commission is {}{}.", enquiry ? "an enquiry, not an order" : "",
                             enquiry ? "" : word_of(now)),
                 std::string(rule.remedy)};
}

}  // namespace tangmark::commission
