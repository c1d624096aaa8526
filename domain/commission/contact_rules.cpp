// SPDX-License-Identifier: MIT
#include "domain/commission/contact_rules.h"

#include <fmt/format.h>

#include <algorithm>

namespace tangmark::commission {
namespace {

long days_between(CalendarDate from, CalendarDate to) {
  return (date::sys_days(to) - date::sys_days(from)).count();
}

}  // namespace

Catch silent_too_long(const Commission& commission, CalendarDate last_contact, CalendarDate today,
                      int rule_days) {
  if (is_over(commission.state)) return std::nullopt;
  const long silent = days_between(last_contact, today);
  if (silent <= rule_days) return std::nullopt;
  return Caught{
      26, Weight::remark, "commission",
      fmt::format("The buyer of commission {} has heard nothing for {} days; the rule is {}.",
                  commission.number, silent, rule_days),
      "Write to the buyer and note it with note_contact."};
}

Catch specification_not_confirmed(const Commission& commission, CalendarDate today, int rule_days) {
  std::optional<CalendarDate> fresh = commission.accepted_on;
  if (commission.specification_confirmed_on)
    fresh = fresh ? std::max(*fresh, *commission.specification_confirmed_on)
                  : *commission.specification_confirmed_on;
  if (fresh && days_between(*fresh, today) <= rule_days) return std::nullopt;
  const std::string since = fresh ? "since " + to_text(*fresh) : "at all";
  return Caught{26, Weight::ask, "item",
                fmt::format("The buyer of commission {} has not confirmed the specification {}.",
                            commission.number, since),
                "Confirm it with confirm_specification before work begins."};
}

}  // namespace tangmark::commission
