// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/measure/when.h"

namespace tangmark::commission {

/// What a letter of delay is drafted from.
struct DelayLetter {
  std::int64_t commission = 0;
  std::string buyer;  ///< empty when the name is not known or was erased
  std::string items;  ///< "chef's knife 240 mm"
  CalendarDate promised, new_day;
  std::string cause;  ///< what most often makes it late; empty when nothing is known
  std::string maker, shop;
  std::optional<std::string> refund_rule;  ///< as frozen with the commission
};

/// A plain letter that says what was promised, what is now honest and why, what the buyer may
/// choose, and asks for an answer: silence is not consent. It is a draft for the maker to edit, and
/// makes no promise about the law: the buyer's rights on a delay differ by country.
std::string delay_letter(const DelayLetter& letter);

}  // namespace tangmark::commission
