// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/steel/composition.h"

namespace tangmark::steel {

/// The range of one element in the steels that a formula was fitted to, weight per cent.
struct FittedRange {
  Element element = Element::C;
  double least_percent = 0;
  double most_percent = 0;
};

/// Symbols of the elements that lie outside their range, an element that was not stated counting as
/// none of it.
std::vector<std::string> elements_outside(const Composition& composition,
                                          const std::vector<FittedRange>& ranges);

/// The refusal of every formula that needs carbon and was given none.
Problem carbon_missing();

}  // namespace tangmark::steel
