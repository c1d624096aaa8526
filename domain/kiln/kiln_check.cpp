// SPDX-License-Identifier: MIT
#include "domain/kiln/kiln_check.h"

namespace tangmark::kiln {

Catch thermocouple_check_overdue(const Kiln& kiln, CalendarDate today) {
  if (!kiln.check_days) return std::nullopt;
  if (!kiln.checked_on)
    return Caught{22, Weight::remark, "kiln",
                  "The thermocouple of " + kiln.name + " has never been checked.",
                  "Compare it with another one and note the day with change_kiln."};
  const auto age = (date::sys_days(today) - date::sys_days(*kiln.checked_on)).count();
  if (age <= *kiln.check_days) return std::nullopt;
  return Caught{22, Weight::remark, "kiln",
                "The thermocouple of " + kiln.name + " was checked " + std::to_string(age) +
                    " days ago; your rule is " + std::to_string(*kiln.check_days) + ".",
                "Compare it with another one and note the day with change_kiln."};
}

}  // namespace tangmark::kiln
