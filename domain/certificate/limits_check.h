// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/certificate/steel_trail.h"

namespace tangmark::certificate {

/// What comparing a lot's analysis with the limits of its grade gave.
enum class LimitsVerdict {
  no_analysis,
  no_limits,   ///< the grade is in no table, or only a nominal composition is known
  incomplete,  ///< an element that the grade asks for is not in the analysis
  inside,
  outside,
};

struct LimitsCheck {
  LimitsVerdict verdict = LimitsVerdict::no_analysis;
  std::vector<std::string> outside;  ///< "C 0.60 % is below 0.80 %"
  std::vector<std::string> absent;   ///< element symbols
};

/// Compares exactly, ends included. Carbon by a hand-held X-ray instrument is not judged, because
/// such an instrument does not give carbon.
LimitsCheck check_limits(const Lot& lot);

}  // namespace tangmark::certificate
