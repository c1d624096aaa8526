// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace tangmark::costing {

/// What the shop's own record says about one figure: hours of an operation, belts of a model, gas
/// of a session. Figures are in the unit of the guess.
struct Seen {
  std::size_t n = 0;
  double median = 0;
  double low_quarter = 0, high_quarter = 0;  ///< a quarter of the record lies below, above
  double least = 0, most = 0;
  friend bool operator==(const Seen&, const Seen&) = default;
};

/// None when nothing is on record. Figures that are not finite or below zero are left out.
std::optional<Seen> seen(const std::vector<double>& actuals);

/// How many pieces of work the model's guess is worth: at this many actuals the record counts as
/// much as the guess. Common practice of shrinking, no source for the number.
inline constexpr double guess_weight = 3;

/// A guess drawn toward the record: (guess x k + median x n) / (k + n) with k = guess_weight. The
/// median and not the mean, so that one forgotten timer does not move it.
/// Source of the form: the shrinkage estimator of a normal mean with a normal prior (Gelman et al.,
/// Bayesian Data Analysis, 2.5; from memory), used here with the median.
struct Estimate {
  double figure = 0;
  double guess = 0;
  std::size_t n = 0;
  std::optional<Seen> record;
  /// "1.6 from your last 4 (median 1.5, half of them 1.3 to 1.9); the model says 2.0."
  std::string why() const;
  friend bool operator==(const Estimate&, const Estimate&) = default;
};
Estimate estimate(double guess, const std::vector<double>& actuals);

/// Which way the record says a figure should go. Nothing is changed: the maker accepts or not.
struct Proposal {
  std::string line;
  Estimate estimate;
  double now = 0;  ///< what the model holds today
  friend bool operator==(const Proposal&, const Proposal&) = default;
};
/// A proposal when the record has three actuals or more and the estimate lies outside 5 % of what
/// the model holds; none otherwise.
std::optional<Proposal> proposal(std::string line, double now, const std::vector<double>& actuals);

}  // namespace tangmark::costing
