// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/costing/build_up.h"
#include "domain/costing/cost_inputs.h"
#include "domain/measure/outcome.h"

namespace tangmark::costing {

/// One figure of a quote that the maker sets by hand, as it is typed: what is set, and to what.
/// "rough grind" to "2 h", "Handle block" to "1 at 45.00" or "at 45.00", "harden survives" to
/// "90 %", "Packing" to "6.00", "+ Mosaic pin" (a line of its own) to "2 at 14.00".
struct LineChange {
  std::string what;
  std::string to;

  friend bool operator==(const LineChange&, const LineChange&) = default;
};

/// How a line of the sheet is called in a change. With several items it begins with the item's
/// number ("2. rough grind"); the second line of one name in an item ends in " (2)".
/// Loss lines have no name of their own: they follow the survivals.
std::string name_of_line(const CostInputs& inputs, const CostLine& line);

/// A survival that may be set, beside the lines of the sheet.
struct SurvivalLine {
  std::string name;       ///< "harden survives"
  std::string operation;  ///< "harden"
  std::size_t item = 0;
  Share survival;
};

/// The operations that lose blades, and every hardening, in the order of the route.
std::vector<SurvivalLine> survival_lines(const CostInputs& inputs);

/// The inputs with one figure set by hand. A bare amount is in the currency sold in; times may be
/// "1.5 h" or "90 min", a bare figure is in the unit of the line. "Hourly rate" and "Overhead" set
/// the rates of the whole quote, "Payment fee" the share. Refuses a name that is none and a value
/// that cannot be read, both by their words; nothing below zero is taken.
Outcome<CostInputs> with_change(CostInputs inputs, const LineChange& change);

/// "rough grind = 2 h; Packing = 6.00" and back. Several changes stand on lines of their own or
/// between semicolons. Refuses a part without "=".
Outcome<std::vector<LineChange>> parse_changes(std::string_view text, std::string_view field);
std::string to_text(const std::vector<LineChange>& changes);

}  // namespace tangmark::costing
