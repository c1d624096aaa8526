// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/measure/outcome.h"
#include "domain/steel/composition.h"
#include "domain/steel/grade_origin.h"
#include "domain/steel/heat_treat_window.h"
#include "domain/steel/temper_table.h"

namespace tangmark::steel {

/// What a grade says about one element, in weight per cent. Limits are ladle (melt) limits. A
/// nominal figure is a seller's typical one and limits nothing.
struct ElementLimit {
  Element element = Element::C;
  std::optional<double> least_percent;
  std::optional<double> most_percent;
  std::optional<double> nominal_percent;
  friend bool operator==(const ElementLimit&, const ElementLimit&) = default;
};

/// A steel grade: limits of its analysis and windows of its heat treatment, with their sources. A
/// mill certificate of the actual melt outranks it; its limits never print as a measured analysis.
struct Grade {
  std::string name;
  std::vector<std::string> also;  ///< other names of the same grade ("75Ni8" for 15N20)
  std::string designation;        ///< UNS or EN number with the standard
  std::vector<ElementLimit> limits;
  std::vector<HeatTreatWindow> windows;  ///< those that the shop entered stand first
  std::vector<TemperTable> tempers;
  std::string note;
  std::string source;
  GradeOrigin origin = GradeOrigin::published;

  const ElementLimit* limit_of(Element element) const;
  /// The first window for this operation ("harden", "temper", "normalize", "anneal"), or none.
  const HeatTreatWindow* window_for(std::string_view operation) const;
  friend bool operator==(const Grade&, const Grade&) = default;
};

/// A composition to reckon with when only the grade is known: the middle of each range, half of a
/// bare maximum, a bare minimum itself, the nominal figure where limits are not given. Say so
/// beside any result. **Source**: common practice, no source.
Composition middle_of_limits(const Grade& grade);

/// Reads one limit: "0.70-0.80", "<=0.15", ">=0.15", "=0.68" (nominal). Refuses a range that runs
/// downwards.
Outcome<ElementLimit> parse_limit(Element element, std::string_view text, std::string_view field);
/// Reads "C:0.70-0.80,Cr:<=0.15", each limit as parse_limit reads it. Refuses an unknown element,
/// one named twice, and a text without any limit.
Outcome<std::vector<ElementLimit>> parse_limits(std::string_view text, std::string_view field);
/// "0.70-0.80 %", "at most 0.15 %", "at least 0.15 %", "about 0.68 %".
std::string to_text(const ElementLimit& limit);

/// The published grades and those the shop entered. A shop grade of the same name stands before the
/// published one and keeps its windows and temper tables behind its own.
class GradeBook {
 public:
  /// The grades compiled in.
  static const GradeBook& published();
  /// The same book with one grade more. Refuses a grade without name or source.
  Outcome<GradeBook> with(Grade grade) const;
  /// The same book with what the shop entered for a grade: windows before those the grade has,
  /// tables after. A grade of that name or other name must be in the book.
  GradeBook with_figures(std::string_view name, std::vector<HeatTreatWindow> windows,
                         std::vector<TemperTable> tempers) const;
  /// By name or other name; case, blanks and dashes do not matter.
  const Grade* find(std::string_view name) const;
  const std::vector<Grade>& grades() const { return grades_; }

 private:
  std::vector<Grade> grades_;  // the shop's own first
};

}  // namespace tangmark::steel
