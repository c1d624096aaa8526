// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "domain/stock/cutting_plan.h"

namespace tangmark::stock {

/// Reads a cutting case from JSON: kerf_mm, keep_mm, bars [{id, length_mm, price}], blanks
/// [{id, length_mm}]; whole millimetres and whole minor units. Strict: a key that is missing,
/// unknown, given twice or of the wrong type is refused by its path ("bars[2].price").
Outcome<CuttingCase> cutting_case_from(std::string_view json);

/// Writes the answer as JSON on one line: placed, value_used, bars_cut, cuts [{bar, blanks,
/// left_mm, kept}], unplaced, proven_optimal, value_at_least.
std::string to_json(const CuttingPlan& plan, const CuttingCase& cutting);

/// The whole way from a case to its answer.
Outcome<std::string> cut_case_text(std::string_view json, const OutOfTime& out_of_time);

}  // namespace tangmark::stock
