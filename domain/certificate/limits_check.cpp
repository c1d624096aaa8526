// SPDX-License-Identifier: MIT
#include "domain/certificate/limits_check.h"

#include "domain/certificate/phrasing.h"

namespace tangmark::certificate {

LimitsCheck check_limits(const Lot& lot) {
  LimitsCheck check;
  if (!lot.analysis || lot.analysis->empty()) return check;
  check.verdict = LimitsVerdict::no_limits;
  if (!lot.facts || lot.facts->nominal || lot.facts->limits.empty()) return check;
  for (const auto& [element, limits] : lot.facts->limits) {
    const auto found = lot.analysis->find(element);
    const bool no_carbon = element == "C" && lot.analysis_source == AnalysisSource::handheld_xray;
    if (found == lot.analysis->end() || no_carbon) {
      if (limits.lo && *limits.lo > Share()) check.absent.push_back(element);
      continue;
    }
    const std::string figure = element + " " + percent_figure(found->second) + " %";
    if (limits.lo && found->second < *limits.lo)
      check.outside.push_back(figure + " is below " + percent_figure(*limits.lo) + " %");
    if (limits.hi && found->second > *limits.hi)
      check.outside.push_back(figure + " is above " + percent_figure(*limits.hi) + " %");
  }
  if (!check.outside.empty())
    check.verdict = LimitsVerdict::outside;
  else if (!check.absent.empty())
    check.verdict = LimitsVerdict::incomplete;
  else
    check.verdict = LimitsVerdict::inside;
  return check;
}

}  // namespace tangmark::certificate
