// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "domain/measure/length.h"
#include "domain/measure/outcome.h"
#include "domain/measure/temperature.h"
#include "domain/steel/composition.h"
#include "domain/steel/grade.h"
#include "domain/steel/temper_parameter.h"

namespace tangmark::steel {

/// A composition and where its figures are from, so that it can be said.
struct NamedComposition {
  Composition composition;
  std::string note;  ///< "W1 counts as the middle of its limits: C:1.1,...", empty when typed
};

/// The keys of one computation as typed, read as the kinds of values the desk knows. A key that was
/// left out reads as its fallback.
class DeskInput {
 public:
  using Keys = std::vector<std::pair<std::string, std::string>>;

  DeskInput(Keys keys, const GradeBook& book) : keys_(std::move(keys)), book_(book) {}

  bool has(std::string_view key) const { return !text(key).empty(); }
  std::string_view text(std::string_view key) const;
  const GradeBook& book() const { return book_; }

  Outcome<double> number(std::string_view key) const;
  Outcome<double> above_zero(std::string_view key) const;
  /// "0.4" or "40 %".
  Outcome<double> fraction(std::string_view key) const;
  Outcome<std::vector<double>> numbers(std::string_view key) const;
  Outcome<std::vector<double>> fractions(std::string_view key) const;
  Outcome<Temperature> temperature(std::string_view key) const;
  Outcome<Length> length(std::string_view key) const;
  /// A time in minutes; a bare number has `bare_in_min` minutes a unit. Zero and above.
  Outcome<double> minutes(std::string_view key, double bare_in_min) const;
  Outcome<NamedComposition> composition(std::string_view key) const;
  Outcome<const Grade*> grade(std::string_view key) const;
  /// "204C/120min,204C/2h": both units must be written.
  Outcome<std::vector<TemperStep>> temper_steps(std::string_view key) const;

  /// Exactly one of the keys was given; its place in the list.
  Outcome<std::size_t> one_of(const std::vector<std::string_view>& keys) const;

  /// A composition or a grade's name, without the key around it.
  Outcome<NamedComposition> read_composition(std::string_view text, std::string_view field) const;

 private:
  Keys keys_;
  const GradeBook& book_;  // outlives the computation
};

}  // namespace tangmark::steel
