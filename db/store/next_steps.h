// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "db/actions/action.h"
#include "db/shop_file.h"
#include "domain/measure/when.h"

namespace tangmark::db {

/// What an answer to a question leads to. The action goes by its own name, "ledger" being the table
/// of a year; every front end says in its own words how it is begun.
struct NextStep {
  std::string label;  ///< "Stop timer 3 as of 17:00"
  std::string action;
  Given fields;

  friend bool operator==(const NextStep&, const NextStep&) = default;
};

/// The steps that the answer to a question leads to now; none for most of them.
std::vector<NextStep> next_steps(const ShopFile& shop, int question, const Given& given,
                                 Instant now);

}  // namespace tangmark::db
