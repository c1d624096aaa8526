// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "gui/desk/offer.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// One thing that needs hands, and how soon.
struct Task {
  std::string id;        ///< "temper 61", "firing 12", "promise 118"
  std::string number;    ///< of the blade, firing or commission
  std::string sentence;  ///< "Temper 61 at 200 °C"
  std::string why;
  std::vector<Offer> offers;
  int urgency = 0;       ///< less comes first
};

/// Everything that needs hands now, the most urgent first.
std::vector<Task> tasks_of(const Sight& sight);

}  // namespace tangmark::desk
