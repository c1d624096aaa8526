// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "gui/desk/family_tree.h"
#include "gui/desk/sight.h"

namespace tangmark::desk {

/// One thing in the stock by its kind ("lot", "piece", "billet", "blade") and number or tag.
struct StockName {
  std::string kind, name;
  friend auto operator<=>(const StockName&, const StockName&) = default;
};

/// The family of one thing: all it came from, and all that came of it.
FamilyTree family_of(const Sight& sight, const StockName& name);

}  // namespace tangmark::desk
