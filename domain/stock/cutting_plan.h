// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "domain/measure/outcome.h"

namespace tangmark::stock {

/// A bar or offcut that may be cut: all bars of a case are of one steel and section.
struct CuttingBar {
  std::string id;
  std::int64_t length_mm = 0;
  std::int64_t price_minor = 0;  ///< of the whole bar as it lies there
  friend bool operator==(const CuttingBar&, const CuttingBar&) = default;
};
struct CuttingBlank {
  std::string id;
  std::int64_t length_mm = 0;
  friend bool operator==(const CuttingBlank&, const CuttingBlank&) = default;
};

/// Which blank shall come from which bar. A bar cut into n blanks needs the sum of their lengths
/// and n - 1 kerfs. What is left, after n kerfs, is kept when it is `keep_mm` or longer, else it is
/// scrap.
struct CuttingCase {
  std::int64_t kerf_mm = 0;
  std::int64_t keep_mm = 0;
  std::vector<CuttingBar> bars;
  std::vector<CuttingBlank> blanks;
  friend bool operator==(const CuttingCase&, const CuttingCase&) = default;
};

struct CutBar {
  std::size_t bar = 0;
  std::vector<std::size_t> blanks;  ///< in the order of the case
  std::int64_t left_mm = 0;
  bool kept = false;
  friend bool operator==(const CutBar&, const CutBar&) = default;
};

struct CuttingPlan {
  std::vector<CutBar> cuts;           ///< bars in the order of the case
  std::vector<std::size_t> unplaced;  ///< blanks that come from no bar
  double value_used = 0;              ///< minor units: price x (length - kept) / length, summed
  bool proven = false;                ///< no better plan exists
  double value_at_least = 0;          ///< no plan placing as many uses less than this
  friend bool operator==(const CuttingPlan&, const CuttingPlan&) = default;
};

/// Asked between steps of the search; once it says true the best plan so far is returned.
using OutOfTime = std::function<bool()>;

/// The plan that places the most blanks, then uses the least value, then cuts the fewest bars.
/// Plans are compared exactly; in the proof, values nearer than a thousandth of a minor unit count
/// alike. Method: since a shorter blank never costs more in the place of a longer one, the shortest
/// blanks are placed; then branch and price: a linear programme over cutting patterns, its columns
/// found by knapsacks. Source: Gilmore and Gomory, Operations Research 9 (1961) 849, and for the
/// branching Vance, Computational Optimization and Applications 9 (1998) 211 (from memory).
/// Refuses: negative lengths or prices, lengths of zero or above 100 m, ids given twice, more than
/// 1,000 bars or blanks.
Outcome<CuttingPlan> cutting_plan(const CuttingCase& cutting, const OutOfTime& out_of_time);

}  // namespace tangmark::stock
