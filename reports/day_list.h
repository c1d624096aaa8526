// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "reports/look.h"

namespace tangmark::reports {

class FontBook;

/// One thing that needs hands.
struct DayEntry {
  std::optional<Instant> at;     ///< none: any time today
  std::optional<Instant> until;  ///< when it must be over, or when it ends
  std::string what;              ///< "Take out 41, 42, 43 and quench in fast oil"
  std::string where;             ///< kiln, bench, office; may be empty
  std::string why;               ///< reason or warning in grey; may be empty
  bool overdue = false;
};

/// What needs hands on a day.
struct DayList {
  std::string shop;
  CalendarDate day{};
  std::vector<DayEntry> entries;   ///< in any order; printed in order of time, untimed ones last
  std::vector<std::string> notes;  ///< "Deposit of 516.00 EUR awaited from job 118."
  Instant printed{};
};

/// Sets the list. A day with nothing to do says so.
Outcome<Document> day_list_document(const DayList& list, const Look& look, const FontBook& fonts);

}  // namespace tangmark::reports
