// SPDX-License-Identifier: MIT
#include "domain/steel/analysis_check.h"

#include "domain/steel/figure_text.h"

namespace tangmark::steel {
namespace {

LimitVerdict verdict_of(const std::optional<double>& percent, const ElementLimit* limit) {
  if (!limit || (!limit->least_percent && !limit->most_percent)) return LimitVerdict::not_limited;
  if (!percent) return LimitVerdict::not_analysed;
  if (limit->least_percent && *percent < *limit->least_percent) return LimitVerdict::below;
  if (limit->most_percent && *percent > *limit->most_percent) return LimitVerdict::above;
  return LimitVerdict::inside;
}

std::string outside_remark(const ElementCheck& check) {
  const std::string side = check.verdict == LimitVerdict::above ? "above" : "below";
  return std::string(symbol(check.element)) + ' ' + figure_text(*check.analysed_percent) +
         " % is " + side + " the grade's limit (" + to_text(check.limit) + ").";
}

}  // namespace

std::string_view verdict_words(LimitVerdict verdict) {
  switch (verdict) {
    case LimitVerdict::inside:
      return "inside";
    case LimitVerdict::below:
      return "below the limit";
    case LimitVerdict::above:
      return "above the limit";
    case LimitVerdict::not_analysed:
      return "not analysed";
    case LimitVerdict::not_limited:
      break;
  }
  return "not limited";
}

AnalysisCheck check_analysis(const Composition& analysis, const Grade& grade) {
  AnalysisCheck result;
  bool any_limit = false;
  bool outside = false;
  for (const Element element : all_elements()) {
    const ElementLimit* limit = grade.limit_of(element);
    const auto percent = analysis.stated(element);
    if (!limit && !percent) continue;
    ElementCheck check{element, percent, limit ? *limit : ElementLimit{element, {}, {}, {}},
                       verdict_of(percent, limit)};
    any_limit = any_limit || check.verdict != LimitVerdict::not_limited;
    if (check.verdict == LimitVerdict::above || check.verdict == LimitVerdict::below) {
      outside = true;
      result.remarks.push_back(outside_remark(check));
    }
    if (check.verdict == LimitVerdict::not_analysed && limit->least_percent) {
      result.remarks.push_back(std::string(symbol(element)) +
                               " is limited by the grade but missing from the analysis.");
    }
    result.elements.push_back(std::move(check));
  }
  if (!any_limit) {
    result.remarks.push_back("The grade has nominal figures only, so there is no limit to meet.");
  }
  result.inside_limits = any_limit && !outside && analysis.stated(Element::C).has_value();
  return result;
}

}  // namespace tangmark::steel
