// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace tangmark::desk {

/// One event or planned step of a blade.
struct LifeEvent {
  std::string title;              ///< "Harden"
  std::string when;               ///< "12 Nov, 09:17", "planned", "about 2 h"
  std::string note;               ///< "805 °C, fast oil"
  std::optional<double> celsius;  ///< of a hot step, for its tint only; the note has the figure
  bool done = false;
  bool finding = false;           ///< something was found here
};

/// A blade's life on one line, from bar to buyer.
struct LifeLine {
  std::vector<LifeEvent> events;
};

std::string in_words(const LifeLine& life);

}  // namespace tangmark::desk
