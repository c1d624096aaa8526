// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/steel/grade.h"

namespace tangmark::steel {

/// How one element of a mill analysis stands to the grade's limit.
enum class LimitVerdict { inside, below, above, not_analysed, not_limited };

/// "inside", "above the limit"; for tables.
std::string_view verdict_words(LimitVerdict verdict);

struct ElementCheck {
  Element element = Element::C;
  std::optional<double> analysed_percent;
  ElementLimit limit;
  LimitVerdict verdict = LimitVerdict::inside;
};

struct AnalysisCheck {
  std::vector<ElementCheck> elements;  ///< every element of the analysis or of the limits
  /// No analysed element lies outside its limit, and carbon was analysed. A grade with nominal
  /// figures only has no limits to be inside of, so this is false for it.
  bool inside_limits = false;
  /// "C 1.05 % is above 0.90-1.03 %." for each element outside, or what is missing.
  std::vector<std::string> remarks;
};

/// Compares a mill analysis with a grade, element by element, as printed: no tolerance for product
/// analysis is added. **Source**: the grade's own limits.
AnalysisCheck check_analysis(const Composition& analysis, const Grade& grade);

}  // namespace tangmark::steel
